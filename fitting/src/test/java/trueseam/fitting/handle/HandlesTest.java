package trueseam.fitting.handle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trueseam.fitting.Drafted;
import trueseam.fitting.compare.Coverage;
import trueseam.fitting.compare.Overrule;
import trueseam.fitting.plan.FitResult;
import trueseam.fitting.plan.Fitting;
import trueseam.fitting.plan.HeldFit;
import trueseam.garment.body.Body;
import trueseam.garment.body.Reading;
import trueseam.garment.ease.GarmentKind;
import trueseam.garment.flat.FlatMeasure;
import trueseam.garment.flat.FlatPattern;
import trueseam.garment.measure.Measure;
import trueseam.garment.pattern.Pattern;

class HandlesTest {

    /** A body that measures what each flat pattern measures, and everything left alone. */
    private static FitResult untouched(Pattern pattern) {
        Body body = Body.named("whoever");
        Map<Measure, Overrule> leave = new EnumMap<>(Measure.class);
        for (Measure measure : Coverage.measuresOf(Fitting.kindOf(pattern))) {
            Optional<FlatMeasure> flat = FlatPattern.measure(pattern, measure);
            if (flat.isPresent()) {
                body = body.with(Reading.taped(measure, flat.get().mm()));
                leave.put(measure, new Overrule.Leave());
            }
        }
        return Fitting.fit(pattern, body, Optional.empty(), Drafted.USUAL.withOverrules(leave));
    }

    private static Handle again(FitResult fit, Handle handle) {
        return Handles.of(fit).stream()
                .filter(h -> h.id().equals(handle.id()))
                .findFirst()
                .orElseThrow();
    }

    private static Drag held(Pattern pattern, FitResult from, Measure measure) {
        return Drag.of(HeldFit.of(pattern, from.body(), from.size(), from.choices()), measure);
    }

    private static FitResult moved(Pattern pattern, FitResult from, Measure measure, double amountMm) {
        return ((Dragged.Moved) held(pattern, from, measure).to(amountMm)).fit();
    }

    @Test
    void theHipOfASkirtIsHeldAtTheSideOfFrontAndBackAndSharedOverFourCutEdges() {
        // Common practice: a girth at two side seams is shared over their four cut edges.
        FitResult fit = untouched(Drafted.shell(GarmentKind.SKIRT, "14"));
        List<Handle> hips = Handles.of(fit).stream()
                .filter(handle -> handle.measure() == Measure.HIP_GIRTH)
                .toList();
        assertThat(hips).hasSize(2).allSatisfy(handle -> {
            assertThat(handle.perMm()).isEqualTo(4);
            assertThat(handle.word()).isEqualTo("side at the hip level");
            assertThat(handle.out().y()).isZero();
        });
    }

    @Test
    void everyHandleFollowsThePointer() {
        for (String size : List.of("8", "20")) {
            for (GarmentKind kind : GarmentKind.values()) {
                follows(Drafted.shell(kind, size));
            }
        }
    }

    /**
     * From 6 mm inwards to 6 mm outwards. Half of a girth goes to the front and half to the back only in the mean: above the waist the
     * bust levels of the two lie differently far below their pins. So one handle may lag by a seventh; together they go as far as the
     * pointer, but for the crotch point, whose seam is a curve that is drawn new.
     */
    private static void follows(Pattern pattern) {
        FitResult from = untouched(pattern);
        Map<Measure, List<Double>> along = new EnumMap<>(Measure.class);
        List<Handle> handles = Handles.of(from);
        assertThat(handles.size()).isGreaterThanOrEqualTo(4);
        for (Handle handle : handles) {
            FitResult out = moved(pattern, from, handle.measure(), 6 * handle.perMm());
            FitResult in = moved(pattern, from, handle.measure(), -6 * handle.perMm());
            double moved = again(out, handle).at().minus(again(in, handle).at()).dot(handle.out());
            assertThat(moved).as("%s of %s", handle.id(), pattern.name()).isCloseTo(12, within(12.0 / 7));
            if (!handle.word().equals("crotch point")) {
                along.computeIfAbsent(handle.measure(), measure -> new ArrayList<>())
                        .add(moved);
            }
        }
        along.forEach((measure, moved) -> assertThat(
                        moved.stream().mapToDouble(mm -> mm).average().orElseThrow())
                .as("%s of %s", measure, pattern.name())
                .isCloseTo(12, within(0.07 * 12)));
    }

