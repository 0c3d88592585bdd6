package trueseam.output.steps;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import trueseam.fitting.alteration.CapChoice;
import trueseam.fitting.alteration.HemChoice;
import trueseam.fitting.alteration.LengthAtLine;
import trueseam.fitting.alteration.PieceWork;
import trueseam.fitting.alteration.SideGirth;
import trueseam.fitting.alteration.SleeveGirth;
import trueseam.fitting.alteration.SleeveReach;
import trueseam.fitting.tissue.Direction;
import trueseam.fitting.tissue.JoinForm;
import trueseam.fitting.tissue.Place;
import trueseam.fitting.tissue.Step;
import trueseam.fitting.tissue.StepList;
import trueseam.fitting.tissue.Stretch;
import trueseam.fitting.tissue.Until;
import trueseam.garment.length.LengthFormat;
import trueseam.garment.pattern.LevelName;
import trueseam.garment.pattern.Pattern;
import trueseam.garment.pattern.Piece;
import trueseam.garment.pattern.PieceKind;
import trueseam.output.DrawnByHand;

class StepWordsTest {

    private static final LengthFormat INCHES = LengthFormat.inches(8);

    private static List<String> said(Pattern pattern, List<PieceWork> work, String piece) {
        for (PieceWork one : work) {
            if (one.piece().equals(piece)) {
                return StepWords.of(pattern.piece(piece), one.steps(), INCHES);
            }
        }
        throw new IllegalArgumentException("no work on " + piece);
    }

    /**
     * Two inches at the bust, 1/2 in an edge. The pivot is the first row of the derived table of pivots (trade facts, section
     * 4.2): pin to front underarm (30, -190), d 12.70 mm, turn 3.8531 degrees, rise 2.4454 mm, which is 3/32 in. The second by
     * hand: the side waist, (-25, -200) from the underarm, hangs at (-11.50, -201.23) after the first and must hang at -37.70
     * across, so at -197.99 along: from 3.27 to 10.78 degrees off the plumb line, 3.24 mm up, which is 1/8 in.
     */
    @Test
    void aBustIsWidenedInWordsThatABeginnerCanFollow() {
        Pattern bodice = DrawnByHand.bodice();
        List<String> said = said(bodice, new SideGirth(50.8, 0, 0, HemChoice.CARRIED).work(bodice), "bodice front");
        assertThat(said)
                .containsExactly(
                        "Mark 1/2 in out from the underarm point, straight across the grain, with a short upright line through"
                                + " it: the bust mark.",
                        "Mark the side waist where it is, with a short upright line through it: the waist mark.",
                        "Trace everything that stays: the waist line from the waist at the centre front to the leg of the waist"
                                + " dart nearer the side waist; the shoulder seam; the neck line; and the centre front. Copy"
                                + " the waist dart, the grainline and the marks inside too.",
                        "Put the pin through the shoulder point.",
                        "Pivot the pattern until the underarm point meets the upright line of the bust mark (it swings 3.9"
                                + " degrees and rises 3/32 in).",
                        "Trace the armhole from the underarm point to the shoulder point, with the notch.",
                        "Move the pin to the underarm point.",
                        "Pivot the pattern until the side waist meets the upright line of the waist mark (it swings 7.5"
                                + " degrees and rises 1/8 in).",
                        "Trace the side seam from the side waist to the underarm point.",
                        "Join the waist line from the leg of the waist dart nearer the side waist to the side waist with a"
                                + " smooth curve.");
    }

    @Test
    void outIsOutOnAPieceThatLiesTheOtherWayRound() {
        Piece turned = DrawnByHand.mirroredFront();
        Place underarm = Place.startOf("side", "underarm point");
        List<String> said = StepWords.of(
                turned,
                new StepList(turned)
                        .add(new Step.Mark("bust mark", underarm, -12.7, 0))
                        .add(new Step.Mark("inner mark", underarm, 12.7, 0))
                        .finished(),
                INCHES);
        assertThat(said.get(0)).startsWith("Mark 1/2 in out from the underarm point");
        assertThat(said.get(1)).startsWith("Mark 1/2 in inwards from the underarm point");
    }

