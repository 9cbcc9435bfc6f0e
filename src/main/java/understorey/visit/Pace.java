package understorey.visit;

/**
 * Walking speed on a path without a load, by published functions of the slope S, rise over
 * horizontal run, positive uphill, −0.5 to 0.5. Speeds are km/h along the map. The functions differ by about a fifth
 * on one route, so a walk is a range; Irmischer and Clarke found their own within a tenth on wooded ground.
 */
public enum Pace {

    /** 6·exp(−3.5·|S + 0.05|) (Tobler 1993, NCGIA Technical Report 93-1, as written in several open programs). */
    TOBLER {
        @Override
        double kmH(double slope) {
            return 6 * Math.exp(-3.5 * Math.abs(slope + 0.05));
        }
    },

    /** 5 km/h, and an hour for every 600 m of ascent (Naismith 1892, metric as in the manual of GRASS r.walk). */
    NAISMITH {
        @Override
        double kmH(double slope) {
            return 3600 / secondsPerKm(slope);
        }
    },

    /**
     * Naismith with 2 s per metre saved on descents of 5° to 12° and lost on steeper ones (Langmuir 1984, as in the same
     * manual). A rule for whole legs: on a short one it is faster than anyone walks, see {@link #capped}.
     */
    LANGMUIR {
        @Override
        double kmH(double slope) {
            double downDeg = Math.toDegrees(Math.atan(-slope));
            double correction = downDeg < FIVE_DEG ? 0 : downDeg <= TWELVE_DEG ? -2 : 2;
            return 3600 / (secondsPerKm(slope) + correction * -slope * 1000);
        }
    },

    /**
     * 0.11 + exp(−(100·S + 5)²/(2·30²)) m/s (Irmischer and Clarke 2018, on a path, with the sign of the slope, as
     * printed from memory; one open program takes its absolute value, which makes downhill as slow as uphill).
     */
    IRMISCHER_CLARKE {
        @Override
        double kmH(double slope) {
            return 3.6 * (0.11 + Math.exp(-Math.pow(100 * slope + 5, 2) / (2 * 30 * 30)));
        }
    },

    /**
     * Minutes a kilometre as a polynomial of ten times the slope, straight lines beyond ±0.4 (the trail formula of the
     * Swiss signposts since 2006, as in the source of the federal map viewer).
     */
    SWISS {
        @Override
        double kmH(double slope) {
            double x = 10 * slope;
            if (x >= 4 || x <= -4) {
                return 60 / (x > 0 ? 17 * x : -9 * x);
            }
            double minutes = 0;
            for (int i = SWISS_TERMS.length - 1; i >= 0; i--) {
                minutes = minutes * x + SWISS_TERMS[i];
            }
            return 60 / minutes;
        }
    };

    private static final double FIVE_DEG = 5;
    private static final double TWELVE_DEG = 12;
    /** Fastest walk on a path: the maximum of Tobler's function. */
    private static final double FASTEST_KM_H = 6;
    private static final double[] SWISS_TERMS = {14.271, 3.6991, 2.5922, -1.4384, 0.32105, 0.81542, -0.090261, -0.20757, 0.010192,
        0.028588, -0.00057466, -0.0021842, 1.5176e-5, 8.6894e-5, -1.3584e-7, -1.4026e-6};

    /** Speed on a slope, km/h. */
    abstract double kmH(double slope);

    /** Speed on a slope, at most 6 km/h. */
    double capped(double slope) {
        return Math.min(FASTEST_KM_H, kmH(slope));
    }

    /** Naismith's time per kilometre, seconds. */
    private static double secondsPerKm(double slope) {
        return 1000 * (0.72 + 6 * Math.max(0, slope));
    }
}
