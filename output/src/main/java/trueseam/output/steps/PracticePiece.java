package trueseam.output.steps;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trueseam.fitting.tissue.Frame;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.work.Chapter;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Bounds;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.output.drawing.Canvas;
import trueseam.output.drawing.Lettering;

/** A piece as it was bought, with the places that the hand needs; on the worked copy the finished lines as well. */
final class PracticePiece {

    private static final Lettering NUMBER = Lettering.of(2.3).heavy().backed();

    private final Piece piece;
    private final TableDrawing table;
    private final List<StepCell> cells;
    private final boolean worked;

    PracticePiece(Chapter chapter, List<StepCell> cells, boolean worked) {
        this.piece = chapter.before();
        this.cells = List.copyOf(cells);
        this.table = new TableDrawing(piece, chapter.steps(), cells);
        this.worked = worked;
    }

    /** The room that the finished lines and the words beside pins take, so that both copies lie alike. */
    Bounds area() {
        return table.area(cells).grown(40);
    }

    void draw(Canvas view) {
        table.original(view);
        if (worked) {
            table.tissue(view, cells.get(cells.size() - 1).last());
        }
        Map<Point, String> pins = new LinkedHashMap<>();
        Map<Point, String> marks = new LinkedHashMap<>();
        for (StepCell cell : cells) {
            for (int i = 0; i < cell.frames().size(); i++) {
                place(cell.frames().get(i), String.valueOf(cell.first() + i), pins, marks);
            }
        }
        marks.forEach((at, steps) -> {
            TableSymbols.mark(view, at, false);
            number(view, at, "mark " + steps, -3.4);
        });
        pins.forEach((at, steps) -> {
            TableSymbols.pin(view, at);
            number(view, at, "pin " + steps, 1.6);
        });
    }

    private void place(Frame frame, String number, Map<Point, String> pins, Map<Point, String> marks) {
        if (frame.step() instanceof Step.Pin pin) {
            add(pins, pin.at(), number);
        } else if (frame.step() instanceof Step.Spread spread) {
            pins.merge(spread.hinge().at(), number, (before, more) -> before + ", " + more);
        } else if (frame.step() instanceof Step.Mark mark) {
            add(marks, mark.from(), number);
        }
    }

    private void add(Map<Point, String> places, Place place, String number) {
        places.merge(place.on(piece), number, (before, more) -> before + ", " + more);
    }

    private static void number(Canvas view, Point at, String words, double upMm) {
        view.text(words, at.plus(new Vec(2, upMm).times(1 / view.scale())), NUMBER);
    }
}
