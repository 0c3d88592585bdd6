package trueseam.output.steps;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import trueseam.fitting.tissue.Frame;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Spot;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepReader;
import trueseam.fitting.tissue.Stretch;
import trueseam.fitting.tissue.Tissue;
import trueseam.fitting.tissue.Until;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.pattern.Piece;
import trueseam.geometry.Point;
import trueseam.geometry.Vec;
import trueseam.output.words.RulerLength;

/**
 * Says each step in words that a beginner can follow: amounts in her own units, sides in trade words, places by their names.
 *
 * <p>Laws: (1) one text a step, in their order; (2) out and in are told from the outline of the piece, so that a mirrored
 * piece is told alike; (3) what a pivot does beside its purpose (its turn, the rise of the place) is told from where the
 * pattern lies before and after.
 */
public final class StepWords implements StepReader<String> {

    private final Piece piece;
    private final List<Step> steps;
    private final List<Frame> frames;
    private final RulerLength ruler;
    private final PlaceNames names;
    private final Outward outward;
    private int at;

    private StepWords(Piece piece, List<Step> steps, List<Frame> frames, LengthFormat show) {
        this.piece = piece;
        this.steps = steps;
        this.frames = frames;
        this.ruler = new RulerLength(show);
        this.names = new PlaceNames(piece, steps, show);
        this.outward = new Outward(piece);
    }

    /**
     * The words for a list of steps.
     *
     * @param piece the piece as it lies on the tissue at first
     * @param steps a finished list
     * @param show the user's units
     * @return a sentence or two for each step, in the order of the steps
     * @throws trueseam.fitting.tissue.TissueException if the steps cannot be carried out
     */
    public static List<String> of(Piece piece, List<Step> steps, LengthFormat show) {
        return ofFrames(piece, Tissue.play(piece, steps), show);
    }

    /** The words for steps that were played already. */
    static List<String> ofFrames(Piece piece, List<Frame> frames, LengthFormat show) {
        List<Step> steps = frames.stream().map(Frame::step).toList();
        StepWords words = new StepWords(piece, steps, frames, show);
        List<String> said = new ArrayList<>(frames.size());
        for (words.at = 0; words.at < frames.size(); words.at++) {
            said.add(steps.get(words.at).read(words));
        }
        return List.copyOf(said);
    }

    @Override
    public String mark(Step.Mark step) {
        Vec out = outward.at(step.from());
        List<String> ways = new ArrayList<>();
        if (!ruler.isHidden(step.acrossMm())) {
            ways.add(ruler.show(step.acrossMm()) + " " + Outward.across(step.acrossMm(), out));
        }
        if (!ruler.isHidden(step.alongMm())) {
            ways.add(ruler.show(step.alongMm()) + " " + Outward.along(step.alongMm()));
        }
        String from = names.place(step.from());
        String line = isMetAlong(step.name()) ? "a short level line" : "a short upright line";
        if (ways.isEmpty()) {
            return "Mark " + from + " where it is, with " + line + " through it: the " + step.name() + ".";
        }
        String how = step.alongMm() == 0
                ? ", straight across the grain"
                : step.acrossMm() == 0 ? ", straight along the grain" : "";
        return "Mark " + String.join(" and ", ways) + " from " + from + how + ", with " + line + " through it: the "
                + step.name() + ".";
    }

    private boolean isMetAlong(String mark) {
        for (Step step : steps) {
            if (NamedPlace.levelMark(step).filter(mark::equals).isPresent()) {
                return true;
            }
        }
        return false;
    }

    @Override
    public String pin(Step.Pin step) {
        String move = pinBefore().isPresent() ? "Move the pin to " : "Put the pin through ";
        return move + names.place(step.at()) + ".";
    }

    private Optional<Point> pinBefore() {
        return at == 0 ? Optional.empty() : frames.get(at - 1).pin();
    }

    @Override
    public String pivot(Step.Pivot step) {
        return swung("Pivot the pattern until ", step.until());
    }

