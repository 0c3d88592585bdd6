package trueseam.records.archive;

/**
 * What came back from an archive.
 *
 * @param people how many people were added
 * @param projects how many projects were added
 * @param patterns how many patterns were added
 * @param leftAlone how many people, projects, patterns and size tables were there already; they are left as they are
 */
public record Brought(int people, int projects, int patterns, int leftAlone) {

    /**
     * What happened, for the user.
     *
     * @return a sentence
     */
    public String sentence() {
        String came = "Brought back: " + count(people, "person", "people") + ", "
                + count(projects, "project", "projects") + ", " + count(patterns, "pattern", "patterns") + ".";
        return leftAlone == 0
                ? came
                : came + " " + count(leftAlone, "thing was", "things were")
                        + " in the record book already and left as they are there.";
    }

    private static String count(int number, String one, String several) {
        return number + " " + (number == 1 ? one : several);
    }
}
