package trueseam.benchmarks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import trueseam.drafting.DraftEase;
import trueseam.drafting.DraftFigure;
import trueseam.drafting.Shells;
import trueseam.fitting.compare.FitChoices;
import trueseam.garment.body.Body;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.size.SizeRow;
import trueseam.garment.size.SizeTable;
import trueseam.intake.body.BodyCsv;
import trueseam.intake.body.EntryRules;
import trueseam.intake.size.SizeTables;

/** The fixed shells that the benchmarks work on. */
final class Garments {

    static final LengthFormat SHOW = LengthFormat.inches(8);
    static final FitChoices CHOICES = FitChoices.usual(SHOW);

    private static final String SIZE = "14";

    private Garments() {}

    static Pattern shell(SizeTable table, String size, GarmentKind kind) {
        DraftFigure figure = DraftFigure.of(table, size);
        DraftEase ease = DraftEase.fitted();
        return switch (kind) {
            case BODICE -> Shells.bodice(figure, ease);
            case DRESS -> Shells.dress(figure, ease);
            case SKIRT -> Shells.skirt(figure, ease);
            case TROUSERS -> Shells.trousers(figure, ease);
        };
    }

    static Pattern misses(GarmentKind kind) {
        return shell(SizeTables.named("misses"), SIZE, kind);
    }

    static Optional<SizeRow> missesRow() {
        return SizeTables.named("misses").rows().stream()
                .filter(row -> row.size().equals(SIZE))
                .findFirst();
    }

    /** Rosalind, who does not exist. */
    static Body rosalind() {
        Path file = Path.of("examples", "rosalind.csv");
        try {
            return BodyCsv.read(file.toString(), Files.readString(file), EntryRules.usual())
                    .body();
        } catch (IOException e) {
            throw new UncheckedIOException("Run the benchmarks from the root of the project.", e);
        }
    }
}
