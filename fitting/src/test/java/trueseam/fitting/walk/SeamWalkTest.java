package trueseam.fitting.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import trueseam.drafting.Bands;
import trueseam.drafting.Layers;
import trueseam.fitting.Drafted;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.pattern.Edge;
import trueseam.garment.pattern.EdgeRef;
import trueseam.garment.pattern.EdgeRole;
import trueseam.garment.pattern.Grain;
import trueseam.garment.pattern.Notch;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceBuilder;
import trueseam.garment.pattern.PieceKind;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.Cubic;
import trueseam.geometry.Path;
import trueseam.geometry.Point;
import trueseam.geometry.Segment;
import trueseam.geometry.Vec;
import trueseam.geometry.convert.Mirror;

class SeamWalkTest {

    private static Piece rectangle(String name, double wide, double high) {
        return new PieceBuilder(name, PieceKind.OTHER)
                .edge("bottom", EdgeRole.OTHER, Path.through(new Point(0, 0), new Point(wide, 0)), 15)
                .edge("right", EdgeRole.OTHER, Path.through(new Point(wide, 0), new Point(wide, high)), 15)
                .edge("top", EdgeRole.OTHER, Path.through(new Point(wide, high), new Point(0, high)), 15)
                .edge("left", EdgeRole.OTHER, Path.through(new Point(0, high), new Point(0, 0)), 15)
                .notch("right", 40, Notch.Kind.SINGLE)
                .notch("left", high - 43, Notch.Kind.SINGLE)
                .grain(new Grain(new Point(10, 10), new Point(10, 90)))
                .build();
    }

