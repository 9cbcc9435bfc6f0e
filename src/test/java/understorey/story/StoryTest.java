package understorey.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.picture;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.advice.Advice;
import understorey.advice.StoryAdvice;
import understorey.kit.Intent;
import understorey.kit.LensFit;
import understorey.kit.ShotFit;
import understorey.kit.WholeBag;
import understorey.plan.Frame;
import understorey.plan.Orientation;
import understorey.plan.Role;
import understorey.plan.Shot;
import understorey.plan.Viewpoint;

class StoryTest {

    /** Without a lens for any. */
    private static List<ShotFit> unfitted(List<Shot> shots) {
        return Intent.of(shots, null).stream().map(intent -> new ShotFit(intent, List.of(), List.of())).toList();
    }

    private static List<String> names(Story story) {
        return story.sequence().stream().map(intent -> intent.shot().name()).toList();
    }

    @Test
    void tellsFromTheFloorToOneFlowerAndExtrasLast() {
        Story story = Story.of(unfitted(List.of(picture("x").role(Role.EXTRA).shot(),
                picture("d").role(Role.CLOSING).shot(), picture("c1").role(Role.DETAIL).shot(),
                picture("a").role(Role.OPENING).shot(), picture("c2").role(Role.DETAIL).shot(),
                picture("b").role(Role.APPROACH).shot())));
        assertEquals(List.of("a", "b", "c1", "c2", "d", "x"), names(story));
        assertFalse(Samples.kinds(story.gaps()).contains(StoryAdvice.RoleMissing.class));
    }

    @Test
    void saysWhichRolesAreMissingButNeverMissesExtras() {
        Story story = Story.of(unfitted(List.of(picture("a").shot(), picture("b").role(Role.CLOSING).shot())));
        assertEquals(List.of(new StoryAdvice.RoleMissing(Role.APPROACH), new StoryAdvice.RoleMissing(Role.DETAIL)), story.gaps());
    }

    private static final Viewpoint EYES = Viewpoint.Stance.STANDING;
    private static final Viewpoint EARTH = Viewpoint.Stance.GROUND;

    private static Samples.Picture extra(String name, Viewpoint from, double mm) {
        return picture(name).role(Role.EXTRA).from(from).equivalent(mm);
    }

    private static List<Advice> told(Samples.Picture... pictures) {
        List<Shot> shots = new ArrayList<>();
        for (Samples.Picture picture : pictures) {
            shots.add(picture.shot());
        }
        return Story.of(unfitted(shots)).gaps().stream().filter(gap -> !(gap instanceof StoryAdvice.RoleMissing)).toList();
    }

    @Test
    void tellsWhatIsLeastLikeTheLastOneNext() {
        Story story = Story.of(unfitted(List.of(extra("a", EYES, 24).shot(), extra("b", EYES, 28).shot(),
                extra("c", EARTH, 200).upright().shot(), extra("d", EYES, 200).shot())));
        assertEquals(List.of("a", "c", "b", "d"), names(story));
    }

    @Test
    void namesThreeFromEyeLevelAndNoneFromTheGround() {
        List<Advice> gaps = told(extra("a", EYES, 24), extra("b", EYES, 50).upright(), extra("c", EYES, 200));
        assertEquals(List.of(new StoryAdvice.HeightsAlike(3, Look.Height.FROM_EYE_LEVEL, Look.Height.FROM_THE_GROUND)), gaps);
        assertEquals(List.of(), told(extra("a", EYES, 24), extra("b", EYES, 50).upright(), extra("c", EARTH, 200)));
    }

    @Test
    void namesALensAFormatAndADistanceThatIsAlwaysTheSame() {
        assertEquals(List.of(StoryAdvice.ViewsAlike.class, StoryAdvice.OrientationsAlike.class), Samples.kinds(told(extra("a", EYES, 24),
                extra("b", EARTH, 28), extra("c", Viewpoint.Stance.KNEELING, 35), extra("d", EARTH, 20).at("Bank"))));
        Frame near = new Frame(0.1, null, null, 0.5);
        List<Advice> close = told(picture("a").framed(near).from(EYES), picture("b").framed(near).from(EARTH).upright(),
                picture("c").framed(near).from(Viewpoint.Stance.KNEELING));
        assertEquals(List.of(StoryAdvice.DistancesAlike.class), Samples.kinds(close));
        assertEquals(Look.Distance.FROM_AFAR, Samples.the(StoryAdvice.DistancesAlike.class, close).missing());
    }

    @Test
    void namesTwoPicturesThatDifferInNothing() {
        assertEquals(List.of(StoryAdvice.PicturesAlike.class), Samples.kinds(told(extra("a", EYES, 50), extra("b", EYES, 55))));
        assertTrue(Samples.kinds(told(extra("a", EYES, 50), extra("b", EYES, 55).role(Role.APPROACH)))
                .contains(StoryAdvice.PicturesAlike.class), "whatever part they play");
        assertEquals(List.of(), told(extra("a", EYES, 50), extra("b", EYES, 55).upright()));
        assertEquals(List.of(), told(extra("a", EYES, 50), extra("b", EYES, 55).at("Bank")));
    }

    /** What the lens found needs, not what was meant: 60 mm wide at full frame through a close-up lens is under a metre away. */
    @Test
    void looksAtTheLensThatWasFound() {
        Intent intent = picture("a").role(Role.CLOSING).wide(0.06).intent();
        LensFit fit = WholeBag.fit(intent, Samples.bag(Samples.fullFrame(24), Samples.MACRO)).best();
        Look look = Look.of(intent, fit);
        assertEquals(Look.Distance.CLOSE_UP, look.distance());
        assertEquals(Look.View.LONG, look.view());
        assertEquals(4, new Look(null, Look.Height.FROM_EYE_LEVEL, null, Orientation.PORTRAIT, null, null).unlike(
                new Look(Look.Distance.CLOSE_UP, Look.Height.FROM_EYE_LEVEL, Look.View.LONG, Orientation.LANDSCAPE, 10.0, null)));
    }

    @Test
    void facesOneWayWithinFortyFiveDegreesRoundNorthToo() {
        Look north = new Look(null, Look.Height.FROM_EYE_LEVEL, null, Orientation.PORTRAIT, 350.0, null);
        assertEquals(0, north.unlike(new Look(null, Look.Height.FROM_EYE_LEVEL, null, Orientation.PORTRAIT, 30.0, null)));
        assertEquals(1, north.unlike(new Look(null, Look.Height.FROM_EYE_LEVEL, null, Orientation.PORTRAIT, 40.0, null)));
    }
}
