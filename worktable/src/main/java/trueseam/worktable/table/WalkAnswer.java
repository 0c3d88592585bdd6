package trueseam.worktable.table;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import trueseam.fitting.walk.Contact;
import trueseam.fitting.walk.Landing;
import trueseam.fitting.walk.SeamWalk;
import trueseam.fitting.walk.Sheet;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Seam;
import trueseam.geometry.Point;
import trueseam.output.picture.PiecePicture;

/**
 * A seam, to be walked; y points down, angles are in degrees, clockwise as the screen turns.
 *
 * @param seam its name
 * @param box what standing and rolling pieces take up: x, y, width, height
 * @param pieces the lines of the pieces
 * @param standing the pieces that stay
 * @param contacts positions of the piece that rolls
 * @param landings where notches land
 * @param left the line left over at the end; empty where nothing is
 * @param numbers what was walked, in words
 */
public record WalkAnswer(
        String seam,
        List<Double> box,
        List<PieceLines> pieces,
        List<Standing> standing,
        List<Position> contacts,
        List<LandingRow> landings,
        String left,
        List<Figure> numbers) {

    /** Does not change. */
    public WalkAnswer {
        box = List.copyOf(box);
        pieces = List.copyOf(pieces);
        standing = List.copyOf(standing);
        contacts = List.copyOf(contacts);
        landings = List.copyOf(landings);
        numbers = List.copyOf(numbers);
    }

    /**
     * A piece that stays.
     *
     * @param piece its name
     * @param matrix where it lies
     */
    public record Standing(String piece, List<Double> matrix) {

        /** Does not change. */
        public Standing {
            matrix = List.copyOf(matrix);
        }
    }

    /**
     * A position of the rolling piece: its foot on the point, turned.
     *
     * @param mm how far both edges are walked
     * @param says the same in words
     * @param piece the piece that rolls
     * @param over whether it lies face down
     * @param x where the edges touch
     * @param y where the edges touch
     * @param footX the place of the paper that touches, after it was turned over
     * @param footY the place of the paper that touches
     * @param turn how far it is turned, degrees
     */
    public record Position(
            double mm,
            String says,
            String piece,
            boolean over,
            double x,
            double y,
            double footX,
            double footY,
            double turn) {}

    /**
     * Where a notch lands.
     *
     * @param notch which notch
     * @param at how far along
     * @param off how far from its partner
     * @param x where it lands
     * @param y where it lands
     */
    public record LandingRow(String notch, String at, String off, double x, double y) {}

    /**
     * A number with its name.
     *
     * @param name what it is
     * @param value the number in words
     */
    public record Figure(String name, String value) {}

    static WalkAnswer of(Pattern pattern, Seam seam, LengthFormat show) {
        SeamWalk walk = SeamWalk.of(pattern, seam);
        Set<String> names = new LinkedHashSet<>();
        walk.standing().forEach(sheet -> names.add(sheet.piece()));
        walk.contacts().forEach(contact -> names.add(contact.sheet().piece()));
        return new WalkAnswer(
                seam.name(),
                box(walk),
                names.stream().map(pattern::piece).map(PieceLines::of).toList(),
                walk.standing().stream()
                        .map(sheet -> new Standing(sheet.piece(), StepsAnswer.matrix(sheet.pose(), sheet.turnedOver())))
                        .toList(),
                walk.contacts().stream().map(contact -> position(contact, show)).toList(),
                walk.landings().stream().map(landing -> row(landing, show)).toList(),
                walk.left().map(PiecePicture::text).orElse(""),
                numbers(walk, show));
    }

    /** Round about the edge that is walked on: the pieces reach farther, and the edges are what is looked at. */
    private static List<Double> box(SeamWalk walk) {
        double left = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Contact contact : walk.contacts()) {
            left = Math.min(left, contact.point().x());
            right = Math.max(right, contact.point().x());
            low = Math.min(low, contact.point().y());
            high = Math.max(high, contact.point().y());
        }
        double room = 160;
        return List.of(left - room, -high - room / 2, right - left + 2 * room, high - low + room);
    }

    private static Position position(Contact contact, LengthFormat show) {
        Sheet sheet = contact.sheet();
        Point foot = sheet.pose().inverse().apply(contact.point());
        return new Position(
                Numbers.rounded(contact.atMm()),
                show.show(contact.atMm()),
                sheet.piece(),
                sheet.turnedOver(),
                Numbers.rounded(contact.point().x()),
                Numbers.rounded(-contact.point().y()),
                Numbers.rounded(foot.x()),
                Numbers.rounded(-foot.y()),
                -Math.toDegrees(sheet.pose().turnRad()));
    }

    private static LandingRow row(Landing landing, LengthFormat show) {
        String side = landing.onRolling() ? "rolling" : "standing";
        double off = landing.offMm().orElse(0);
        String said = landing.offMm().isEmpty()
                ? "has no partner there"
                : Math.abs(off) < show.stepMm() / 2
                        ? "meets its partner"
                        : "partner is " + show.show(Math.abs(off)) + (off > 0 ? " farther on" : " before it");
        return new LandingRow(
                landing.kind().word() + " notch of " + landing.piece() + " (" + side + ")",
                show.show(landing.atMm()),
                said,
                Numbers.rounded(landing.point().x()),
                Numbers.rounded(-landing.point().y()));
    }

    private static List<Figure> numbers(SeamWalk walk, LengthFormat show) {
        List<Figure> numbers = new ArrayList<>();
        numbers.add(new Figure("Standing edge, as sewn", show.show(walk.firstMm())));
        numbers.add(new Figure("Rolling edge, as sewn", show.show(walk.secondMm())));
        numbers.add(new Figure("Left over at the end", show.showSigned(walk.leftOverMm())));
        numbers.add(
                new Figure("Of it meant as ease", show.showSigned(walk.seam().easeMm())));
        numbers.add(new Figure("Left over beyond the ease", show.showSigned(walk.mismatchMm())));
        return numbers;
    }
}
