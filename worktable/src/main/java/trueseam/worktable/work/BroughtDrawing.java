package trueseam.worktable.work;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import trueseam.garment.blend.SizesByLevel;
import trueseam.garment.finding.Finding;
import trueseam.garment.length.Length;
import trueseam.garment.length.LengthUnit;
import trueseam.intake.bring.BringChoices;
import trueseam.intake.bring.Bringing;
import trueseam.intake.bring.Brought;
import trueseam.intake.bring.Correcting;
import trueseam.intake.drawing.Drawing;
import trueseam.intake.drawing.DrawingException;
import trueseam.intake.file.DrawingFiles;
import trueseam.intake.file.ReadChoices;
import trueseam.intake.namesfile.NamesFile;
import trueseam.intake.nest.Nest;
import trueseam.intake.nest.NestBringing;
import trueseam.intake.nest.NestSize;
import trueseam.intake.said.Corrections;
import trueseam.worktable.project.DrawingPart;

/**
 * A drawing as it is brought in.
 *
 * @param sizes the sizes drawn in it, from the smallest; none where it holds one only
 * @param findings what is doubtful about the sizes
 * @param correcting what came of it, ready to be corrected; nothing while a size is to be chosen
 */
public record BroughtDrawing(List<String> sizes, List<Finding> findings, Optional<Correcting> correcting) {

    /** The usual seam allowance, 5/8 in (common practice). */
    private static final double USUAL_ALLOWANCE_MM = 15.875;

    /** Does not change. */
    public BroughtDrawing {
        sizes = List.copyOf(sizes);
        findings = List.copyOf(findings);
    }

    static Outcome<BroughtDrawing> of(DrawingPart part, byte[] content, LengthUnit unit) {
        Drawing whole = DrawingFiles.read(part.fileName(), content, choices(part, unit));
        Nest nest = Nest.of(whole);
        List<String> sizes = sizes(whole, nest);
        boolean oneSize = part.size().equals(DrawingPart.ONE_SIZE);
        if (!sizes.isEmpty() && part.size().isEmpty()) {
            return Outcome.of(new BroughtDrawing(sizes, nest.findings(), Optional.empty()));
        }
        OptionalDouble cutting = part.cutting().isBlank()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Length.parse(part.cutting(), unit).mm());
        BringChoices choices = new BringChoices(
                "",
                oneSize || sizes.isEmpty() ? "" : part.size(),
                "",
                cutting,
                USUAL_ALLOWANCE_MM,
                Map.of(),
                Optional.empty());
        Corrections said = NamesFile.read(NamesFile.beside(part.fileName()), part.names());
        Optional<SizesByLevel> across = SizesByLevel.parse(part.size());
        Brought brought = nest.sizes().isEmpty() || oneSize
                ? Bringing.confirmed(whole, choices, said)
                : across.isPresent()
                        ? NestBringing.across(nest, across.get(), choices, said)
                        : Bringing.confirmed(nest.drawing(part.size()), choices, said);
        return Outcome.of(new BroughtDrawing(sizes, nest.findings(), Optional.of(new Correcting(brought, said))));
    }

    /** A file that names its pieces names their sizes; others have them drawn in each other. */
    private static List<String> sizes(Drawing drawing, Nest nest) {
        List<String> told =
                drawing.apparel().sizes().stream().filter(s -> !s.isBlank()).toList();
        return told.size() > 1
                ? told
                : nest.sizes().stream().map(NestSize::name).toList();
    }

    private static ReadChoices choices(DrawingPart part, LengthUnit unit) {
        ReadChoices choices = ReadChoices.NONE;
        if (!part.square().isEmpty()) {
            choices = choices.withTestSquare(Length.parse(part.square(), unit).mm());
        }
        if (!part.unit().isEmpty()) {
            choices = choices.withUnit(Length.parse(part.unit(), unit).mm());
        }
        if (part.page().isEmpty()) {
            return choices;
        }
        if (!part.page().matches("[1-9]\\d{0,3}")) {
            throw new DrawingException(
                    part.fileName(), "", "A page is a whole number from 1, and \"" + part.page() + "\" is none.");
        }
        return choices.withPage(Integer.parseInt(part.page()));
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