    @Test
    void aNarrowerBustIsMarkedIn() {
        Pattern bodice = DrawnByHand.bodice();
        List<String> said = said(bodice, new SideGirth(-25.4, 0, 0, HemChoice.CARRIED).work(bodice), "bodice back");
        assertThat(said.get(0)).startsWith("Mark 1/4 in inwards from the underarm point, straight across the grain");
        assertThat(said)
                .anyMatch(words -> words.startsWith("Trace everything that stays: the waist line from")
                        && words.contains("centre back"));
    }

    @Test
    void aLengthIsSlidAlongTheGrainAndTheMarksBelowAreCopied() {
        Pattern bodice = DrawnByHand.bodice();
        LengthAtLine longer =
                new LengthAtLine("Bodice length", LevelName.BODICE_LENGTH, Set.of(PieceKind.BODICE_FRONT), 19.05);
        List<String> said = said(bodice, longer.work(bodice), "bodice front");
        assertThat(said)
                .contains(
                        "Slide the pattern 3/4 in down, straight along the grain, without turning it.",
                        "Copy every mark inside the piece that lies below the bodice length line: dart points, levels,"
                                + " the lower end of the grainline.")
                .anyMatch(words -> words.startsWith("Join the side seam from ") && words.contains(" long."));
    }

    @Test
    void aSleeveIsWidenedHalfByHalf() {
        Pattern sleeve =
                new Pattern("sleeve", "", "", "drawn by hand", List.of(DrawnByHand.sleeve()), List.of(), Map.of());
        List<String> said = said(
                sleeve, new SleeveGirth(25.4, CapChoice.KEEP_CAP_SEAM, SleeveReach.UPPER_ARM).work(sleeve), "sleeve");
        // Cap top to sleeve underarm (160, -130), d 12.70: turn 5.9938 degrees, rise 17.4180 mm = 11/16 in
        // (derived, trade facts section 4.2).
        assertThat(said)
                .contains(
                        "Mark 1/2 in out from the front underarm point, straight across the grain, with a short upright"
                                + " line through it: the front upper arm mark.",
                        "Put the pin through the crown.",
                        "Pivot the pattern until the front underarm point meets the upright line of the front upper arm"
                                + " mark (it swings 6.0 degrees and rises 11/16 in).",
                        "Trace the front cap from the front underarm point to the crown, with the notch.",
                        "Take out the pin and lay the pattern back exactly where it lay at first.",
                        "Put the pin through the front wrist corner.")
                .anyMatch(words -> words.startsWith("Mark 1/2 in out from the back underarm point"));
    }

    @Test
    void aSlideAcrossNamesTheSideAndOutOrIn() {
        Piece front = DrawnByHand.front();
        StepList list = new StepList(front)
                .add(new Step.Slide(6.35, 0))
                .trace("side", 0, front.edge("side").length());
        list.join("waist", 115, front.edge("waist").length(), JoinForm.STRAIGHT);
        list.join("armhole", 0, 60, JoinForm.STRAIGHT);
        List<String> said = StepWords.of(front, list.finished(), LengthFormat.millimetres());
        assertThat(said)
                .contains(
                        "Slide the pattern 6.5 mm out (to the right), straight across the grain, without turning it.",
                        "Join the armhole from the underarm point to a point 60 mm from the underarm point with a ruler.");
    }