    @Test
    void aDragIsTheSameWhicheverWayTheHandCame() {
        Pattern pattern = Drafted.shell(GarmentKind.BODICE, "14");
        FitResult from = untouched(pattern);
        Drag drag = held(pattern, from, Measure.BUST_GIRTH);
        drag.to(50);
        FitResult there = ((Dragged.Moved) drag.to(25)).fit();
        FitResult fresh = moved(pattern, from, Measure.BUST_GIRTH, 25);
        assertThat(there.worked().altered()).isEqualTo(fresh.worked().altered());
        assertThat(there.report().holds()).isTrue();
    }

    @Test
    void aDragMeasuresWhatAFitFromTheBeginningMeasures() {
        Pattern pattern = Drafted.shell(GarmentKind.TROUSERS, "14");
        Map<Measure, Double> byMm = new EnumMap<>(Map.of(
                Measure.BODY_RISE,
                20.0,
                Measure.HIP_GIRTH,
                40.0,
                Measure.WAIST_GIRTH,
                30.0,
                Measure.FRONT_CROTCH_LENGTH,
                10.0,
                Measure.BACK_CROTCH_LENGTH,
                12.0));
        FitResult from = Drafted.altered(pattern, byMm, Drafted.USUAL);
        FitResult dragged = moved(pattern, from, Measure.HIP_GIRTH, 55);
        byMm.put(Measure.HIP_GIRTH, 55.0);
        FitResult fresh = Drafted.altered(pattern, byMm, Drafted.USUAL);
        assertThat(dragged.report().holds()).isEqualTo(fresh.report().holds());
        for (Measure measure : byMm.keySet()) {
            double mm = Drafted.mm(fresh.worked().altered(), measure);
            // Both are within 0.02 mm of the target.
            assertThat(Drafted.mm(dragged.worked().altered(), measure)).isCloseTo(mm, within(0.041));
        }
    }

    @Test
    void aDragBeginsWhereTheMeasureWasAlteredTo() {
        Pattern pattern = Drafted.shell(GarmentKind.SKIRT, "14");
        FitResult dragged = moved(pattern, untouched(pattern), Measure.HIP_GIRTH, 40);
        assertThat(held(pattern, dragged, Measure.HIP_GIRTH).startMm()).isEqualTo(40);
        assertThat(Drafted.gained(dragged, Measure.HIP_GIRTH)).isCloseTo(40, within(0.1));
    }

    @Test
    void whatThePatternCannotDoIsRefusedWithTheFarthestThatItCan() {
        Pattern pattern = Drafted.shell(GarmentKind.BODICE, "14");
        Drag drag = held(pattern, untouched(pattern), Measure.UPPER_ARM_GIRTH);
        Dragged.Refused refused = (Dragged.Refused) drag.to(600);
        assertThat(refused.why()).contains("sleeve");
        assertThat(refused.farthestMm()).isBetween(20.0, 600.0);
        assertThat(drag.to(refused.farthestMm())).isInstanceOf(Dragged.Moved.class);
        assertThat(drag.to(refused.farthestMm() + 5)).isInstanceOf(Dragged.Refused.class);
    }

    @Test
    void theLegIsAsLongAsSheSaidLast() {
        Pattern pattern = Drafted.shell(GarmentKind.TROUSERS, "14");
        FitResult leg = moved(pattern, untouched(pattern), Measure.INSIDE_LEG_LENGTH, 20);
        assertThat(Drafted.gained(leg, Measure.INSIDE_LEG_LENGTH)).isCloseTo(20, within(0.1));
        FitResult trousers = moved(pattern, leg, Measure.TROUSER_LENGTH, -10);
        assertThat(Drafted.gained(trousers, Measure.TROUSER_LENGTH)).isCloseTo(-10, within(0.1));
    }

    @Test
    void aMeasureThatTheChartHasNoLineForCannotBeTakenHoldOf() {
        Pattern pattern = Drafted.shell(GarmentKind.SKIRT, "14");
        FitResult from = untouched(pattern);
        assertThatThrownBy(() -> held(pattern, from, Measure.BUST_GIRTH))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("nothing to take hold of");
    }

    @Test
    void schematicPiecesHaveNoHandles() {
        Pattern pattern = Drafted.shell(GarmentKind.SKIRT, "14");
        Body body = Body.named("whoever").with(Reading.taped(Measure.HIP_GIRTH, 1000));
        FitResult onPaper =
                Fitting.onPaper(pattern, body, Optional.empty(), Map.of(Measure.HIP_GIRTH, 1010.0), Drafted.USUAL);
        assertThat(Handles.of(onPaper)).isEmpty();
    }
}
