package understorey.light.illuminance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import understorey.plan.Canopy.Trees;
import understorey.plan.Canopy;
import understorey.plan.Foliage;

/** What a canopy lets through, against worked tables and by integration; and how dense it is. */
class CanopyLightTest {

    private static final LocalDate BUD_BURST = LocalDate.of(2027, 4, 20);

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/canopy-beam.csv")
    void letsTheBeamThroughAsTabled(double pai, double at0, double at30, double at45, double at60, double at70) {
        assertEquals(at0, new CanopyLight(pai, null, null).gapFraction(90), 2e-5);
        assertEquals(at30, new CanopyLight(pai, null, null).gapFraction(60), 2e-5);
        assertEquals(at45, new CanopyLight(pai, null, null).gapFraction(45), 2e-5);
        assertEquals(at60, new CanopyLight(pai, null, null).gapFraction(30), 2e-5);
        assertEquals(at70, new CanopyLight(pai, null, null).gapFraction(20), 2e-5);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/canopy-diffuse.csv")
    void letsTheSkyThroughAsTabled(double pai, double uniform, double overcast) {
        assertEquals(uniform, new CanopyLight(pai, null, null).uniformSky(0), 2e-5);
        assertEquals(overcast, new CanopyLight(pai, null, null).overcastSky(0), 2e-5);
    }

    /** Midpoint rule over the sine of the altitude; the indices stand on both sides of the change of series. */
    @ParameterizedTest
    @ValueSource(doubles = {0.01, 0.8, 1.2, 1.99, 2.01, 2.1, 3.2, 8, 20})
    void isTheGapFractionTakenOverTheSky(double pai) {
        int strips = 20_000;
        double uniform = 0;
        double overcast = 0;
        for (int i = 0; i < strips; i++) {
            double sine = (i + 0.5) / strips;
            double through = new CanopyLight(pai, null, null).gapFraction(Math.toDegrees(Math.asin(sine))) * sine / strips;
            uniform += 2 * through;
            overcast += (1 + 2 * sine) * through * 6 / 7;
        }
        assertEquals(uniform, new CanopyLight(pai, null, null).uniformSky(0), 1e-5);
        assertEquals(overcast, new CanopyLight(pai, null, null).overcastSky(0), 1e-5);
    }

    @Test
    void letsEverythingThroughWhereNothingStands() {
        assertEquals(1, CanopyLight.NONE.uniformSky(0), 1e-12);
        assertEquals(1, CanopyLight.NONE.overcastSky(0), 1e-12);
        assertEquals(1, CanopyLight.NONE.gapFraction(-5), 0);
        assertEquals(0, new CanopyLight(0.1, null, null).gapFraction(0), 0);
    }

    @ParameterizedTest
    @CsvSource({"LEAFLESS,0.8", "BUD_BURST,1.2", "HALF_LEAF,2.1", "FULL_LEAF,3.2"})
    void takesTheStageOfTheAuthor(Foliage.Stage stage, double pai) {
        assertEquals(pai, index(Trees.DECIDUOUS, stage, BUD_BURST), 0);
        assertEquals(pai, index(Trees.EVERGREEN, stage, BUD_BURST), 0);
    }

    @ParameterizedTest
    @CsvSource({"-30,0.8", "0,0.8", "14,2.0", "28,3.2", "100,3.2"})
    void bringsTheLeavesOutInFourWeeks(int daysAfter, double pai) {
        Foliage leafOut = new Foliage.LeafOut(BUD_BURST);
        assertEquals(pai, index(Trees.DECIDUOUS, leafOut, BUD_BURST.plusDays(daysAfter)), 1e-9);
        assertEquals(pai, index(null, leafOut, BUD_BURST.plusDays(daysAfter)), 1e-9);
        assertEquals((pai + 3.2) / 2, index(Trees.MIXED, leafOut, BUD_BURST.plusDays(daysAfter)), 1e-9);
        assertEquals(3.2, index(Trees.EVERGREEN, leafOut, BUD_BURST.plusDays(daysAfter)), 1e-9);
    }

    @Test
    void takesFullLeafWhenNothingIsSaidAndNothingForOpenGround() {
        assertEquals(3.2, index(Trees.DECIDUOUS, null, BUD_BURST), 0);
        assertEquals(0, PlantArea.effectiveIndex(Canopy.NONE, BUD_BURST), 0);
        assertEquals(0, PlantArea.effectiveIndex(null, BUD_BURST), 0);
        assertEquals(1.7, index(null, new Foliage.Index(1.7), BUD_BURST), 0);
    }

    private static double index(Trees trees, Foliage foliage, LocalDate date) {
        return PlantArea.effectiveIndex(new Canopy(trees, foliage, null), date);
    }
}