    private String swung(String lead, Until stop) {
        String turn = degrees(
                frames.get(at).before().inverse().then(frames.get(at).pose()).turnRad());
        return stop.read(new Until.Reader<String>() {
            @Override
            public String meetsAcross(Until.MeetsAcross until) {
                return lead + names.place(until.place()) + " meets the upright line of the " + until.mark()
                        + " (it swings " + turn + rise(until.place()) + ").";
            }

            @Override
            public String meetsAlong(Until.MeetsAlong until) {
                return lead + names.place(until.place()) + " meets the level line of the " + until.mark()
                        + " (it swings " + turn + shift(until.place()) + ").";
            }

            @Override
            public String grainUpright(Until.GrainUpright until) {
                return lead + "its grainline stands upright again (it swings back " + turn + ").";
            }

            @Override
            public String movesAcross(Until.MovesAcross until) {
                return lead + "the " + until.spot().word() + " has gone " + ruler.show(until.acrossMm()) + " "
                        + Outward.side(until.acrossMm()) + " (it swings " + turn + ").";
            }

            @Override
            public String movesAlong(Until.MovesAlong until) {
                return lead + "the " + until.spot().word() + " has gone " + ruler.show(until.alongMm()) + " "
                        + Outward.along(until.alongMm()) + " (it swings " + turn + ").";
            }
        });
    }

    private static String degrees(double rad) {
        double shown = Math.abs(Math.toDegrees(rad));
        return shown < 0.05 ? "less than 0.1 degrees" : String.format(Locale.ROOT, "%.1f degrees", shown);
    }

    private Vec moved(Place place) {
        Point p = place.on(piece);
        return frames.get(at).pose().apply(p).minus(frames.get(at).before().apply(p));
    }

    private String rise(Place place) {
        double up = moved(place).y();
        return ruler.isHidden(up) ? "" : (up > 0 ? " and rises " : " and drops ") + ruler.show(up);
    }

    private String shift(Place place) {
        double across = moved(place).x();
        return ruler.isHidden(across)
                ? ""
                : " and goes " + ruler.show(across) + " " + Outward.across(across, outward.at(place));
    }

    @Override
    public String slide(Step.Slide step) {
        List<String> ways = new ArrayList<>();
        if (step.acrossMm() != 0) {
            Vec out = outward.of(tracedNext());
            String side = Outward.side(step.acrossMm());
            String way = Outward.across(step.acrossMm(), out);
            ways.add(ruler.show(step.acrossMm()) + " " + way + (way.equals(side) ? "" : " (" + side + ")"));
        }
        if (step.alongMm() != 0) {
            ways.add(ruler.show(step.alongMm()) + " " + Outward.along(step.alongMm()));
        }
        String how = step.alongMm() == 0
                ? ", straight across the grain"
                : step.acrossMm() == 0 ? ", straight along the grain" : "";
        String lead = pinBefore().isPresent() ? "Take out the pin and slide" : "Slide";
        String what = frames.get(at).paper().get(0).inHand() ? " the pattern " : " the part ";
        return ways.isEmpty()
                ? lead + what + "nowhere."
                : lead + what + String.join(" and ", ways) + how + ", without turning it.";
    }

    /** What is traced next says which side of the piece a slide is for: first of all what is traced where the pattern lies now. */
    private List<Stretch> tracedNext() {
        List<Stretch> here = new ArrayList<>();
        List<Stretch> later = new ArrayList<>();
        for (int i = at + 1; i < steps.size() && !(steps.get(i) instanceof Step.LayBack); i++) {
            if (steps.get(i) instanceof Step.Trace trace) {
                boolean lies = frames.get(i).pose().equals(frames.get(at).pose());
                (lies ? here : later).addAll(trace.stretches());
            }
        }
        return here.isEmpty() ? later : here;
    }

    @Override
    public String layBack(Step.LayBack step) {
        String lead = pinBefore().isPresent() ? "Take out the pin and lay" : "Lay";
        return lead + " the pattern back exactly where it lay at first.";
    }

    @Override
    public String trace(Step.Trace step) {
        List<String> said = new ArrayList<>();
        for (Stretch stretch : step.stretches()) {
            said.add(step.kept() || step.stretches().size() > 1 ? names.shortStretch(stretch) : names.stretch(stretch));
        }
        String all = listed(said);
        List<String> riding = new RidingMarks(piece).words(step.stretches());
        if (!step.kept()) {
            return "Trace " + all + (riding.isEmpty() ? "" : ", with " + enumerated(riding)) + ".";
        }
        List<String> inside = new ArrayList<>(riding);
        inside.add("the grainline");
        inside.add("the marks inside");
        return "Trace everything that stays: " + all + ". Copy " + enumerated(inside) + " too.";
    }

    private static String listed(List<String> said) {
        int last = said.size() - 1;
        return last == 0 ? said.get(0) : String.join("; ", said.subList(0, last)) + "; and " + said.get(last);
    }

    private static String enumerated(List<String> said) {
        int last = said.size() - 1;
        return last == 0 ? said.get(0) : String.join(", ", said.subList(0, last)) + " and " + said.get(last);
    }

