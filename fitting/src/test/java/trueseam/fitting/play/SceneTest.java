package trueseam.fitting.play;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import trueseam.fitting.Drafted;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.repertoire.Repertoire;
import trueseam.fitting.repertoire.Request;
import trueseam.fitting.tissue.Frame;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.Stretch;
import trueseam.fitting.tissue.Tissue;
import trueseam.fitting.work.Chapter;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;
import trueseam.geometry.Motion;
import trueseam.geometry.Path;
import trueseam.geometry.Point;

class SceneTest {

    private static final double EXACT_MM = 1e-9;

    /** Pivots, slides, tapers, a sleeve, and openings with parts that swing about hinges. */
    private static List<Chapter> chapters() {
        Map<Measure, Double> girths = new EnumMap<>(Measure.class);
        girths.put(Measure.BUST_GIRTH, 30.0);
        girths.put(Measure.WAIST_GIRTH, 20.0);
        girths.put(Measure.BACK_WAIST_LENGTH, 12.0);
        girths.put(Measure.UPPER_ARM_GIRTH, 16.0);
        List<Request> opened = Stream.of("full bust", "round back", "sway-back")
                .map(SceneTest::asked)
                .toList();
        List<Chapter> all = new ArrayList<>(fit(GarmentKind.BODICE, girths, opened));
        all.addAll(fit(GarmentKind.SKIRT, Map.of(Measure.HIP_GIRTH, -24.0), List.of()));
        all.addAll(fit(GarmentKind.TROUSERS, Map.of(Measure.BACK_CROTCH_LENGTH, 15.0), List.of()));
        return all;
    }

    private static Request asked(String name) {
        var entry = Repertoire.named(name).orElseThrow();
        return new Request(
                entry, entry.variants().get(0), OptionalDouble.of(entry.usualMm()), java.util.Optional.empty());
    }

    private static List<Chapter> fit(GarmentKind kind, Map<Measure, Double> byMm, List<Request> requests) {
        Pattern pattern = Drafted.shell(kind, "14");
        FitResult fit = Drafted.altered(pattern, byMm, Drafted.USUAL.withRequests(requests));
        return fit.worked().chapters();
    }

    @Test
    void everyMoveEndsWhereTheTissueLies() {
        int moving = 0;
        int swung = 0;
        for (Chapter chapter : chapters()) {
            List<Frame> frames = Tissue.play(chapter.before(), chapter.steps());
            List<Scene> scenes = Scene.of(chapter);
            assertThat(scenes).hasSameSizeAs(frames);
            for (int i = 0; i < frames.size(); i++) {
                List<Frame.Lying> lying = frames.get(i).paper();
                List<Scene.Sheet> sheets = scenes.get(i).paper();
                assertThat(sheets).hasSameSizeAs(lying);
                for (int part = 0; part < sheets.size(); part++) {
                    Move move = sheets.get(part).move();
                    same(move.at(1), lying.get(part).pose());
                    same(move.at(0), before(frames, i, part));
                    moving += move.isMoving() ? 1 : 0;
                    swung += part > 0 && move.isMoving() ? 1 : 0;
                }
            }
        }
        // Of both kinds there must be some, or nothing was shown.
        assertThat(moving).isGreaterThan(20);
        assertThat(swung).isGreaterThan(2);
    }

    private static Motion before(List<Frame> frames, int i, int part) {
        if (i == 0) {
            return Motion.NONE;
        }
        List<Frame.Lying> last = frames.get(i - 1).paper();
        return part < last.size()
                ? last.get(part).pose()
                : frames.get(i).paper().get(part).pose();
    }

    private static void same(Motion one, Motion other) {
        for (Point p : List.of(new Point(0, 0), new Point(600, 0), new Point(0, 900))) {
            assertThat(one.apply(p).distanceTo(other.apply(p))).isLessThan(EXACT_MM);
        }
    }

    @Test
    void thePinStaysWhereItIsAllThroughAPivot() {
        int pivots = 0;
        for (Chapter chapter : chapters()) {
            for (Scene scene : Scene.of(chapter)) {
                if (scene.step() instanceof Step.Pivot) {
                    Move move = scene.paper().stream()
                            .filter(Scene.Sheet::inHand)
                            .findFirst()
                            .orElseThrow()
                            .move();
                    Point pin = scene.pin().orElseThrow();
                    Point onPaper = move.from().inverse().apply(pin);
                    for (double share : new double[] {0.25, 0.5, 0.75, 1}) {
                        assertThat(move.at(share).apply(onPaper).distanceTo(pin))
                                .isLessThan(EXACT_MM);
                    }
                    pivots++;
                }
            }
        }
        assertThat(pivots).isGreaterThan(8);
    }

    @Test
    void everyTracedLineIsCongruentToTheEdgeItWasTracedFrom() {
        int traced = 0;
        for (Chapter chapter : chapters()) {
            for (Scene scene : Scene.of(chapter)) {
                if (scene.step() instanceof Step.Trace trace) {
                    for (Stretch stretch : trace.stretches()) {
                        Path edge = chapter.before().edge(stretch.edge()).path().part(stretch.fromMm(), stretch.toMm());
                        if (edge.length() > 0) {
                            assertThat(scene.fresh()).anySatisfy(drawn -> congruent(drawn.path(), edge));
                            traced++;
                        }
                    }
                }
            }
        }
        assertThat(traced).isGreaterThan(50);
    }

    /** All distances between ten places of the one are those between the same places of the other. */
    private static void congruent(Path drawn, Path edge) {
        assertThat(drawn.length()).isCloseTo(edge.length(), within(EXACT_MM));
        double step = edge.length() / 9;
        for (int i = 0; i < 10; i++) {
            for (int j = 0; j < i; j++) {
                double was = edge.pointAt(i * step).distanceTo(edge.pointAt(j * step));
                double is = drawn.pointAt(i * step).distanceTo(drawn.pointAt(j * step));
                assertThat(is).isCloseTo(was, within(1e-6));
            }
        }
    }

    @Test
    void linesStayOnTheTissueAndAreAllThereAtTheEnd() {
        for (Chapter chapter : chapters()) {
            List<Scene> scenes = Scene.of(chapter);
            List<Frame.Drawn> there = List.of();
            for (Scene scene : scenes) {
                assertThat(scene.before()).containsExactlyInAnyOrderElementsOf(there);
                List<Frame.Drawn> now = new ArrayList<>(scene.before());
                now.addAll(scene.fresh());
                there = now;
            }
            Scene last = scenes.get(scenes.size() - 1);
            assertThat(last.before().size() + last.fresh().size()).isGreaterThan(1);
        }
    }
}
