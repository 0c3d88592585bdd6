package trueseam.intake.bring;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import trueseam.garment.finding.Finding;
import trueseam.garment.finding.Severity;
import trueseam.garment.pattern.PieceKind;
import trueseam.intake.apparel.ApparelPiece;
import trueseam.intake.drawing.Caption;
import trueseam.intake.naming.Naming;
import trueseam.intake.naming.Outline;
import trueseam.intake.naming.Proposal;
import trueseam.intake.outline.RawPiece;

/** Says what a piece is: by what its user says, else by its maker's name for it with the shape to confirm, else by its shape. */
final class PieceNaming {

    /** A piece that is more unlike every known kind than this is kept under its own name and not altered. */
    private static final double STRANGE = 1.2;

    /** What its maker names is believed of a shape that is up to twice as strange. */
    private static final double STRANGE_BUT_NAMED = 2.4;

    /** By so much another kind must be more like it before a name is doubted. */
    private static final double DOUBT = 0.5;

    private static final double SURE = 0.7;

    /** How sure a maker's own name is (our own scale). */
    private static final double NAMED = 0.95;

    /** How sure a rectangle is the band that its length makes it (our own scale). */
    private static final double BAND = 0.7;

    /** Of two that look alike the one is as good as the other. */
    private static final double EVEN = 0.5;

    private final Naming naming;
    private final BringChoices choices;
    private final List<Finding> findings;

    PieceNaming(Naming naming, BringChoices choices, List<Finding> findings) {
        this.naming = naming;
        this.choices = choices;
        this.findings = findings;
    }

    Named name(Outline outline, RawPiece raw, Optional<ApparelPiece> told, Optional<PieceKind> corrected, int number) {
        Optional<PieceKind> said =
                corrected.or(() -> Optional.ofNullable(choices.kinds().get(number)));
        if (said.isPresent()) {
            Optional<Proposal> proposal = naming.propose(outline, said.get());
            String name = told.map(ApparelPiece::name).orElse(said.get().word());
            return Named.of(name, Sure.said(said.get()), proposal);
        }
        if (told.isPresent()) {
            Set<PieceKind> kinds = NamedKinds.of(told.get().name());
            if (kinds.isEmpty()) {
                kinds = NamedKinds.of(told.get().category());
            }
            if (!kinds.isEmpty()) {
                return byName(outline, told.get(), kinds, number);
            }
        }
        return byShape(outline, raw, told, number);
    }

    private Named byName(Outline outline, ApparelPiece told, Set<PieceKind> kinds, int number) {
        String name = told.name();
        Optional<Proposal> proposal = naming.propose(outline, kinds);
        if (proposal.isEmpty()) {
            PieceKind kind = kinds.size() == 1 ? kinds.iterator().next() : PieceKind.OTHER;
            findings.add(Finding.note(
                    name,
                    "By its name it is a " + kind.word()
                            + "; kinds like that have no usual shape, so its edges are only" + " numbered."));
            return Named.of(name, Sure.proposed(kind, kind == PieceKind.OTHER ? 0 : NAMED), Optional.empty());
        }
        Proposal p = proposal.get();
        Optional<Proposal> shape =
                naming.propose(new Outline(outline.line(), outline.inside(), List.of(), outline.marked()));
        boolean doubted = shape.filter(s -> !kinds.contains(s.kind()) && s.unlike() + DOUBT < p.unlike())
                .isPresent();
        if (p.unlike() > STRANGE_BUT_NAMED) {
            findings.add(Finding.warning(
                    name,
                    String.format(
                            Locale.ROOT,
                            "By its name it is a %s, and its shape is not that of one; it is kept and printed, and not altered."
                                    + " Say what it is with --piece \"%d=...\".",
                            p.kind().word(),
                            number)));
            return new Named(name, Sure.proposed(PieceKind.OTHER, 0), Optional.empty(), List.of(p.kind()), "");
        }
        findings.add(new Finding(
                doubted || p.confidence() < SURE ? Severity.WARNING : Severity.NOTE,
                name,
                String.format(
                        Locale.ROOT,
                        "By its name it is a %s, which its shape %s; say --piece \"%d=...\" if it is not.",
                        p.kind().word(),
                        doubted
                                ? "does not confirm: it is more like a "
                                        + shape.orElseThrow().kind().word()
                                : String.format(Locale.ROOT, "confirms (%.0f in 100 sure)", 100 * p.confidence()),
                        number)));
        double sure = doubted ? EVEN : Math.max(NAMED, p.confidence());
        return Named.of(name, Sure.proposed(p.kind(), sure), proposal);
    }

