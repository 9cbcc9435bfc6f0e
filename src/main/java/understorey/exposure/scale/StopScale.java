package understorey.exposure.scale;

import static java.lang.Math.max;
import static java.lang.Math.min;

/**
 * The third-stop scales of aperture, shutter and ISO: what a camera marks and what it means by it.
 *
 * <p>Exact steps are N = 2^(i/6), t = 2^(−i/3) s and S = 100·2^(i/3); markings round them, by at most 0.09 EV
 * (f/1.2: 0.14 EV). Markings from charts of nominal and exact settings (secondary copies; above f/22, above 1 s
 * and below 1/1000 s from memory), ISO from the preferred values of ISO 12232 (from memory).
 */
public final class StopScale {

    private static final double[] F_NUMBERS = {
        1.0, 1.1, 1.2, 1.4, 1.6, 1.8, 2, 2.2, 2.5, 2.8, 3.2, 3.5, 4, 4.5, 5.0, 5.6, 6.3, 7.1, 8, 9, 10, 11, 13,
        14, 16, 18, 20, 22, 25, 29, 32, 36, 40, 45};

    /** From 30 s, which stands for 32 s, to 1 s; then parts of a second. */
    private static final double[] SHUTTER_S = {
        30, 25, 20, 15, 13, 10, 8, 6, 5, 4, 3.2, 2.5, 2, 1.6, 1.3, 1, 0.8, 0.6, 0.5, 0.4, 0.3, 1 / 4.0, 1 / 5.0,
        1 / 6.0, 1 / 8.0, 1 / 10.0, 1 / 13.0, 1 / 15.0, 1 / 20.0, 1 / 25.0, 1 / 30.0, 1 / 40.0, 1 / 50.0,
        1 / 60.0, 1 / 80.0, 1 / 100.0, 1 / 125.0, 1 / 160.0, 1 / 200.0, 1 / 250.0, 1 / 320.0, 1 / 400.0,
        1 / 500.0, 1 / 640.0, 1 / 800.0, 1 / 1000.0, 1 / 1250.0, 1 / 1600.0, 1 / 2000.0, 1 / 2500.0, 1 / 3200.0,
        1 / 4000.0, 1 / 5000.0, 1 / 6400.0, 1 / 8000.0};
    private static final int STEP_OF_30_S = -15;

    private static final int[] ISO = {
        25, 32, 40, 50, 64, 80, 100, 125, 160, 200, 250, 320, 400, 500, 640, 800, 1000, 1250, 1600, 2000, 2500,
        3200, 4000, 5000, 6400, 8000, 10_000, 12_800, 16_000, 20_000, 25_600, 32_000, 40_000, 51_200, 64_000,
        80_000, 102_400};
    private static final int STEP_OF_ISO_25 = -6;

    /** A limit that a sum left this near below a marking is meant as it. */
    private static final double ROUNDING = 1e-9;

    private StopScale() {
    }

    /** The marked f-number nearest in stops; within f/1 to f/45, the end of the scale beyond. */
    public static double snapFNumber(double exact) {
        return F_NUMBERS[within(Math.round(6 * log2(exact)), F_NUMBERS.length)];
    }

    /**
     * The smallest marked f-number that is at least so large, by its marking or by what it exactly means (f/11
     * is 11.3, f/4.5 is 4.49). Positive infinity beyond f/45, where the scale ends.
     */
    public static double nextFNumberUp(double atLeast) {
        for (int i = 0; i < F_NUMBERS.length; i++) {
            if (max(F_NUMBERS[i], Math.pow(2, i / 6.0)) >= atLeast * (1 - ROUNDING)) {
                return F_NUMBERS[i];
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    /** The marked f-number a third of a stop wider than this marked one; f/1 from f/1. */
    public static double thirdWider(double marked) {
        return F_NUMBERS[within(Math.round(6 * log2(marked)) - 1, F_NUMBERS.length)];
    }

    /** The marked f-number a third of a stop smaller in opening than this marked one; f/45 from f/45. */
    public static double thirdSmaller(double marked) {
        return F_NUMBERS[within(Math.round(6 * log2(marked)) + 1, F_NUMBERS.length)];
    }

    /**
     * The marked shutter speed nearest in stops, seconds, above 0: 1/125.0 for 1/128. Beyond 30 s (bulb) and
     * below 1/8000 s the scale goes on by doubling and halving its ends: 40, 50, 60, 80 s, 1/10000, 1/12800 s.
     */
    public static double snapShutterS(double exactSeconds) {
        return markedShutterS((int) Math.round(-3 * log2(exactSeconds)));
    }

    /** The lowest marked ISO that is at least so high, by its marking or by what it exactly means; at most 102 400. */
    public static int nextIsoUp(double atLeast) {
        for (int i = 0; i < ISO.length; i++) {
            if (max(ISO[i], 100 * Math.pow(2, (i + STEP_OF_ISO_25) / 3.0)) >= atLeast * (1 - ROUNDING)) {
                return ISO[i];
            }
        }
        return ISO[ISO.length - 1];
    }

    private static double markedShutterS(int step) {
        int index = step - STEP_OF_30_S;
        int last = SHUTTER_S.length - 1;
        int octaves = index < 0 ? Math.floorDiv(index, 3) : index > last ? -Math.floorDiv(last - index, 3) : 0;
        return SHUTTER_S[index - 3 * octaves] * Math.pow(2, -octaves);
    }

    private static int within(long index, int length) {
        return (int) max(0, min(length - 1, index));
    }

    /** Stops of a ratio. */
    public static double log2(double value) {
        return Math.log(value) / Math.log(2);
    }
}
