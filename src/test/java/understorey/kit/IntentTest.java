package understorey.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.picture;

import java.time.Duration;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.plan.Frame;
import understorey.plan.Orientation;
import understorey.plan.Role;
import understorey.plan.Sharp;
import understorey.plan.Viewpoint;

/** The defaults that the plan's format promises; their figures are common practice, no source. */
class IntentTest {

    @Test
    void standsForAnOpeningAndKneelsForTheWayIn() {
        assertEquals(Viewpoint.Stance.STANDING, picture("a").role(Role.OPENING).intent().viewpoint());
        assertEquals(Viewpoint.Stance.KNEELING, picture("a").role(Role.APPROACH).intent().viewpoint());
        assertEquals(Viewpoint.Stance.STANDING, picture("a").role(Role.EXTRA).intent().viewpoint());
        assertEquals(1.5, Intent.nominalHeightM(Viewpoint.Stance.STANDING));
        assertEquals(0.9, Intent.nominalHeightM(Viewpoint.Stance.KNEELING));
        assertEquals(0.15, Intent.nominalHeightM(Viewpoint.Stance.GROUND));
    }

    @Test
    void looksAtDetailsFromFlowerHeight() {
        Viewpoint middle = new Viewpoint.Height(0.375);
        assertEquals(middle, picture("a").role(Role.DETAIL).intent().viewpoint());
        assertEquals(middle, picture("a").role(Role.CLOSING).intent().viewpoint());
        assertEquals(Viewpoint.Stance.GROUND, picture("a").role(Role.CLOSING)
                .of(Samples.subject("unmeasured", null, null, null, null, null)).intent().viewpoint());
    }

    @Test
    void takesTheFloorAtFiftyAndTheWayInAtTwentyEightMillimetres() {
        Intent opening = picture("a").role(Role.OPENING).intent();
        assertEquals(50, opening.focalEquivalentMm());
        assertNull(opening.frame());
        assertEquals(28, picture("a").role(Role.APPROACH).intent().focalEquivalentMm());
    }

    @Test
    void fillsTheFrameWithAPlantOrAHead() {
        Intent detail = picture("a").role(Role.DETAIL).intent();
        assertNull(detail.focalEquivalentMm());
        assertEquals(0.75, Intent.heightM(detail.frame(), detail.shot().subject()), 1e-12);
        double headM = 0.016 * Math.sqrt(8);
        assertEquals(headM / 0.6, picture("a").role(Role.CLOSING).intent().frame().heightM(), 1e-12);
    }

    @Test
    void framesASubjectThatNobodyMeasured() {
        var unknown = Samples.subject("unmeasured", null, null, null, null, null);
        assertEquals(0.6, picture("a").role(Role.DETAIL).of(unknown).intent().frame().heightM(), 1e-12);
        assertEquals(0.04 / 0.6, picture("a").role(Role.CLOSING).of(unknown).intent().frame().heightM(), 1e-12);
        assertEquals(0.4, Intent.heightM(new Frame(null, null, 0.75, null), unknown), 1e-12);
    }

    @Test
    void keepsAViewSharpFromTheFeetOnAndACloseUpOverAQuarterOfItsWidth() {
        Sharp.Range floor = (Sharp.Range) picture("a").role(Role.OPENING).intent().sharp();
        assertEquals(40, floor.farM());
        // The bottom edge is four thirds of half a frame below the horizon, 4/3 · 12 mm / 50 mm; heads of 37.5 cm meet it there.
        assertEquals(4 / 3.0 * 12 / 50, (1.5 - 0.375) / floor.nearM(), 1e-9);
        Sharp.Range wayIn = (Sharp.Range) picture("a").role(Role.APPROACH).intent().sharp();
        assertEquals(15, wayIn.farM());
        assertTrue(wayIn.nearM() >= 0.5 && wayIn.nearM() < floor.nearM(), wayIn.toString());
        assertEquals(new Sharp.Range(0.5, 15), picture("a").role(Role.APPROACH).from(Viewpoint.Stance.GROUND)
                .equivalent(20).intent().sharp());
        assertEquals(new Sharp.Depth(0.6 * 1.5 / 4),
                picture("a").framed(new Frame(null, 0.6, null, null)).intent().sharp());
        assertEquals(new Sharp.Depth(0.6 / 1.5 / 4),
                picture("a").upright().framed(new Frame(null, 0.6, null, null)).intent().sharp());
    }

    /**
     * Close up a quarter of the width is more than any single frame holds, so the plan asks for what f/11 holds on full
     * frame: a frame 45 mm wide is 0.8×, and 2 · 11 · 0.02884 · 1.8 / 0.8² is 1.785 mm.
     */
    @Test
    void asksOfACloseUpForNoMoreDepthThanASmallApertureHolds() {
        Sharp.Depth depth = (Sharp.Depth) picture("a").wide(0.045).intent().sharp();
        assertEquals(0.001785, depth.depthM(), 1e-6);
    }

    /** Wide and low for the one flower that dominates, 28 mm from the knees: common practice, no source. */
    @Test
    void proposesAWiderLensForALowerCamera() {
        assertEquals(20, picture("a").role(Role.APPROACH).from(Viewpoint.Stance.GROUND).intent().focalEquivalentMm(), 1e-9);
        double between = picture("a").role(Role.APPROACH).from(new Viewpoint.Height(0.4)).intent().focalEquivalentMm();
        assertTrue(between > 20 && between < 28, () -> between + " mm");
        assertEquals(20, picture("a").role(Role.OPENING).from(Viewpoint.Stance.GROUND).intent().focalEquivalentMm(), 1e-9);
        assertEquals(50, picture("a").role(Role.OPENING).from(Viewpoint.Stance.KNEELING).intent().focalEquivalentMm());
    }

    @Test
    void framesWhateverIsSharpByDepth() {
        Intent intent = picture("a").role(Role.OPENING).equivalent(100).deep(0.1).intent();
        assertEquals(0.75, Intent.heightM(intent.frame(), intent.shot().subject()), 1e-12);
        assertEquals(100, intent.focalEquivalentMm());
    }

    @Test
    void takesAQuarterOfAnHourOfSecondPriorityInLandscape() {
        Intent intent = picture("a").intent();
        assertEquals(Duration.ofMinutes(15), intent.duration());
        assertEquals(2, intent.priority());
        assertEquals(Orientation.LANDSCAPE, intent.orientation());
        assertFalse(intent.polariser());
    }

    @Test
    void opensTheStoryWithAFirstPictureOfNoRole() {
        List<Intent> intents = Intent.of(List.of(picture("a").shot(), picture("b").shot()), null);
        assertEquals(List.of(Role.OPENING, Role.EXTRA), intents.stream().map(Intent::role).toList());
    }

    @Test
    void leavesTheOpeningToThePictureThatClaimsIt() {
        List<Intent> intents = Intent.of(List.of(picture("a").shot(), picture("b").role(Role.OPENING).shot()), null);
        assertEquals(List.of(Role.EXTRA, Role.OPENING), intents.stream().map(Intent::role).toList());
    }

    @Test
    void namesWhatItAssumedAlwaysInOneOrder() {
        assertEquals(List.of("role", "viewpoint", "orientation", "focal_equivalent", "spot", "tilt", "sharp", "polariser",
                "duration", "priority"), List.copyOf(picture("a").intent().assumed()));
        Intent said = picture("a").role(Role.DETAIL).from(Viewpoint.Stance.GROUND).upright().wide(1).deep(0.1).at("Bank")
                .polarised().minutes(5).intent();
        assertEquals(Set.of("tilt", "priority"), said.assumed());
    }
}
