package trueseam.intake.namesfile;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.PieceKind;
import trueseam.geometry.Point;
import trueseam.intake.bring.Brought;
import trueseam.intake.bring.BroughtPiece;
import trueseam.intake.bring.BroughtPiece.BroughtEdge;
import trueseam.intake.bring.BroughtPiece.BroughtMark;
import trueseam.intake.bring.BroughtSeam;
import trueseam.intake.naming.EdgeWords;
import trueseam.intake.said.Corrections;
import trueseam.intake.said.EdgeSaid;
import trueseam.intake.said.Frame;
import trueseam.intake.said.LineTaken;
import trueseam.intake.said.MarkSaid;
import trueseam.intake.said.PieceCorrection;
import trueseam.intake.said.SeamSaid;

/** Writes a names file, line by line. One file, one thread. */
final class NamesWriter {

    /** Remarks stand below each other where the facts leave them room. */
    private static final int REMARK_COLUMN = 64;

    private final StringBuilder text = new StringBuilder();

    String all(String drawing, Brought brought) {
        remark("Names for " + drawing
                + ". Change what is wrong, keep the file beside the drawing, and bring the drawing in again.");
        remark(
                "One line is one fact; what stands behind a # is a remark and is not read. Lengths are in mm; places are told from the left");
        remark(
                "and lower end of the piece as it is drawn. A line that you take out is proposed anew. If you change only what a piece is, its");
        remark("edges, fold and seams are named anew for it.");
        remark("Kinds of pieces: "
                + java.util.Arrays.stream(PieceKind.values())
                        .map(PieceKind::word)
                        .collect(Collectors.joining(", "))
                + "; or left out.");
        for (BroughtPiece piece : brought.pieces()) {
            text.append('\n');
            piece(piece);
        }
        text.append('\n');
        remark(
                "Seams: name; one side; the other side, the eased one; its ease. Chains of edges are joined by +. Two edges that are");
        remark("taken for partners and are none: no seam: one side; the other side");
        brought.seams().forEach(this::seam);
        brought.corrections().seams().stream().filter(s -> !s.sewn()).forEach(s -> line(seam(s), ""));
        return text.toString();
    }

    String said(Corrections corrections) {
        for (PieceCorrection piece : corrections.pieces()) {
            said(piece);
        }
        corrections.seams().forEach(s -> line(seam(s), ""));
        return text.toString();
    }

    private void said(PieceCorrection piece) {
        String kind = piece.leftOut()
                ? NamesReader.LEFT_OUT
                : piece.kind().map(PieceKind::word).orElse("");
        line(("piece " + piece.number() + ": " + kind).strip(), "");
        piece.frame().ifPresent(f -> line(frame(f), ""));
        piece.name().ifPresent(n -> line("  name: " + n, ""));
        piece.cut().ifPresent(n -> line("  cut: " + n, ""));
        piece.fold().ifPresent(f -> line("  fold: " + fold(f), ""));
        piece.line().ifPresent(l -> line("  line: " + drawn(l, piece.allowanceMm()), ""));
        piece.edges().forEach(e -> line(edge(piece.kind().orElse(PieceKind.OTHER), e), ""));
        piece.marks().forEach(m -> line(mark(m), ""));
    }

    private void piece(BroughtPiece piece) {
        if (!piece.ask().isEmpty()) {
            remark("PLEASE SAY: " + piece.ask() + " Write the right one behind the colon.");
        }
        if (piece.piece().isEmpty()) {
            line("piece " + piece.number() + ": " + NamesReader.LEFT_OUT, "");
            line(frame(piece.frame()), "");
            return;
        }
        String others = piece.others().isEmpty() || piece.kind().said()
                ? ""
                : "; else "
                        + piece.others().stream().limit(3).map(PieceKind::word).collect(Collectors.joining(", "));
        line(
                "piece " + piece.number() + ": " + piece.kind().value().word(),
                piece.kind().words() + others);
        line(frame(piece.frame()), "");
        line("  name: " + piece.name(), "");
        line("  cut: " + piece.cut().value(), piece.cut().words());
        line("  fold: " + fold(piece.fold().value()), piece.fold().words());
        LineTaken taken = piece.line().value();
        line(
                "  line: " + drawn(taken, OptionalDouble.of(piece.allowanceMm())),
                piece.line().words() + "; " + taken.meaning() + "; may be stitching, cutting"
                        + (piece.hasInner() ? ", inner" : ""));
        for (BroughtEdge edge : piece.edges()) {
            line(edge(piece.kind().value(), edge.asSaid()), edge.name().words());
        }
        for (BroughtMark mark : piece.marks()) {
            line(mark(mark.asSaid()), mark.is().words() + "; on the " + mark.edge());
        }
    }

    private void seam(BroughtSeam seam) {
        line(
                seam(seam.asSaid()),
                String.format(
                        Locale.ROOT,
                        "%s; %.1f and %.1f mm; %s",
                        seam.seam().words(),
                        seam.firstMm(),
                        seam.secondMm(),
                        seam.reason()));
    }

    private static String frame(Frame f) {
        return String.format(
                Locale.ROOT, "  place: %.1f right %.1f up, %.1f wide %.1f high", f.right(), f.up(), f.wide(), f.high());
    }

    private static String fold(String edge) {
        return edge.isEmpty() ? NamesReader.NONE : edge;
    }

    private static String drawn(LineTaken taken, OptionalDouble allowance) {
        return taken.word()
                + (allowance.isPresent() && taken != LineTaken.INNER
                        ? String.format(Locale.ROOT, ", %.1f mm allowance", allowance.getAsDouble())
                        : "");
    }

    private static String edge(PieceKind kind, EdgeSaid edge) {
        String role = EdgeWords.role(kind, edge.name()) == edge.role()
                ? ""
                : " (" + edge.role().word() + ")";
        return "  edge: " + edge.name() + role + ", " + point(edge.from()) + " to " + point(edge.to())
                + (edge.longMm().isPresent()
                        ? String.format(
                                Locale.ROOT, ", %.1f long", edge.longMm().getAsDouble())
                        : "");
    }

    private static String mark(MarkSaid mark) {
        return "  " + (mark.is() ? "" : "no ") + mark.what().name().toLowerCase(Locale.ROOT) + ": " + point(mark.at());
    }

    private static String point(Point p) {
        return String.format(Locale.ROOT, "%.1f right %.1f up", p.x() + 0.0, p.y() + 0.0);
    }

    private static String seam(SeamSaid seam) {
        String sides = side(seam.first()) + "; " + side(seam.second());
        if (!seam.sewn()) {
            return "no seam: " + sides;
        }
        return "seam: " + seam.name() + "; " + sides
                + (seam.easeMm().isPresent()
                        ? String.format(
                                Locale.ROOT, "; %.1f mm ease", seam.easeMm().getAsDouble() + 0.0)
                        : "");
    }

    private static String side(List<EdgeRef> side) {
        return side.stream().map(r -> r.piece() + " / " + r.edge()).collect(Collectors.joining(" + "));
    }

    private void remark(String words) {
        text.append("# ").append(words).append('\n');
    }

    private void line(String fact, String remark) {
        text.append(fact);
        if (!remark.isEmpty()) {
            text.append(" ".repeat(Math.max(1, REMARK_COLUMN - fact.length())))
                    .append("# ")
                    .append(remark);
        }
        text.append('\n');
    }
}
