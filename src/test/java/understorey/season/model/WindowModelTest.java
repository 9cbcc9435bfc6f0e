package understorey.season.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Against open flowering data: Ehrlén and Valdés 2020, Aono and Saito 2010, with figures worked out by two methods. */
class WindowModelTest {

    private static final double TOLERANCE = 0.0005;

    private static WindowModel model(String file, int from, int to) {
        double[][] pairs = Phenology.pairs(file, from, to);
        return WindowModel.of(pairs[0], pairs[1]);
    }

    private static WindowModel model(String kase) {
        return switch (kase) {
            case "L1" -> model("lathyrus-tullgarn", 1987, 1996);
            case "L2" -> model("lathyrus-tullgarn", 1987, 2017);
            case "L3" -> model("lathyrus-tullgarn", 1987, 1991);
            case "K1" -> model("kyoto-cherry", 1851, 1900);
            case "K2" -> model("kyoto-cherry", 1951, 1980);
            default -> model("kyoto-cherry", 801, 2015);
        };
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/window-model.csv")
    void fitsTheOpenDataAsWorkedOut(String kase, String file, int from, int to, int n, double slope, double intercept,
            double s, double rmse, double rmseOfMean) {
        WindowModel model = model(file, from, to);
        assertEquals(n, model.n(), kase);
        assertEquals(slope, model.slope(), TOLERANCE);
        assertEquals(intercept, model.intercept(), TOLERANCE);
        assertEquals(s, model.deviation(), TOLERANCE);
        assertEquals(rmse, model.leftOutD(), TOLERANCE);
        assertEquals(rmseOfMean, PlainMean.of(Phenology.pairs(file, from, to)[1]).leftOutD(), TOLERANCE);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/window-model-intervals.csv")
    void predictsWithinTheIntervalsWorkedOut(String kase, double x, double level, int freedom, double t, double day,
            double error, double low, double high) {
        Prediction next = model(kase).at(x);
        assertEquals(freedom, next.freedom());
        assertEquals(t, StudentT.of(freedom).twoSided(level), 0.0001);
        assertEquals(day, next.day(), TOLERANCE);
        assertEquals(error, next.errorD(), TOLERANCE);
        assertEquals(low, next.range(level).low(), TOLERANCE);
        assertEquals(high, next.range(level).high(), TOLERANCE);
        assertEquals((1 + level) / 2, next.chancesBefore(new double[] {high})[0], TOLERANCE);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/student-t.csv")
    void knowsStudentsTableOfTwoSidedQuantiles(int freedom, double at80, double at95) {
        assertEquals(at80, StudentT.of(freedom).twoSided(0.8), 0.0001);
        assertEquals(at95, StudentT.of(freedom).twoSided(0.95), 0.0001);
    }

    /** The normal law's quantile for 95 %, 1.96, as in printed tables. */
    @Test
    void becomesTheNormalLawWithEndlessFreedom() {
        assertEquals(1.959964, StudentT.of(Double.POSITIVE_INFINITY).twoSided(0.95), 1e-6);
    }

    /** Fitted to 1987-1996 it foretells 2006-2017, another plot of the same wood, four and a half days late. */
    @Test
    void missesAnotherPlotAsWorkedOut() {
        WindowModel model = model("L1");
        double[][] later = Phenology.pairs("lathyrus-tullgarn", 2006, 2017);
        double squares = 0;
        double sum = 0;
        int inside = 0;
        for (int i = 0; i < later[0].length; i++) {
            Prediction next = model.at(later[0][i]);
            double error = later[1][i] - next.day();
            squares += error * error;
            sum += error;
            inside += later[1][i] >= next.range(0.9).low() && later[1][i] <= next.range(0.9).high() ? 1 : 0;
        }
        assertEquals(12, later[0].length);
        assertEquals(5.2557, Math.sqrt(squares / 12), TOLERANCE);
        assertEquals(-4.5351, sum / 12, TOLERANCE);
        assertEquals(12, inside);
    }

    @ParameterizedTest
    @CsvSource({"L1, false", "L2, true", "L3, false", "K1, false", "K2, false", "K3, true"})
    void tellsWhereTemperatureBeatsTheMeanOfTheYears(String kase, boolean beats) {
        WindowModel model = model(kase);
        double[] days = switch (kase) {
            case "L1" -> Phenology.pairs("lathyrus-tullgarn", 1987, 1996)[1];
            case "L2" -> Phenology.pairs("lathyrus-tullgarn", 1987, 2017)[1];
            case "L3" -> Phenology.pairs("lathyrus-tullgarn", 1987, 1991)[1];
            case "K1" -> Phenology.pairs("kyoto-cherry", 1851, 1900)[1];
            case "K2" -> Phenology.pairs("kyoto-cherry", 1951, 1980)[1];
            default -> Phenology.pairs("kyoto-cherry", 801, 2015)[1];
        };
        assertEquals(beats, model.leftOutD() < PlainMean.of(days).leftOutD());
    }

    @Test
    void drawsNoLineThroughTwoYearsOrThroughYearsAllAlike() {
        assertNull(WindowModel.of(new double[] {5, 6}, new double[] {100, 98}));
        assertNull(WindowModel.of(new double[] {5, 5, 5}, new double[] {100, 98, 101}));
    }

    @Test
    void knowsWhichTemperaturesItHasSeen() {
        WindowModel model = WindowModel.of(new double[] {4, 6, 8}, new double[] {100, 97, 92});
        assertTrue(model.covers(4) && model.covers(8));
        assertFalse(model.covers(3.9) || model.covers(8.1));
    }

    /** The short cut e/(1 − h) against fitting the line anew without each year. */
    @Property
    void leavesAYearOutAsIfItHadNeverBeen(@ForAll @Size(6) double[] noise) {
        double[] x = {2, 3.5, 4, 6, 7.5, 9};
        double[] y = new double[6];
        for (int i = 0; i < 6; i++) {
            y[i] = 120 - 3 * x[i] + Math.IEEEremainder(noise[i], 10);
        }
        double squares = 0;
        for (int out = 0; out < 6; out++) {
            double[] xs = new double[5];
            double[] ys = new double[5];
            for (int i = 0, k = 0; i < 6; i++) {
                if (i != out) {
                    xs[k] = x[i];
                    ys[k++] = y[i];
                }
            }
            double error = y[out] - WindowModel.of(xs, ys).at(x[out]).day();
            squares += error * error;
        }
        assertEquals(Math.sqrt(squares / 6), WindowModel.of(x, y).leftOutD(), 1e-6);
    }

    @Property
    void isSurestInTheMiddleOfWhatItHasSeen(@ForAll @DoubleRange(min = 0, max = 20) double off) {
        WindowModel model = model("L2");
        assertTrue(model.at(model.meanX() + off).errorD() >= model.at(model.meanX()).errorD());
        assertEquals(model.at(model.meanX() + off).errorD(), model.at(model.meanX() - off).errorD(), 1e-9);
    }
}