    /** A quarter of a wheel of radius r about the origin; its rim runs anticlockwise from (r, 0). */
    private static Piece quarterWheel(double r) {
        // Arcs of 1/32 turn, handles 4/3 tan(turn/4) of the radius (standard): off the circle by less than 1e-9 of it.
        double turn = Math.PI / 16;
        double k = r * 4 / 3 * Math.tan(turn / 4);
        List<Segment> rim = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            Vec from = Vec.atAngle(i * turn);
            Vec to = Vec.atAngle((i + 1) * turn);
            rim.add(Cubic.of(
                    Point.ORIGIN.plus(from.times(r)),
                    from.left().times(k),
                    to.right().times(k),
                    Point.ORIGIN.plus(to.times(r))));
        }
        Point end = rim.get(rim.size() - 1).end();
        return new PieceBuilder("wheel", PieceKind.OTHER)
                .edge("rim", EdgeRole.OTHER, Path.of(rim), 15)
                .edge("left", EdgeRole.OTHER, Path.through(end, new Point(0, 0)), 15)
                .edge("bottom", EdgeRole.OTHER, Path.through(new Point(0, 0), new Point(r, 0)), 15)
                .grain(new Grain(new Point(10, 10), new Point(10, 60)))
                .build();
    }

    private static SeamWalk walk(Piece one, String edge, Piece other, String otherEdge, double easeMm) {
        Seam seam = Seam.of("test", new EdgeRef(one.name(), edge), new EdgeRef(other.name(), otherEdge), easeMm);
        Pattern pattern = new Pattern("test", "", "", "", List.of(one, other), List.of(seam), Map.of());
        return SeamWalk.of(pattern, seam);
    }

    @Test
    void straightEdgesLieOnEachOtherAllTheWay() {
        SeamWalk walk = walk(rectangle("one", 100, 200), "right", rectangle("other", 60, 212), "left", 10);
        assertThat(walk.leftOverMm()).isEqualTo(12);
        assertThat(walk.mismatchMm()).isEqualTo(2);
        for (Contact contact : walk.contacts()) {
            assertThat(contact.point().isNear(new Point(100, contact.atMm()), 1e-9))
                    .isTrue();
            // The other one is drawn with its left edge from (0, 212) to (0, 0) and walked upwards.
            assertThat(contact.sheet().turnedOver()).isFalse();
            assertThat(contact.sheet().pose().apply(new Point(0, 0)).isNear(new Point(100, 0), 1e-9))
                    .isTrue();
            assertThat(contact.sheet().pose().apply(new Point(60, 212)).isNear(new Point(160, 212), 1e-9))
                    .isTrue();
        }
        Path left = walk.left().orElseThrow();
        assertThat(left.length()).isCloseTo(12, within(1e-9));
        assertThat(left.end().isNear(new Point(100, 212), 1e-9)).isTrue();
    }

    @Test
    void notchesLandWhereTheyAreWalkedTo() {
        SeamWalk walk = walk(rectangle("one", 100, 200), "right", rectangle("other", 60, 200), "left", 0);
        assertThat(walk.landings()).hasSize(2);
        Landing standing = walk.landings().get(0);
        Landing rolling = walk.landings().get(1);
        assertThat(standing.onRolling()).isFalse();
        assertThat(standing.atMm()).isCloseTo(40, within(1e-9));
        assertThat(standing.offMm().orElseThrow()).isCloseTo(3, within(1e-9));
        assertThat(rolling.atMm()).isCloseTo(43, within(1e-9));
        assertThat(rolling.point().isNear(new Point(100, 43), 1e-9)).isTrue();
    }

    @Test
    void aWheelOnARulerKeepsItsCentreAtOneHeightAndTurnsByWayOverRadius() {
        // Textbook kinematics of rolling: v = omega r, the centre goes parallel to the ground.
        double r = 100;
        SeamWalk walk = walk(rectangle("one", 400, 120), "top", quarterWheel(r), "rim", 0);
        double first = walk.contacts().get(0).sheet().pose().turnRad();
        for (Contact contact : walk.contacts()) {
            Point centre = contact.sheet().pose().apply(new Point(0, 0));
            assertThat(centre.y()).isCloseTo(120 + r, within(1e-5));
            assertThat(centre.x()).isCloseTo(400 - contact.atMm(), within(1e-5));
            double turned = contact.sheet().pose().turnRad() - first;
            assertThat(Math.IEEEremainder(turned - contact.atMm() / r, 2 * Math.PI))
                    .isCloseTo(0, within(1e-7));
        }
        assertThat(walk.leftOverMm()).isCloseTo(Math.PI * r / 2 - 400, within(1e-5));
    }

    private static List<Pattern> patterns() {
        List<Pattern> all = new ArrayList<>();
        for (GarmentKind kind : GarmentKind.values()) {
            all.add(Drafted.shell(kind, "8"));
            all.add(Drafted.shell(kind, "20"));
        }
        all.add(Bands.withWaistband(Drafted.shell(GarmentKind.SKIRT, "14"), 40));
        all.add(Layers.withNeckFacings(Drafted.shell(GarmentKind.BODICE, "14"), 60));
        return all;
    }

    @Test
    void whatIsLeftOverIsTheDifferenceOfTheSewnLengths() {
        for (Pattern pattern : patterns()) {
            for (Seam seam : pattern.seams()) {
                SeamWalk walk = SeamWalk.of(pattern, seam);
                double difference = pattern.sewnLength(seam.second()) - pattern.sewnLength(seam.first());
                assertThat(walk.leftOverMm()).as(seam.name()).isCloseTo(difference, within(1e-6));
                assertThat(walk.mismatchMm()).as(seam.name()).isCloseTo(pattern.mismatchMm(seam), within(1e-6));
                double left = walk.left().map(Path::length).orElse(0.0);
                assertThat(left).as("left of %s", seam.name()).isCloseTo(Math.abs(difference), within(1e-5));
            }
        }
    }

    @Test
    void theTouchingPointsAreOnBothEdgesEquallyFarWalked() {
        for (Pattern pattern : patterns()) {
            for (Seam seam : pattern.seams()) {
                SeamWalk walk = SeamWalk.of(pattern, seam);
                double onMm = 0;
                double ofMm = 0;
                Contact last = null;
                for (Contact contact : walk.contacts()) {
                    Point foot = foot(contact, contact.point());
                    assertThat(distance(pattern.piece(contact.sheet().piece()), seam.second(), foot))
                            .as(seam.name())
                            .isLessThan(1e-6);
                    assertThat(distanceStanding(pattern, walk, contact.point())).isLessThan(1e-6);
                    // At a dart or a corner there are two positions of one way: there it hops or turns on the spot.
                    if (last != null && contact.atMm() > last.atMm() + 1e-6) {
                        // Chords of a few millimetres are as good as the curves: an independent way to measure both
                        // ways.
                        onMm += contact.point().distanceTo(last.point());
                        ofMm += foot.distanceTo(foot(last, last.point()));
                        assertThat(ofMm).isCloseTo(onMm, within(0.002 * onMm + 0.01));
                        assertThat(onMm).isCloseTo(contact.atMm(), within(0.002 * onMm + 0.01));
                    }
                    last = contact;
                }
            }
        }
    }

    /** The place of a point of the table on the rolling paper, face up. */
    private static Point foot(Contact contact, Point point) {
        Point on = contact.sheet().pose().inverse().apply(point);
        return contact.sheet().turnedOver() ? Mirror.of(on) : on;
    }

    private static double distance(Piece piece, List<EdgeRef> side, Point p) {
        double least = Double.POSITIVE_INFINITY;
        for (EdgeRef ref : side) {
            if (ref.piece().equals(piece.name())) {
                Edge edge = piece.edge(ref.edge());
                least = Math.min(least, edge.path().nearest(p).point().distanceTo(p));
            }
        }
        return least;
    }

    private static double distanceStanding(Pattern pattern, SeamWalk walk, Point p) {
        double least = Double.POSITIVE_INFINITY;
        for (Sheet sheet : walk.standing()) {
            Point on = sheet.pose().inverse().apply(p);
            Point face = sheet.turnedOver() ? Mirror.of(on) : on;
            least = Math.min(
                    least, distance(pattern.piece(sheet.piece()), walk.seam().first(), face));
        }
        return least;
    }

    @Test
    void thePieceRollsAndDoesNotSlip() {
        // The point of the paper that touches stands still at that moment: between positions it moves by the square of
        // the step only.
        for (Pattern pattern : patterns()) {
            for (Seam seam : pattern.seams()) {
                Contact last = null;
                for (Contact contact : SeamWalk.of(pattern, seam).contacts()) {
                    boolean same = last != null
                            && last.sheet().piece().equals(contact.sheet().piece());
                    double step = same ? contact.atMm() - last.atMm() : 0;
                    if (step > 1e-6) {
                        Point touched = last.sheet().pose().inverse().apply(last.point());
                        double slip = contact.sheet().pose().apply(touched).distanceTo(last.point());
                        double turn = Math.abs(Math.IEEEremainder(
                                contact.sheet().pose().turnRad()
                                        - last.sheet().pose().turnRad(),
                                2 * Math.PI));
                        assertThat(slip).as(seam.name()).isLessThan(step * (turn + 0.01) + 1e-6);
                    }
                    last = contact;
                }
            }
        }
    }

    @Test
    void bothPiecesLieOnTheirOwnSideAsWhenTheSeamIsOpenedFlat() {
        Pattern bodice = Drafted.shell(GarmentKind.BODICE, "14");
        SeamWalk side = SeamWalk.of(bodice, bodice.seams().get(1));
        assertThat(side.seam().name()).isEqualTo("side");
        assertThat(side.standing()).hasSize(1);
        for (Contact contact : side.contacts()) {
            // Both are drawn with their centres to the left: the back is turned over, its centre to the right of the
            // seam.
            assertThat(contact.sheet().turnedOver()).isTrue();
            Vec toCentre = contact.sheet().pose().apply(new Point(0, 100)).minus(contact.point());
            assertThat(toCentre.x()).isPositive();
        }
    }

    @Test
    void aSleeveIsWalkedFromTheBackUnderarmOverTheShoulderToTheFront() {
        Pattern bodice = Drafted.shell(GarmentKind.BODICE, "14");
        SeamWalk armhole = SeamWalk.of(bodice, bodice.seams().get(3));
        assertThat(armhole.standing()).extracting(Sheet::piece).containsExactly("bodice back", "bodice front");
        Piece back = bodice.piece("bodice back");
        Piece front = bodice.piece("bodice front");
        double over = back.edge("armhole").length();
        Contact begin = armhole.contacts().get(0);
        assertThat(begin.point().isNear(back.edge("armhole").path().start(), 1e-9))
                .isTrue();
        Sheet laid = armhole.standing().get(1);
        Point shoulder =
                laid.pose().apply(Mirror.of(front.edge("armhole").path().end()));
        assertThat(laid.turnedOver()).isTrue();
        assertThat(shoulder.isNear(back.edge("armhole").path().end(), 1e-9)).isTrue();
        assertThat(armhole.leftOverMm()).isCloseTo(25.4, within(0.01)); // the cap's ease, drafted so
        assertThat(armhole.contacts())
                .anySatisfy(contact -> assertThat(contact.atMm()).isCloseTo(over, within(1e-6)));
        // The crown's notch meets no notch: it lands near the shoulder seam.
        assertThat(armhole.landings().stream().filter(landing -> landing.offMm().isEmpty()))
                .singleElement()
                .satisfies(landing -> assertThat(landing.atMm()).isCloseTo(over, within(25.4)));
        assertThat(armhole.landings().stream().filter(landing -> landing.offMm().isPresent()))
                .hasSize(4)
                .allSatisfy(landing ->
                        assertThat(Math.abs(landing.offMm().orElseThrow())).isLessThanOrEqualTo(25.5));
    }
}
