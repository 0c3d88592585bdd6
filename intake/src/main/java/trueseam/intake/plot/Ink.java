package trueseam.intake.plot;

import java.util.ArrayList;
import java.util.List;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.intake.drawing.Caption;
import trueseam.intake.drawing.DrawingException;
import trueseam.intake.drawing.Look;
import trueseam.intake.drawing.Stroke;

/** What the pens of a plotter have drawn. A line goes on until the pen is lifted or changed. One plot, one thread. */
final class Ink {

    private static final int MOST_STROKES = 500_000;
    private static final int MOST_LINES = 200_000;
    static final double USUAL_WIDTH_MM = Look.PLAIN.widthMm();

    final List<Stroke> strokes = new ArrayList<>();
    final List<Caption> captions = new ArrayList<>();

    private final String file;
    private final List<Segment> line = new ArrayList<>();
    private int pen = 1;
    private int lineType;
    private double widthMm = USUAL_WIDTH_MM;
    private int drawn;

    Ink(String file) {
        this.file = file;
    }

    void take(int number) {
        finish();
        pen = number;
    }

    void lineType(int number) {
        finish();
        lineType = number;
    }

    void width(double mm) {
        finish();
        widthMm = 0 <= mm && mm <= 10 ? mm : USUAL_WIDTH_MM;
    }

    /** Goes on with the line. */
    void draw(Segment s) {
        count(1);
        line.add(s);
    }

    /** Ends the line. */
    void finish() {
        if (!line.isEmpty()) {
            keep(Path.of(line));
            line.clear();
        }
    }

    /** Draws a whole line by itself. */
    void draw(Path whole) {
        finish();
        count(whole.segments().size());
        keep(whole);
    }

    void write(String words, Point at, double heightMm) {
        count(1);
        captions.add(new Caption(words, at, heightMm, layer()));
    }

    private void keep(Path path) {
        if (pen != 0) { // pen 0 is none
            strokes.add(new Stroke(path, Pens.look(pen, lineType, widthMm), layer(), ""));
        }
    }

    private String layer() {
        return "pen " + pen;
    }

    private void count(int more) {
        drawn += more;
        if (drawn > MOST_STROKES || strokes.size() + captions.size() > MOST_LINES) {
            throw new DrawingException(
                    file,
                    "",
                    "more than " + MOST_STROKES + " strokes or " + MOST_LINES
                            + " lines are drawn; that is no pattern.");
        }
    }
}
