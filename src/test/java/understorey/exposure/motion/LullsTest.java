package understorey.exposure.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.LEGS;
import static understorey.Samples.the;
import static understorey.Samples.with;
import static understorey.exposure.Fits.PRIME;
import static understorey.exposure.Fits.fit;
import static understorey.exposure.Fits.plantOnLegs;
import static understorey.exposure.Fits.starOnLegs;
import static understorey.exposure.Fits.viewAt;
import static understorey.exposure.Fits.wind;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import understorey.advice.MotionAdvice;
import understorey.exposure.Exposure;
import understorey.exposure.Settings;
import understorey.kit.Verdict;

class LullsTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/lulls.csv")
    void comeAsOftenAsInALogNormalWind(double intensity, double left, double share) {
        assertEquals(share, Lulls.share(left, intensity), 0.0006);
    }

    /** The headline holds in the mean wind; the lull is the same exposure, slower, at a lower ISO or stopped down. */
    @Test
    void allowMoreThanTheHeadlineAndExposeTheSame() {
        Settings settings = Exposure.of(plantOnLegs(), List.of(), wind(9, 0.7, null));
        Lull lull = settings.lull();
        assertNotNull(lull);
        assertEquals(0, settings.motionStops());
        assertTrue(lull.shutterS() > settings.shutterS() && lull.iso() < settings.iso());
        assertEquals(0.068, lull.share(), 0.001, "a quarter of the mean, at an intensity of 0.86");
        assertEquals(log2(settings), log2(lull), 0.5, "a third of a stop for the markings of each");
        MotionAdvice.InLull said = the(MotionAdvice.InLull.class, settings.reasons());
        assertEquals(0.25, said.left());
        assertEquals(lull, new Lull(said.aperture(), said.time(), said.iso(), said.share()));
    }

    /** About a quarter of the swing, two stops; a little more where 2 mm of it are there from light air on. */
    @Test
    void giveAboutTwoStops() {
        Settings settings = Exposure.of(plantOnLegs(), List.of(), wind(9, 1.0, null));
        Lull lull = settings.lull();
        assertNotNull(lull);
        double stops = Math.log(lull.shutterS() / settings.shutterS()) / Math.log(2);
        assertTrue(stops > 1.3 && stops < 2.7, stops + " stops");
    }

    @Test
    void areNotWorthNamingWhereNothingBlurs() {
        assertNull(Exposure.of(plantOnLegs(), List.of(), wind(9, 0.0, null)).lull());
        assertNull(Exposure.of(fit(viewAt(8), with(PRIME, LEGS)), List.of(), wind(14, 0.3, null)).lull());
        assertNull(Exposure.of(fit(viewAt(8), PRIME), List.of(), wind(9, 0.1, null)).lull(), "the hand sets the limit");
    }

    /** What blurs in the mean wind, and not in a lull, is a compromise; what blurs in both by far cannot be taken. */
    @Test
    void saveAPictureThatTheMeanWindBlurs() {
        boolean saved = false;
        for (double windMs = 0.1; windMs < 3; windMs += 0.1) {
            Settings settings = Exposure.of(starOnLegs(), List.of(), wind(9, windMs, null));
            if (settings.limits().contains(Settings.Limit.STEMS) && settings.lull() != null) {
                saved = true;
                assertEquals(Verdict.COMPROMISE, settings.verdict());
            }
            assertEquals(settings.limits().contains(Settings.Limit.STEMS), settings.motionStops() > 0);
        }
        assertTrue(saved);
        Settings storm = Exposure.of(starOnLegs(), List.of(), wind(9, 5, null));
        assertNull(storm.lull());
        assertEquals(Verdict.CANNOT, storm.verdict());
        assertTrue(!storm.helps().isEmpty());
    }

    private static double log2(Settings settings) {
        return log2(new Lull(settings.fNumber(), settings.shutterS(), settings.iso(), 0));
    }

    private static double log2(Lull lull) {
        return Math.log(lull.fNumber() * lull.fNumber() / lull.shutterS() / lull.iso()) / Math.log(2);
    }
}
