package trueseam.output.repertoire;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trueseam.fitting.follow.Follower;
import trueseam.fitting.repertoire.Entry;
import trueseam.fitting.repertoire.Family;
import trueseam.fitting.repertoire.Stay;
import trueseam.fitting.repertoire.Variant;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.measure.Measure;
import trueseam.output.words.MeasureWords;

/**
 * Tells what the repertoire knows.
 *
 * <p>Law: everything said comes from the entry; an entry that is added is listed, documented and exported without another line.
 */
public final class RepertoireText {

    private static final int NAME_WIDTH = 34;

    private RepertoireText() {}

    /**
     * One line for each alteration, by the part of the wardrobe.
     *
     * @param entries the alterations
     * @return lines of text
     */
    public static String list(List<Entry> entries) {
        StringBuilder text = new StringBuilder();
        for (Family family : Family.values()) {
            List<Entry> own = of(family, entries);
            if (!own.isEmpty()) {
                text.append(MeasureWords.capital(family.word())).append('\n');
                for (Entry entry : own) {
                    String name = entry.name();
                    text.append("  ")
                            .append(name)
                            .append(" ".repeat(Math.max(2, NAME_WIDTH - name.length())))
                            .append(entry.plus())
                            .append('\n');
                }
            }
        }
        return text.toString().stripTrailing();
    }

    /**
     * Everything about one alteration.
     *
     * @param entry the alteration
     * @param show the user's units
     * @return lines of text
     */
    public static String whole(Entry entry, LengthFormat show) {
        StringBuilder text = new StringBuilder(MeasureWords.capital(entry.name())).append('\n');
        facts(entry, show)
                .forEach((what, said) ->
                        text.append("  ").append(what).append(": ").append(said).append('\n'));
        return text.toString().stripTrailing();
    }

    /**
     * The whole repertoire as a document.
     *
     * @param entries the alterations
     * @param show the units of the document
     * @return Markdown
     */
    public static String markdown(List<Entry> entries, LengthFormat show) {
        StringBuilder text = new StringBuilder("# The repertoire\n\n");
        text.append("Made by `trueseam alterations --markdown` from the entries in the code; do not edit by hand.\n")
                .append(
                        "Source codes are those of `docs/sources.md`. Amounts are whole amounts as the tape would measure the garment.\n");
        for (Family family : Family.values()) {
            List<Entry> own = of(family, entries);
            if (own.isEmpty()) {
                continue;
            }
            text.append("\n## ").append(MeasureWords.capital(family.word())).append('\n');
            for (Entry entry : own) {
                text.append("\n### ").append(MeasureWords.capital(entry.name())).append("\n\n");
                facts(entry, show).forEach((what, said) -> text.append("- **")
                        .append(what)
                        .append(":** ")
                        .append(said)
                        .append('\n'));
            }
        }
        text.append("\n## What follows by itself\n\n");
        for (Follower follower : Follower.all()) {
            text.append("- **")
                    .append(MeasureWords.capital(follower.name()))
                    .append(":** ")
                    .append(follower.rule())
                    .append(" (")
                    .append(follower.source())
                    .append(")\n");
        }
        return text.toString();
    }

    /**
     * What an entry says, by what it is about; also what is exported as JSON.
     *
     * @param entry the alteration
     * @param show the user's units
     * @return in the order of telling
     */
    public static Map<String, String> facts(Entry entry, LengthFormat show) {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put("An amount", entry.plus() + (entry.isBothWays() ? "; with a minus it " + entry.minus() : ""));
        facts.put("Called for by", calledForBy(entry));
        facts.put("Moves", entry.moves());
        facts.put("Shared", entry.sharing());
        facts.put("Pin or line", entry.pin());
        facts.put("Stays", stays(entry));
        facts.put("Trued after", entry.trued());
        facts.put(
                "Amounts",
                show.show(entry.usualMm()) + " is usual; beyond " + show.show(entry.mostMm())
                        + " take the next size or open the piece inside");
        if (entry.variants().size() > 1) {
            facts.put("Ways", ways(entry));
        }
        facts.put("Source", entry.source());
        return facts;
    }

    private static String calledForBy(Entry entry) {
        List<String> all = new ArrayList<>();
        for (Measure measure : entry.measures()) {
            all.add(measure.term() + (entry.solved() ? " (the amount is found from it)" : ""));
        }
        if (!entry.folds().isEmpty()) {
            all.add("on the trial garment: " + String.join(", or ", entry.folds()));
        }
        return all.isEmpty() ? "your own eye" : String.join("; ", all);
    }

    private static String stays(Entry entry) {
        List<String> all =
                new ArrayList<>(entry.stays().stream().map(Stay::words).toList());
        if (!entry.alsoStays().isBlank()) {
            all.add(entry.alsoStays());
        }
        return all.isEmpty() ? "nothing in particular" : String.join(", ", all);
    }

    private static String ways(Entry entry) {
        List<String> all = new ArrayList<>();
        for (Variant variant : entry.variants()) {
            all.add(variant.name() + " (" + variant.reason() + ")");
        }
        return String.join("; ", all);
    }

    private static List<Entry> of(Family family, List<Entry> entries) {
        return entries.stream().filter(entry -> entry.family() == family).toList();
    }
}
