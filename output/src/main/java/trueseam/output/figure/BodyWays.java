package trueseam.output.figure;

import java.util.ArrayList;
import java.util.List;

/** The places on a body that a tape runs over, and the ways between them, on the wearer's left where there are two. */
final class BodyWays {
    private static final int STEPS = 16;

    private final Form f;

    BodyWays(Form form) {
        f = form;
    }

    double waist() {
        return f.mm(FigureSize.WAIST);
    }

    double hip() {
        return f.mm(FigureSize.HIP);
    }

    /** Over the fullest chest and close under the armpits: a third of the way from the bust level up to them. */
    double chest() {
        return f.mm(FigureSize.BUST) + (f.armpit.y() - f.mm(FigureSize.BUST)) / 3;
    }

    Spot bustPoint() {
        return f.trunk.over(f.mm(FigureSize.BUST_POINTS) / 2, f.mm(FigureSize.BUST), true);
    }

    Spot middleOfKnee() {
        return f.leg.at(f.mm(FigureSize.KNEE), Math.PI / 2);
    }

    Spot elbow() {
        return new Spot(f.arm.outer().at(f.elbow.y()), f.elbow.y(), 0, 0);
    }

    Spot wrist() {
        return new Spot(f.arm.outer().at(f.wrist.y()), f.wrist.y(), 0, 0);
    }

    Spot centre(double y, boolean inFront) {
        return f.trunk.over(0, y, inFront);
    }

    /** Half way between shoulder point and armpit; the creases of the back lie further out than those in front. */
    Spot crease(boolean inFront) {
        double y = (f.shoulder.y() + f.armpit.y()) / 2;
        double x = f.mm(FigureSize.CREASE_BREADTH) / 2 * (inFront ? 1 : 1.04);
        return new Spot(x, y, 0, inFront ? 0.3 : -0.3);
    }

