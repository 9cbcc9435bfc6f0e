package understorey.scene;

/** Lengths as they are lettered: millimetres below 10 cm, centimetres below a metre, a decimal below 10 m; the space before a unit does not break. */
final class Lengths {

    /** A longer distance looks like the horizon. */
    private static final double FAR_M = 1000;

    private Lengths() {
    }

    static String of(double m) {
        if (m > FAR_M) {
            return "the horizon";
        }
        if (Math.abs(m) < 0.0995) {
            return tenths(m * 1000) + " mm";
        }
        return Math.abs(m) < 0.995 ? Math.round(m * 100) + " cm" : tenths(m) + " m";
    }

    private static String tenths(double value) {
        long tenths = Math.round(Math.abs(value) * 10);
        if (value < 0 && tenths > 0) {
            return "−" + tenths(-value);
        }
        return tenths >= 100 ? String.valueOf(Math.round(Math.abs(value))) : tenths / 10 + "." + tenths % 10;
    }

    /** A count on each square metre, with a decimal below 10 unless it is whole. */
    static String density(double perM2) {
        return perM2 < 0.05 ? "under 0.1" : perM2 == Math.rint(perM2) ? String.valueOf(Math.round(perM2)) : tenths(perM2);
    }

    static String percent(double share) {
        return share > 0 && share < 0.005 ? "under 1 %" : Math.round(share * 100) + " %";
    }
}
