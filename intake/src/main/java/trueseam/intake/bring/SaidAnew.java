package trueseam.intake.bring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import trueseam.garment.finding.Finding;
import trueseam.intake.said.Corrections;
import trueseam.intake.said.EdgeSaid;
import trueseam.intake.said.Frame;
import trueseam.intake.said.LineTaken;
import trueseam.intake.said.MarkSaid;
import trueseam.intake.said.PieceCorrection;
import trueseam.intake.said.SeamSaid;

/**
 * What is said beyond what is proposed anyway: each piece is known again by its frame, and what is as proposed is no correction. So a
 * file in which everything is written can be changed at one place, and what hangs on that place is proposed anew.
 *
 * @param corrections what is said otherwise
 * @param findings what does not fit the drawing any more
 */
record SaidAnew(Corrections corrections, List<Finding> findings) {

    /** Widths are written to a tenth of a millimetre. */
    private static final double WRITTEN_MM = 0.06;

    /** What is said otherwise than proposed. */
    static SaidAnew of(Corrections said, Brought proposed) {
        SaidAnew all = inFull(said, proposed);
        List<PieceCorrection> pieces = all.corrections.pieces().stream()
                .map(p -> beyond(p, proposed.pieces().get(p.number() - 1)))
                .filter(p -> !p.isEmpty())
                .toList();
        List<SeamSaid> seams = said.seams().stream()
                .filter(s -> proposed.seams().stream().noneMatch(p -> p.asSaid().isSame(s)))
                .toList();
        return new SaidAnew(new Corrections(pieces, seams), all.findings);
    }

    /** All that is said, of the pieces that are there. */
    static SaidAnew inFull(Corrections said, Brought proposed) {
        List<Finding> findings = new ArrayList<>();
        List<PieceCorrection> pieces = new ArrayList<>();
        for (PieceCorrection piece : said.pieces()) {
            Optional<BroughtPiece> there = found(piece, proposed.pieces());
            if (there.isPresent()) {
                pieces.add(piece.at(there.get().number(), there.get().frame()));
            } else {
                findings.add(Finding.warning(
                        "piece " + piece.number(),
                        "What is said about it does not fit the drawing any more, which has no piece "
                                + piece.frame()
                                        .map(SaidAnew::size)
                                        .orElse("of that number (it has "
                                                + proposed.pieces().size() + ")")
                                + "; it is not used."));
            }
        }
        return new SaidAnew(new Corrections(pieces, said.seams()), findings);
    }

    private static String size(Frame frame) {
        return String.format(java.util.Locale.ROOT, "%.1f wide and %.1f high", frame.wide(), frame.high());
    }

    /** By place and size, its own number first; by size alone where it was moved; by its number where nothing else is told. */
    private static Optional<BroughtPiece> found(PieceCorrection piece, List<BroughtPiece> all) {
        Optional<BroughtPiece> numbered =
                all.stream().filter(p -> p.number() == piece.number()).findFirst();
        if (piece.frame().isEmpty()) {
            return numbered;
        }
        Frame frame = piece.frame().get();
        if (numbered.filter(p -> p.frame().isSame(frame)).isPresent()) {
            return numbered;
        }
        return all.stream()
                .filter(p -> p.frame().isSame(frame))
                .findFirst()
                .or(() -> numbered.filter(p -> p.frame().isAsLarge(frame)))
                .or(() -> {
                    List<BroughtPiece> asLarge =
                            all.stream().filter(p -> p.frame().isAsLarge(frame)).toList();
                    return asLarge.size() == 1 ? Optional.of(asLarge.get(0)) : Optional.empty();
                });
    }

    private static PieceCorrection beyond(PieceCorrection said, BroughtPiece proposed) {
        boolean otherKind =
                said.kind().isPresent() && said.kind().get() != proposed.kind().value();
        boolean otherLine =
                said.line().isPresent() && said.line().get() != proposed.line().value();
        boolean otherWidth = said.line().orElse(LineTaken.STITCHING) != LineTaken.INNER
                && said.allowanceMm().isPresent()
                && Math.abs(said.allowanceMm().getAsDouble() - proposed.allowanceMm()) > WRITTEN_MM;
        List<EdgeSaid> others = said.edges().stream()
                .filter(e -> proposed.edges().stream()
                        .map(p -> p.asSaid())
                        .noneMatch(p -> otherKind ? p.name().equals(e.name()) && p.isSameStretch(e) : p.isSame(e)))
                .toList();
        // Of a piece of another kind only what was changed is said; else what stands beside a changed edge was seen and
        // left.
        List<EdgeSaid> edges = otherKind || others.isEmpty() ? others : said.edges();
        List<MarkSaid> marks = said.marks().stream()
                .filter(m -> proposed.marks().stream()
                        .noneMatch(p -> p.asSaid().isSameMark(m) && p.asSaid().is() == m.is()))
                .toList();
        return new PieceCorrection(
                proposed.number(),
                Optional.of(proposed.frame()),
                otherKind || !edges.isEmpty() ? said.kind() : Optional.empty(),
                said.name().filter(n -> !n.equals(proposed.name())),
                said.cut().isPresent()
                                && said.cut().getAsInt() != proposed.cut().value()
                        ? said.cut()
                        : OptionalInt.empty(),
                said.fold().filter(f -> !f.equals(proposed.fold().value())),
                otherLine || otherWidth ? said.line() : Optional.empty(),
                otherLine || otherWidth ? said.allowanceMm() : OptionalDouble.empty(),
                said.leftOut(),
                edges,
                marks);
    }
}
