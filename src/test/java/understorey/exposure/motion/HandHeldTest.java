package understorey.exposure.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.BEANBAG;
import static understorey.Samples.MONOPOD;
import static understorey.Samples.bag;
import static understorey.Samples.picture;
import static understorey.Samples.with;
import static understorey.exposure.Fits.PRIME;
import static understorey.exposure.Fits.fit;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import understorey.Samples;
import understorey.exposure.Fits;
import understorey.kit.LensFit;
import understorey.plan.Viewpoint;

class HandHeldTest {

    private static Posture turning(double degPerS) {
        return Arrays.stream(Posture.values()).filter(posture -> posture.degPerS() == degPerS).findFirst().orElseThrow();
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/hand-holding.csv")
    void holdsFarViewsAsLongAsTheTable(double degPerS, double focalMm, double perS) {
        assertEquals(perS, 1 / HandHeld.longestS(0.030, focalMm, 0, turning(degPerS), 0), 0.6);
    }

    /** ISO 20954-1:2019, scope: a stabiliser is measured in pitch and yaw. Beyond four stops common practice, no source. */
    @Test
    void doublesWithEachStopOfStabilisationUpToFour() {
        double bare = HandHeld.longestS(0.030, 100, 0, Posture.STANDING, 0);
        assertEquals(8 * bare, HandHeld.longestS(0.030, 100, 0, Posture.STANDING, 3), 1e-12);
        assertEquals(16 * bare, HandHeld.longestS(0.030, 100, 0, Posture.STANDING, 7), 1e-12);
        assertEquals(0.25, HandHeld.longestS(0.030, 20, 0, Posture.BRACED, 4), "a longer one is not held");
    }

    /** F·(1 + m) away from the lens the image moves by twice as much at life size, and the step aside comes to it. */
    @Test
    void holdsLessCloseUpWhereAStabiliserHelpsLess() {
        double far = HandHeld.longestS(0.030, 90, 0, Posture.KNEELING, 0);
        double lifeSize = HandHeld.longestS(0.030, 90, 1, Posture.KNEELING, 0);
        assertTrue(lifeSize < far / 2, 1 / lifeSize + " of " + 1 / far);
        assertTrue(HandHeld.longestS(0.030, 90, 1, Posture.KNEELING, 3) < 3 * lifeSize, "eight times, were it far");
    }

    /** Common practice, no source: braced holds best, then on one knee, then standing; overhead and at arm's length least. */
    @Test
    void holdsByThePostureThatThePictureAsksFor() {
        assertEquals(Posture.STANDING, Posture.of(from(Viewpoint.Stance.STANDING)));
        assertEquals(Posture.KNEELING, Posture.of(from(Viewpoint.Stance.KNEELING)));
        assertEquals(Posture.ARMS_OUT, Posture.of(from(Viewpoint.Stance.GROUND)));
        assertEquals(Posture.ARMS_OUT, Posture.of(from(new Viewpoint.Height(2.2))));
        assertEquals(Posture.ARMS_OUT, Posture.of(fit(picture("Phone").equivalent(25), bag(Samples.phone()))));
        assertEquals(Posture.BRACED, Posture.of(fit(picture("View").equivalent(50), with(PRIME, MONOPOD))));
        double[] iso = {0.6, 1.0, 1.7, 3.0};
        for (int i = 1; i < iso.length; i++) {
            assertTrue(turning(iso[i]).ordinal() > turning(iso[i - 1]).ordinal());
        }
    }

    @Test
    void raisesIsoForTheWorsePosture() {
        int kneeling = Fits.settings(from(Viewpoint.Stance.KNEELING), 9, 0, null).iso();
        int standing = Fits.settings(from(Viewpoint.Stance.STANDING), 9, 0, null).iso();
        int heldOut = Fits.settings(from(new Viewpoint.Height(2.2)), 9, 0, null).iso();
        assertTrue(kneeling < standing && standing < heldOut, kneeling + ", " + standing + ", " + heldOut);
        assertTrue(fit(picture("Low").equivalent(50).from(Viewpoint.Stance.GROUND), with(PRIME, BEANBAG)).steady());
    }

    private static LensFit from(Viewpoint viewpoint) {
        return fit(picture("View").equivalent(50).sharp(5, 40).from(viewpoint), PRIME);
    }
}
