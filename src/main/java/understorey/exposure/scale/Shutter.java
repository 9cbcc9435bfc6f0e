package understorey.exposure.scale;

/**
 * The exposure equation N²/t = 2^EV100 · S/100, solved for each of its parts: APEX Ev = Av + Tv (ASA
 * PH2.5-1960, ANSI PH3.49-1971, through secondary copies). Losses of filters and bellows are stops, added; the
 * f-number is the marked one. Exact as an equation; nominal markings differ by up to 0.09 EV each. Very long
 * exposures on film need more (reciprocity); a sensor does not.
 */
public final class Shutter {

    private Shutter() {
    }

    /** Exposure time t = N²·2^loss / (2^EV100·S/100), seconds, for positive N and S. */
    public static double seconds(double fNumber, double ev100, double iso, double lossStops) {
        return fNumber * fNumber * Math.pow(2, lossStops - ev100) * 100 / iso;
    }

    /** The ISO, not snapped to a marking, at which an exposure time suits the light. */
    public static double iso(double fNumber, double ev100, double seconds, double lossStops) {
        return 100 * seconds(fNumber, ev100, 100, lossStops) / seconds;
    }
}
