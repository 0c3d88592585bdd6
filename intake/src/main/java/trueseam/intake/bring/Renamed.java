package trueseam.intake.bring;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import trueseam.geometry.Path;
import trueseam.intake.naming.Naming;
import trueseam.intake.naming.Outline;
import trueseam.intake.naming.Proposal;
import trueseam.intake.naming.Proposal.NamedEdge;
import trueseam.intake.naming.SaidStretch;
import trueseam.intake.said.EdgeSaid;

/**
 * A proposal in which somebody named edges: those have her names, the others keep the proposed ones, and the piece is laid anew so that
 * its edges lie where edges of such names lie.
 *
 * @param proposal the proposal with her names
 * @param said the names that she gave
 */
record Renamed(Proposal proposal, Set<String> said) {

    /** Edges that were cut out of the very line lie on it. */
    private static final double ON_MM = 1e-3;

    /**
     * Names edges as was said.
     *
     * @param naming lays the piece
     * @param outline its outline as drawn
     * @param proposed what it was taken for
     * @param drawn what was said, in the drawing
     * @param withinMm how near the ends must lie
     * @param misfit hears of what does not fit
     */
    static Renamed of(
            Naming naming,
            Outline outline,
            Proposal proposed,
            List<EdgeSaid> drawn,
            double withinMm,
            Consumer<EdgeSaid> misfit) {
        if (drawn.isEmpty()) {
            return new Renamed(proposed, Set.of());
        }
        Upright before = new Upright(proposed.mirrored(), proposed.turn());
        NamedChain chain = NamedChain.of(
                proposed.edges(),
                NamedChain.moved(drawn, before::apply),
                withinMm,
                e -> misfit.accept(NamedChain.moved(List.of(e), before::undone).get(0)));
        if (chain.said().isEmpty()) {
            return new Renamed(proposed, Set.of());
        }
        List<SaidStretch> stretches = new ArrayList<>();
        for (NamedEdge edge : chain.edges()) {
            SaidStretch.between(
                            edge.name(),
                            edge.role(),
                            outline.line(),
                            List.of(),
                            before.undone(edge.path().start()),
                            before.undone(edge.path().end()),
                            OptionalDouble.of(edge.path().length()),
                            ON_MM)
                    .ifPresent(stretches::add);
        }
        Optional<Proposal> laid = naming.propose(outline, proposed.kind(), stretches);
        boolean mirrored = laid.map(Proposal::mirrored).orElse(proposed.mirrored());
        var turn = laid.map(Proposal::turn).orElse(proposed.turn());
        Upright after = new Upright(mirrored, turn);
        List<NamedEdge> edges =
                relaid(chain.edges(), p -> after.apply(before.undone(p)), mirrored != proposed.mirrored());
        return new Renamed(
                new Proposal(
                        proposed.kind(),
                        proposed.unlike(),
                        proposed.confidence(),
                        mirrored,
                        turn,
                        edges,
                        proposed.others()),
                chain.said());
    }

    private static List<NamedEdge> relaid(List<NamedEdge> edges, UnaryOperator<Path> how, boolean over) {
        List<NamedEdge> all = new ArrayList<>();
        for (NamedEdge edge : edges) {
            Path path = how.apply(edge.path());
            all.add(new NamedEdge(edge.name(), edge.role(), over ? path.reversed() : path, edge.confidence()));
        }
        if (over) {
            Collections.reverse(all);
        }
        return all;
    }
}
