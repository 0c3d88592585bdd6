package trueseam.intake.bring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trueseam.garment.pattern.Edge;
import trueseam.geometry.Point;
import trueseam.intake.bring.BroughtPiece.BroughtMark;
import trueseam.intake.said.Frame;
import trueseam.intake.said.MarkSaid;

/** Which darts and notches of a piece were found, and which of them somebody says are none. One piece, one thread. */
final class SaidMarks {

    private final List<MarkSaid> said;
    private final Upright upright;
    private final Frame frame;
    private final List<BroughtMark> found = new ArrayList<>();

    SaidMarks(List<MarkSaid> said, Upright upright, Frame frame) {
        this.said = said;
        this.upright = upright;
        this.frame = frame;
    }

    /** Notes what was found, and tells whether it is taken for one. */
    boolean takes(MarkSaid.What what, Edge edge, Point lying, double confidence) {
        MarkSaid mark = new MarkSaid(what, frame.told(upright.undone(lying)), true);
        Optional<MarkSaid> other = said.stream().filter(mark::isSameMark).findFirst();
        boolean is = other.map(MarkSaid::is).orElse(true);
        found.add(new BroughtMark(
                what, edge.name(), mark.at(), other.isPresent() ? Sure.said(is) : Sure.proposed(true, confidence)));
        return is;
    }

    List<BroughtMark> found() {
        return found;
    }

    /** What is said of marks that are not there. */
    List<MarkSaid> lost() {
        return said.stream()
                .filter(m -> found.stream().noneMatch(f -> f.asSaid().isSameMark(m)))
                .toList();
    }
}