    private Named byShape(Outline outline, RawPiece raw, Optional<ApparelPiece> told, int number) {
        Optional<String> own = told.map(ApparelPiece::name);
        Optional<PieceKind> band = BandShape.of(outline);
        if (band.isPresent()) {
            return band(band.get(), own, number);
        }
        Optional<Proposal> proposal = naming.propose(outline);
        if (proposal.filter(p -> p.unlike() < STRANGE).isEmpty()) {
            String name = own.orElseGet(() -> label(raw, number));
            findings.add(Finding.warning(
                    name,
                    "Piece " + number + " of the drawing is like no piece that is known by its shape"
                            + proposal.map(p -> " (the most like a " + p.kind().word() + ")")
                                    .orElse("")
                            + "; it is kept and printed, and not altered. Say what it is with --piece \"" + number
                            + "=...\"."));
            List<PieceKind> others = proposal.map(p -> Stream.concat(Stream.of(p.kind()), p.others().stream())
                            .toList())
                    .orElse(List.of());
            return new Named(name, Sure.proposed(PieceKind.OTHER, 0), Optional.empty(), others, "");
        }
        Proposal p = proposal.get();
        String name = own.orElse(p.kind().word());
        String ask = ask(p, outline.words());
        double sure = ask.isEmpty() ? p.confidence() : Math.min(p.confidence(), EVEN);
        String others = p.others().isEmpty()
                ? ""
                : "; else " + p.others().stream().limit(3).map(PieceKind::word).collect(Collectors.joining(", "));
        findings.add(new Finding(
                sure < SURE ? Severity.WARNING : Severity.NOTE,
                name,
                String.format(
                        Locale.ROOT,
                        "Piece %d of the drawing is taken for a %s (%.0f in 100 sure%s); say --piece \"%d=...\" if it is"
                                + " not.%s",
                        number,
                        p.kind().word(),
                        100 * sure,
                        others,
                        number,
                        ask.isEmpty() ? "" : " " + ask)));
        return new Named(name, Sure.proposed(p.kind(), sure), proposal, p.others(), ask);
    }

    private Named band(PieceKind kind, Optional<String> own, int number) {
        String name = own.orElse(kind.word());
        findings.add(Finding.note(
                name,
                String.format(
                        Locale.ROOT,
                        "Piece %d of the drawing is a long rectangle and is taken for a %s (%.0f in 100 sure; else another band, or a"
                                + " facing); say --piece \"%d=...\" if it is not.",
                        number,
                        kind.word(),
                        100 * BAND,
                        number)));
        List<PieceKind> others = Stream.of(PieceKind.WAISTBAND, PieceKind.CUFF, PieceKind.COLLAR, PieceKind.FACING)
                .filter(k -> k != kind)
                .toList();
        return new Named(name, Sure.proposed(kind, BAND), Optional.empty(), others, "");
    }

    /** What nobody can see: of some pieces front and back have one shape, and only words tell them apart. */
    private static String ask(Proposal proposal, List<String> words) {
        Optional<PieceKind> other = otherSide(proposal.kind()).filter(proposal.others()::contains);
        boolean written =
                words.stream().anyMatch(w -> w.toLowerCase(Locale.ROOT).matches(".*\\b(front|back)\\b.*"));
        return other.isEmpty() || proposal.confidence() >= SURE || written
                ? ""
                : "Front and back of such a piece look alike, and nothing written in it tells them apart. Is it the "
                        + proposal.kind().word() + " or the " + other.get().word() + "?";
    }

    /** Of a front the back that it would be, and the other way round. */
    static Optional<PieceKind> otherSide(PieceKind kind) {
        String word = kind.word();
        return PieceKind.ofWord(word.contains("front") ? word.replace("front", "back") : word.replace("back", "front"))
                .filter(other -> other != kind);
    }

    private static String label(RawPiece raw, int number) {
        return raw.captions().stream()
                .max(Comparator.comparingDouble(Caption::heightMm))
                .map(Caption::text)
                .filter(t -> t.length() <= 40)
                .orElse("piece " + number);
    }
}
