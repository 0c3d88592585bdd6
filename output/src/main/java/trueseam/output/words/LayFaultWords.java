package trueseam.output.words;

import java.util.Locale;
import java.util.stream.Collectors;
import trueseam.cloth.lay.Lay;
import trueseam.cloth.proof.LayFault;
import trueseam.garment.length.LengthFormat;

/** What makes a layout one that cannot be cut, as somebody is told who lays it by hand. */
public final class LayFaultWords {

    private LayFaultWords() {}

    /**
     * Says a fault.
     *
     * @param lay the layout
     * @param fault one of its faults
     * @param show the user's unit
     * @return a sentence with the pieces by number and name, and what to do
     */
    public static String sentence(Lay lay, LayFault fault, LengthFormat show) {
        RulerLength ruler = new RulerLength(show);
        String who = fault.pieces().stream()
                .map(i -> (i + 1) + " " + lay.pieces().get(i).part().piece().name())
                .collect(Collectors.joining(" and "));
        String mm = ruler.show(fault.amount());
        return who
                + switch (fault.kind()) {
                    case ON_EACH_OTHER -> " lie on each other; move one of them away.";
                    case TOO_NEAR ->
                        " lie " + mm + " apart, and the gap between cutting lines is to be "
                                + ruler.show(lay.wishes().gapMm()) + "; move one of them a little.";
                    case OFF_CLOTH -> " lies " + mm + " beside the cloth that may be cut; move it back.";
                    case OFF_GRAIN ->
                        String.format(
                                Locale.ROOT,
                                " is turned %.1f degrees off the grain, more than is allowed; turn it back.",
                                Math.toDegrees(Math.asin(Math.min(1, fault.amount() / 1000))));
                    case HEAD_TO_TAIL -> " lies head to tail, and this cloth has one way up; turn it round.";
                    case OFF_FOLD -> " is cut on the fold and lies " + mm + " off it; move it to the fold.";
                    case ON_FLAW -> " covers a flaw of the cloth; move it off.";
                    case OFF_CROSSWISE_STRIPE -> " lies " + mm + " off its crosswise stripe; move it along.";
                    case OFF_LENGTHWISE_STRIPE -> " lies " + mm + " off its lengthwise stripe; move it across.";
                };
    }
}
