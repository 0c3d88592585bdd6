package trueseam.worktable.work;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import trueseam.garment.length.Length;
import trueseam.garment.length.LengthUnit;
import trueseam.intake.bring.BringChoices;
import trueseam.intake.bring.Bringing;
import trueseam.intake.bring.Brought;
import trueseam.intake.bring.Correcting;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.file.DrawingFiles;
import trueseam.intake.file.ReadChoices;
import trueseam.intake.namesfile.NamesFile;
import trueseam.intake.nest.Nest;
import trueseam.intake.nest.NestSize;
import trueseam.intake.said.Corrections;
import trueseam.worktable.project.DrawingPart;

/**
 * A drawing as it is brought in.
 *
 * @param sizes the sizes drawn in it, from the smallest; none where it holds one only
 * @param size the size that is taken; empty where there is one only, or none is chosen yet
 * @param correcting what came of it, ready to be corrected; nothing while a size is to be chosen
 */
public record BroughtDrawing(List<NestSize> sizes, String size, Optional<Correcting> correcting) {

    /** The usual seam allowance, 5/8 in (common practice). */
    private static final double USUAL_ALLOWANCE_MM = 15.875;

    /** Does not change. */
    public BroughtDrawing {
        sizes = List.copyOf(sizes);
    }

    static Outcome<BroughtDrawing> of(DrawingPart part, byte[] content, LengthUnit unit) {
        Drawing whole = DrawingFiles.read(part.fileName(), content, ReadChoices.NONE);
        Nest nest = Nest.of(whole);
        if (!nest.sizes().isEmpty() && part.size().isEmpty()) {
            return Outcome.of(new BroughtDrawing(nest.sizes(), "", Optional.empty()));
        }
        Drawing drawing = nest.sizes().isEmpty() ? whole : nest.drawing(part.size());
        OptionalDouble cutting = part.cutting().isBlank()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Length.parse(part.cutting(), unit).mm());
        BringChoices choices = new BringChoices(
                "",
                nest.sizes().isEmpty() ? "" : part.size(),
                "",
                cutting,
                USUAL_ALLOWANCE_MM,
                Map.of(),
                Optional.empty());
        Corrections said = NamesFile.read(NamesFile.beside(part.fileName()), part.names());
        Brought brought = Bringing.confirmed(drawing, choices, said);
        return Outcome.of(new BroughtDrawing(nest.sizes(), part.size(), Optional.of(new Correcting(brought, said))));
    }

    /**
     * What came of it.
     *
     * @return the pieces; nothing while a size is to be chosen
     */
    public Optional<Brought> brought() {
        return correcting.map(Correcting::brought);
    }
}