    static List<Spot> straight(Spot from, Spot to) {
        List<Spot> line = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            line.add(from.towards(to, (double) i / STEPS));
        }
        return line;
    }

    List<Spot> middle(double from, double to, boolean inFront) {
        List<Spot> line = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            line.add(centre(from + (to - from) * i / STEPS, inFront));
        }
        return line;
    }

    /** The level of a place in the middle, carried over to both sides. */
    List<Spot> acrossLevel(Spot middle) {
        List<Spot> line = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            line.add(f.trunk.at(middle.y(), (middle.z() < 0 ? -1 : 1) * Math.PI * i / STEPS));
        }
        return line;
    }

    List<Spot> side(double from, double to) {
        List<Spot> line = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            line.add(f.trunk.at(from + (to - from) * i / STEPS, 0));
        }
        return line;
    }

    List<Spot> overBust(double to) {
        Spot bust = bustPoint();
        List<Spot> line = new ArrayList<>();
        double top = f.neckSide.y();
        for (int i = 0; i <= STEPS; i++) {
            double share = (double) i / STEPS;
            double rounded = Math.sin(share * Math.PI / 2);
            line.add(new Spot(
                    f.neckSide.x() + share * (bust.x() - f.neckSide.x()),
                    top + share * (bust.y() - top),
                    rounded * bust.z(),
                    Math.max(share, 0.05)));
        }
        if (to < bust.y()) {
            for (int i = 1; i <= STEPS; i++) {
                line.add(f.trunk.over(bust.x(), bust.y() + (to - bust.y()) * i / STEPS, true));
            }
        }
        return line;
    }

    /** From the waist down the middle, then inwards between the legs. */
    List<Spot> toCrotch(boolean inFront) {
        List<Spot> line = new ArrayList<>();
        double level = f.crotch.y() + 0.6 * (hip() - f.crotch.y());
        double deep = centre(level, inFront).z();
        // steep enough that the way in between the legs never seems to climb, seen from above
        double turn = Math.max(level, f.crotch.y() + 0.2 * Math.abs(deep));
        for (int i = 0; i <= STEPS; i++) {
            line.add(centre(waist() + (turn - waist()) * i / STEPS, inFront));
        }
        Spot last = line.get(STEPS);
        for (int i = 1; i <= STEPS / 2; i++) {
            line.add(last.towards(f.crotch, (double) i / (STEPS / 2)));
        }
        return line;
    }

    List<Spot> loop(Spot start, boolean inFront) {
        List<Spot> line = new ArrayList<>();
        List<Spot> last = toCrotch(inFront);
        double turn = last.get(STEPS).y();
        for (int i = 0; i <= STEPS; i++) {
            double share = (double) i / STEPS;
            double y = start.y() + share * (turn - start.y());
            double x = start.x() * (1 - share);
            Spot skin = f.trunk.over(x, y, inFront);
            double rounded = Math.min(1, 3 * share);
            line.add(new Spot(
                    x, y, skin.z() * Math.sin(rounded * Math.PI / 2), (inFront ? 1 : -1) * Math.max(share, 0.05)));
        }
        line.addAll(last.subList(STEPS + 1, last.size()));
        return line;
    }

    /** From the shoulder point over the back to the nape. */
    List<Spot> overShoulderBlade() {
        List<Spot> line = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double share = (double) i / STEPS;
            // drawn towards the ridge near the neck side point, and so always a little behind the line of the shoulder
            Spot ridge = new Spot(f.neckSide.x(), f.neckSide.y() - 4, 0.3 * f.nape.z(), 0);
            Spot at = f.shoulder.towards(ridge, share).towards(ridge.towards(f.nape, share), share);
            line.add(new Spot(at.x(), at.y(), at.z(), -Math.max(share, 0.05)));
        }
        return line;
    }

    List<Spot> outsideOfArm(double to) {
        List<Spot> line = new ArrayList<>();
        double top = f.arm.outer().downwards().get(0).start().y();
        double drop = f.shoulder.y() - top;
        var over = new Contour(f, FigureView.FRONT).shoulderToArm();
        for (int i = 0; i <= STEPS / 2; i++) {
            var at = over.at((double) i / (STEPS / 2));
            line.add(new Spot(at.x(), at.y(), 0, 0));
        }
        for (int i = 1; i <= STEPS; i++) {
            double y = f.shoulder.y() - drop + (to - top) * i / STEPS;
            line.add(new Spot(f.arm.outer().at(y), y, 0, 0));
        }
        return line;
    }

    List<Spot> neck() {
        List<Spot> ring = new ArrayList<>();
        double half = f.mm(FigureSize.NECK_BREADTH) / 2;
        double front = f.neckPit.y() + 0.5 * (f.nape.y() - f.neckPit.y());
        double rise = (f.nape.y() - front) / 2;
        for (int i = 0; i <= 24; i++) {
            double round = 2 * Math.PI * i / 24;
            double sine = Math.sin(round);
            // a neck is about as deep as broad and leans forward, so its middle lies behind the plane of the sides
            double z = f.nape.z() + half * (1 + sine);
            ring.add(new Spot(half * Math.cos(round), front + rise - rise * sine, z, sine));
        }
        return ring;
    }

    List<Spot> neckBase() {
        List<Spot> ring = new ArrayList<>();
        for (int i = 0; i <= 24; i++) {
            double round = 2 * Math.PI * i / 24;
            double sine = Math.sin(round);
            double y = sine > 0
                    ? f.neckSide.y() - sine * (f.neckSide.y() - f.neckPit.y())
                    : f.neckSide.y() - sine * (f.nape.y() - f.neckSide.y());
            double z = sine > 0 ? sine * f.neckPit.z() : -sine * f.nape.z();
            ring.add(new Spot(f.neckSide.x() * Math.cos(round), y, z, sine));
        }
        return ring;
    }

    /** Over the shoulder point and under the armpit; in front it bows further in towards the chest than at the back. */
    List<Spot> armscye() {
        List<Spot> ring = new ArrayList<>();
        for (int i = 0; i <= 24; i++) {
            double round = 2 * Math.PI * i / 24;
            double sine = Math.sin(round);
            Spot line = f.shoulder.towards(f.armpit, (1 - Math.cos(round)) / 2);
            double inwards = sine > 0 ? 15 * sine : 2 * sine;
            ring.add(new Spot(line.x() - inwards, line.y(), 45 * sine, sine));
        }
        return ring;
    }
}