    @Override
    public String transferBelow(Step.TransferBelow step) {
        return "Copy every mark inside the piece that lies below "
                + names.levelAt(step.levelY()).map(word -> "the " + word).orElse("the line")
                + ": dart points, levels, the lower end of the grainline.";
    }

    @Override
    public String join(Step.Join step) {
        Stretch gap = step.gap();
        if (gap.lengthMm() == 0) {
            return "Join the two ends of the " + names.edge(gap.edge()) + " at " + names.place(gap.edge(), gap.fromMm())
                    + " with a ruler.";
        }
        return step.form().read(new JoinForm.Reader<String>() {
            @Override
            public String straight(JoinForm.Straight form) {
                return "Join " + names.stretch(gap) + " with a ruler.";
            }

            @Override
            public String curve(JoinForm.Curve form) {
                String length = form.lengthMm().isPresent()
                        ? " " + ruler.show(form.lengthMm().getAsDouble()) + " long"
                        : "";
                return "Join " + names.stretch(gap) + " with a smooth curve" + length + ".";
            }

            @Override
            public String refit(JoinForm.Refit form) {
                return "Draw " + names.stretch(gap) + " as it was, fitted between its new ends.";
            }
        });
    }

    @Override
    public String cut(Step.Cut step) {
        StringBuilder said = new StringBuilder("Cut from " + names.place(step.from()));
        for (Spot spot : step.through()) {
            said.append(" to the ").append(spot.word()).append(",");
        }
        return said + (step.through().isEmpty() ? "" : " and on") + " to " + names.place(step.to())
                + ": this cuts loose the " + step.part() + "."
                + (isSwungNext() ? " Leave a thread of paper uncut where it is to hinge." : "");
    }

    /** Whether what is in the hand now swings about a hinge before another part is cut. */
    private boolean isSwungNext() {
        for (Step next : steps.subList(at + 1, steps.size())) {
            if (next instanceof Step.Spread) {
                return true;
            } else if (next instanceof Step.Cut || next instanceof Step.LayBack) {
                return false;
            }
        }
        return false;
    }

    @Override
    public String spread(Step.Spread step) {
        return swung("Swing the part about the " + step.hinge().word() + " until ", step.until());
    }

    @Override
    public String remark(Step.Remark step) {
        if (step.kind() == Step.Inside.DART_LEGS) {
            return "Draw the legs of the " + step.name() + " anew from the same point, each "
                    + ruler.show(Math.abs(step.acrossMm()))
                    + (step.acrossMm() > 0 ? " farther from" : " nearer to") + " the other at the edge.";
        }
        if (step.kind() == Step.Inside.NOTCH) {
            return "Mark the notch of the " + names.edge(step.name()) + " anew, "
                    + ruler.show(Math.abs(step.acrossMm()))
                    + " along the edge from where it lies, at the walked place.";
        }
        List<String> ways = new ArrayList<>();
        if (!ruler.isHidden(step.acrossMm())) {
            ways.add(ruler.show(step.acrossMm()) + " " + Outward.side(step.acrossMm()));
        }
        if (!ruler.isHidden(step.alongMm())) {
            ways.add(ruler.show(step.alongMm()) + " " + Outward.along(step.alongMm()));
        }
        String what =
                switch (step.kind()) {
                    case LANDMARK, MARKING -> step.name();
                    case DART_POINT, DART_LEGS -> "point of the " + step.name();
                    case LEVEL -> step.name() + " level";
                    case NOTCH -> "notch of the " + names.edge(step.name());
                };
        String legs = step.kind() == Step.Inside.DART_POINT ? " Draw its legs anew, both of one length." : "";
        return "Mark the " + what + " anew, "
                + (ways.isEmpty() ? "where it lies" : String.join(" and ", ways) + " from where it lies") + "." + legs;
    }

    @Override
    public String newDart(Step.NewDart step) {
        return "Make the opening at "
                + names.place(step.mouth().edge(), step.mouth().fromMm())
                + " into a dart that points to the " + step.point().word() + ": the " + step.name()
                + ", both legs of one length.";
    }

    @Override
    public String straighten(Step.Straighten step) {
        return "Rule the " + names.edge(step.edge())
                + " straight again along the line where it lay; trim what stands over it, fill what is missing square across.";
    }

    @Override
    public String unfold(Step.Unfold step) {
        return "The " + names.edge(step.edge())
                + " is no longer a fold but a seam: write \"cut 2\" on the piece, and add "
                + ruler.show(step.allowanceMm()) + " beyond it for the seam.";
    }

    @Override
    public String traceOver(Step.TraceOver step) {
        return "Lay the tissue over the altered " + step.from() + " and trace " + names.shortStretch(step.stretch())
                + " from it.";
    }
}
