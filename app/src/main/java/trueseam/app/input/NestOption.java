package trueseam.app.input;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Option;
import trueseam.garment.blend.SizesByLevel;
import trueseam.intake.bring.BringChoices;
import trueseam.intake.bring.Bringing;
import trueseam.intake.bring.Brought;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.nest.Nest;
import trueseam.intake.nest.NestBringing;
import trueseam.intake.nest.NestSize;
import trueseam.intake.said.Corrections;

/** Which size of a drawing is wanted that may hold several. */
public final class NestOption {

    @Option(
            names = "--size",
            paramLabel = "SIZE",
            description =
                    "The size to take where the drawing holds several, such as 14; or a size for each level, such as \"bust 14,"
                            + " waist 16, hip 18\" (levels: neck, bust, waist, hip, knee, hem, bicep, wrist); else the size that"
                            + " was drawn. With --rules the size to grade to.")
    private String size = "";

    @Option(names = "--sizes", description = "List the sizes that the drawing holds, and write nothing.")
    private boolean sizes;

    @Option(names = "--one-size", description = "The drawing holds one size, whatever its lines look like.")
    private boolean oneSize;

    /** For the command line. */
    public NestOption() {}

    /**
     * What was said of the size.
     *
     * @return as it was written; empty if nothing was
     */
    public String size() {
        return size;
    }

    /**
     * Lists the sizes, if that is wanted.
     *
     * @param drawing the drawing
     * @param chosen whether a size was chosen otherwise
     * @param say where it is told
     * @param json whether as JSON
     * @return whether it was wanted
     */
    public boolean list(Drawing drawing, boolean chosen, PrintWriter say, boolean json) {
        if (!sizes) {
            return false;
        }
        Optional<Nest> nest = nest(drawing, chosen);
        List<Object> all = new ArrayList<>();
        for (NestSize one : nest.map(Nest::sizes).orElse(List.of())) {
            Map<String, Object> told = new LinkedHashMap<>();
            told.put("size", one.name());
            told.put("evidence", one.evidence());
            told.put("sure", one.sure());
            all.add(told);
        }
        if (json) {
            say.println(Json.write(Map.of("sizes", all)));
        } else if (nest.isEmpty()) {
            say.println("The drawing holds one size.");
        } else {
            say.println("Sizes told apart by " + nest.get().told().word() + ":");
            nest.get()
                    .sizes()
                    .forEach(s -> say.println("  " + s.name() + ": " + s.evidence() + " (" + Math.round(100 * s.sure())
                            + " in 100 sure)"));
            nest.get().findings().forEach(f -> say.println(f.sentence()));
        }
        return true;
    }

    /**
     * Brings the drawing in, in the size or sizes that are wanted.
     *
     * @param drawing the drawing
     * @param chosen whether a size was chosen otherwise
     * @param choices what whoever knows it says of the whole
     * @param said what she says of its pieces
     * @return the pattern
     */
    public Brought bring(Drawing drawing, boolean chosen, BringChoices choices, Corrections said) {
        Optional<Nest> nest = nest(drawing, chosen);
        Optional<SizesByLevel> levels = SizesByLevel.parse(size);
        if (nest.isEmpty()) {
            if (levels.isPresent()) {
                throw new InputException("The drawing holds one size only, so that nothing can be drawn across from \""
                        + levels.get().inWords() + "\"; leave --size out, or say the size that was drawn.");
            }
            return Bringing.of(drawing, choices, said);
        }
        if (size.isBlank()) {
            throw new InputException(drawing.file() + ": " + nest.get().question());
        }
        return levels.isPresent()
                ? NestBringing.across(nest.get(), levels.get(), choices, said)
                : NestBringing.one(nest.get(), nest.get().size(size), choices, said);
    }

    /** The nest, if the drawing holds several sizes and none was chosen by a layer or a rule. */
    private Optional<Nest> nest(Drawing drawing, boolean chosen) {
        if (oneSize || chosen) {
            return Optional.empty();
        }
        Nest nest = Nest.of(drawing);
        return nest.sizes().isEmpty() ? Optional.empty() : Optional.of(nest);
    }
}
