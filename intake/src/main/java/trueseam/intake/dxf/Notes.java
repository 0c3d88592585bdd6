package trueseam.intake.dxf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import trueseam.garment.finding.Finding;

/** What is to be said of a file, gathered while it is read; a damaged file does not say the same a thousand times. */
final class Notes {

    private static final int MOST = 50;

    private final String file;
    private final List<Finding> said = new ArrayList<>();
    private final Map<String, Integer> leftOut = new TreeMap<>();
    private final List<Integer> followed = new ArrayList<>();
    private int unsaid;

    Notes(String file) {
        this.file = file;
    }

    void say(Finding finding) {
        if (said.size() < MOST) {
            said.add(finding);
        } else {
            unsaid++;
        }
    }

    void note(String sentence) {
        say(Finding.note(file, sentence));
    }

    void warn(String sentence) {
        say(Finding.warning(file, sentence));
    }

    /** Something drawn could not be taken. */
    void broken(RawEntity e, String why) {
        String kind = e.type().isBlank() ? "something without a name" : GroupText.shortened(e.type());
        say(Finding.failure(
                file + ", line " + e.line(),
                "this " + kind + " was left out: " + why + (why.endsWith(".") ? "" : ".")));
    }

    void leftOut(String what) {
        if (leftOut.size() < MOST || leftOut.containsKey(what)) {
            leftOut.merge(GroupText.shortened(what), 1, Integer::sum);
        }
    }

    /** A spline that is drawn as chords. */
    void followed(RawEntity e) {
        followed.add(e.line());
    }

    List<Finding> all() {
        List<Finding> all = new ArrayList<>(said);
        if (unsaid > 0) {
            all.add(Finding.failure(file, unsaid + " more of the same kind are not listed; the file is damaged."));
        }
        if (!followed.isEmpty()) {
            all.add(Finding.note(
                    file,
                    String.format(
                            Locale.ROOT,
                            "%d spline(s), the first on line %d, are rational or of a degree above 3 and are drawn as chords within %s mm.",
                            followed.size(),
                            followed.get(0),
                            BSpline.CHORD_MM)));
        }
        leftOut.forEach((what, times) -> all.add(Finding.note(
                file,
                "left out, " + times + (times == 1 ? " time: " : " times: ") + what
                        + " is no line or word of a pattern.")));
        return all;
    }
}
