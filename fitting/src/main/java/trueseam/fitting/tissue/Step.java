package trueseam.fitting.tissue;

import java.util.List;
import trueseam.geometry.Path;

/**
 * One thing that hands do at the table. The permitted kinds are the whole language of alterations; a reader
 * ({@link StepReader}) has a method for each, so that a new kind breaks the build until it is carried out, printed and
 * played.
 */
public sealed interface Step {

    /**
     * Makes a mark on the tissue, so far out from a place of the pattern where it lay at first.
     *
     * @param name what the mark is called, unique in the piece's work
     * @param from the place
     * @param acrossMm out from it across the grain, mm, positive to the right
     * @param alongMm out from it along the grain, mm, positive towards the head
     */
    record Mark(String name, Place from, double acrossMm, double alongMm) implements Step {
        @Override
        public <R> R read(StepReader<R> reader) {
            return reader.mark(this);
        }
    }

    /**
     * Puts the pin through pattern and tissue.
     *
     * @param at the place of the pattern
     */
    record Pin(Place at) implements Step {
        @Override
        public <R> R read(StepReader<R> reader) {
            return reader.pin(this);
        }
    }

    /**
     * Turns the pattern about the pin.
     *
     * @param until when to stop
     */
    record Pivot(Until until) implements Step {
        @Override
        public <R> R read(StepReader<R> reader) {
            return reader.pivot(this);
        }
    }

    /**
     * Shifts the pattern without turning it; the pin is out.
     *
     * @param acrossMm across the grain, mm, positive to the right
     * @param alongMm along the grain, mm, positive towards the head
     */
    record Slide(double acrossMm, double alongMm) implements Step {
        @Override
        public <R> R read(StepReader<R> reader) {
            return reader.slide(this);
        }
    }

    /** Lays the pattern back to where it lay at first. */
    record LayBack() implements Step {
        @Override
        public <R> R read(StepReader<R> reader) {
            return reader.layBack(this);
        }
    }

    /**
     * Draws along the pattern's edge where the pattern lies now.
     *
     * @param stretches the parts of edges drawn
     * @param kept whether this is the first tracing, of all that is not altered
     */
    record Trace(List<Stretch> stretches, boolean kept) implements Step {

        // Immutable, and never empty: a pencil that draws nothing is no step.
        public Trace {
            stretches = List.copyOf(stretches);
            if (stretches.isEmpty()) {
                throw new IllegalArgumentException("A trace needs a stretch of an edge.");
            }
        }

        @Override
        public <R> R read(StepReader<R> reader) {
            return reader.trace(this);
        }
    }

    /**
     * Copies the marks inside the piece that lie below a level: dart points, landmarks, levels, the end of the grainline.
     * Marks that are not copied stay where they are; darts go with the edge that they are sewn into.
     *
     * @param levelY the level, mm, where the pattern lay at first
     */
    record TransferBelow(double levelY) implements Step {
        @Override
        public <R> R read(StepReader<R> reader) {
            return reader.transferBelow(this);
        }
    }

    /**
     * Cuts a part of the pattern loose and takes it into the hand: from one place of the outline through the piece to another, a
     * thread of paper holding it at its hinge. What is pivoted, slid and traced from now on is that part, until another part is
     * cut or the pattern is laid back.
     *
     * @param part what the part is called, unique in the piece's work
     * @param from where the part's outline begins, in the direction of the outline
     * @param through where the scissors turn, from {@code from} to {@code to}; may be empty
     * @param to where the part's outline ends
     */
    record Cut(String part, Place from, List<Spot> through, Place to) implements Step {
        // Immutable.
        public Cut {
            through = List.copyOf(through);
        }

        @Override
        public <R> R read(StepReader<R> reader) {
            return reader.cut(this);
        }
    }

    /**
     * Swings the part in the hand about its hinge: opens the cut, or laps it.
     *
     * @param hinge the hinge, where the pattern lay at first
     * @param until when to stop
     */
    record Spread(Spot hinge, Until until) implements Step {
        @Override
        public <R> R read(StepReader<R> reader) {
            return reader.spread(this);
        }
    }

    /**
     * Marks something inside the piece anew: a landmark, the point of a dart, a level.
     *
     * @param kind what kind of mark it is
     * @param name its name
     * @param acrossMm how far across the grain from where it would lie, mm, positive to the right; of the legs of a dart: each so
     *     far out along its edge, negative for in
     * @param alongMm how far along the grain from where it would lie, mm, positive towards the head
     */
    record Remark(Inside kind, String name, double acrossMm, double alongMm) implements Step {
        @Override
        public <R> R read(StepReader<R> reader) {
            return reader.remark(this);
        }
    }

    /** What is marked inside a piece. */
    enum Inside {
        /** A landmark, such as the bust point. */
        LANDMARK,
        /**
         * The point of a dart; of a dart sewn into an edge its legs stay equal; a dart with two points goes across as a whole, and
         * only its upper point goes up or down.
         */
        DART_POINT,
        /** The two legs of a dart at its mouth or its widest, each so far outwards; across the grain only. The point stays. */
        DART_LEGS,
        /** A level, by its word. */
        LEVEL,
        /** Another line inside, such as a buttonhole; it goes as a whole. */
        MARKING,
        /** The only notch of an edge, by the edge's name: so far along the edge, across the grain or not. */
        NOTCH
    }

    /**
     * Makes a dart of an opening at an edge.
     *
     * @param name what the dart is called
     * @param mouth the gap whose joined line becomes the mouth
     * @param point where the dart points to, where the pattern lay at first
     */
    record NewDart(String name, Stretch mouth, Spot point) implements Step {
        @Override
        public <R> R read(StepReader<R> reader) {
            return reader.newDart(this);
        }
    }

    /**
     * Rules an edge straight again along the line where it lay at first, such as a centre on the fold: what stands over it is
     * trimmed from its neighbours, what is missing is filled square across.
     *
     * @param edge the edge; straight where the pattern lay at first
     */
    record Straighten(String edge) implements Step {
        @Override
        public <R> R read(StepReader<R> reader) {
            return reader.straighten(this);
        }
    }

    /**
     * Takes a piece off the fold: it is cut twice as often, with a seam where the fold was.
     *
     * @param edge the edge that lay on the fold
     * @param allowanceMm cloth that is cut beyond the new seam, mm
     */
    record Unfold(String edge, double allowanceMm) implements Step {
        @Override
        public <R> R read(StepReader<R> reader) {
            return reader.unfold(this);
        }
    }

    /**
     * Traces a line over from another piece that lies beneath, already altered: a facing is drawn anew from what it faces.
     *
     * @param from the piece beneath
     * @param stretch the part of this piece's edge that it takes the place of
     * @param path the line of the piece beneath
     */
    record TraceOver(String from, Stretch stretch, Path path) implements Step {
        @Override
        public <R> R read(StepReader<R> reader) {
            return reader.traceOver(this);
        }
    }

    /**
     * Draws the line that closes a gap.
     *
     * @param gap the part of the edge that it takes the place of; of no length where the pattern was parted
     * @param form the kind of line
     */
    record Join(Stretch gap, JoinForm form) implements Step {
        @Override
        public <R> R read(StepReader<R> reader) {
            return reader.join(this);
        }
    }

    /**
     * Hands the step to the reader's method for its kind.
     *
     * @param reader carries out, prints or plays it
     * @param <R> what the reader makes of a step
     * @return what the reader made
     */
    <R> R read(StepReader<R> reader);
}