    @Test
    void linesThatCloseAGapAreSaidByTheirKind() {
        Piece front = DrawnByHand.front();
        double waist = front.edge("waist").length();
        double centre = front.edge("centre front").length();
        List<String> said = StepWords.of(
                front,
                new StepList(front)
                        .add(new Step.Slide(0, -12.7))
                        .trace("centre front", centre - 63.5, centre)
                        .trace("waist", 0, 80)
                        .join("centre front", centre - 63.5, centre - 63.5, JoinForm.STRAIGHT)
                        .join("waist", 80, 80 + 2 * Math.hypot(15, 2), JoinForm.REFIT)
                        .add(new Step.Trace(List.of(new Stretch("waist", 80 + 2 * Math.hypot(15, 2), waist)), false))
                        .trace("side", 0, 100)
                        .join("side", 100, 150, JoinForm.curveOfLength(Direction.AS_DRAWN, Direction.AS_DRAWN, 65))
                        .finished(),
                INCHES);
        assertThat(said)
                .contains(
                        "Join the two ends of the centre front at the bodice length line with a ruler.",
                        "Draw the waist line from the leg of the waist dart nearer the waist at the centre front to the"
                                + " leg of the waist dart nearer the side waist as it was, fitted between its new ends.",
                        "Join the side seam from a point 3 7/8 in from the side waist to a point 2 in from the underarm"
                                + " point with a smooth curve 2 9/16 in long.");
    }

    @Test
    void theGrainIsStoodUprightAndAPivotAlongTheGrainTellsHowFarItGoesAcross() {
        Piece front = DrawnByHand.front();
        Place sideWaist = Place.startOf("side", "side waist");
        Place centre = Place.startOf("waist", "waist at the centre front");
        StepList list = new StepList(front)
                .add(new Step.Mark("waist rise mark", centre, 0, 12.7))
                .add(new Step.Pin(sideWaist))
                .add(new Step.Pivot(new Until.MeetsAlong(centre, "waist rise mark")))
                .add(new Step.Pivot(new Until.GrainUpright()));
        List<String> said = StepWords.of(front, list.finished(), INCHES);
        assertThat(said.get(0))
                .isEqualTo("Mark 1/2 in up from the waist at the centre front, straight along the grain, with a short"
                        + " level line through it: the waist rise mark.");
        assertThat(said)
                // Pin to centre (-225, 0), 12.7 up: asin(12.7 / 225) = 3.24 degrees, 225 (1 - cos) = 0.36 mm across:
                // hidden.
                .contains("Pivot the pattern until the waist at the centre front meets the level line of the waist rise"
                        + " mark (it swings 3.2 degrees).")
                .contains("Pivot the pattern until its grainline stands upright again (it swings back 3.2 degrees).");
    }

    @Test
    void everyEdgeOfASeamIsNamedAsItIsInTheTrade() {
        PlaceNames names = new PlaceNames(DrawnByHand.sleeve(), List.of(), INCHES);
        assertThat(names.edge("cap front")).isEqualTo("front cap");
        assertThat(names.edge("underarm back")).isEqualTo("back underarm seam");
        assertThat(names.corner("cap back", true)).isEqualTo("crown");
        assertThat(names.corner("wrist", false)).isEqualTo("front wrist corner");
    }

    /** The hand-drawn sleeve has its front notch 90 mm from the front underarm point along the front cap. */
    @Test
    void aNotchIsCopiedWithTheLineThatItRidesOnAndWithNoOther() {
        Piece sleeve = DrawnByHand.sleeve();
        RidingMarks riding = new RidingMarks(sleeve);
        assertThat(riding.words(List.of(new Stretch("cap front", 80, 100)))).containsExactly("the notch");
        assertThat(riding.words(List.of(new Stretch("cap front", 0, 89), new Stretch("underarm front", 80, 100))))
                .isEmpty();
        assertThat(riding.words(List.of(
                        new Stretch("cap front", 0, sleeve.edge("cap front").length()),
                        new Stretch("cap back", 0, sleeve.edge("cap back").length()))))
                .containsExactly("2 notches");
        assertThat(riding.ticks(List.of(new Stretch("cap back", 100, 140))))
                .singleElement()
                .satisfies(tick -> {
                    assertThat(tick.cuts()).isEqualTo(2);
                    assertThat(tick.at().isNear(sleeve.edge("cap back").path().pointAt(120), 1e-9))
                            .isTrue();
                    // The cap is the top of the sleeve: out of it is up.
                    assertThat(tick.outward().y()).isPositive();
                });
    }
}
