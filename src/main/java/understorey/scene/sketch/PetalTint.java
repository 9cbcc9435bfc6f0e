package understorey.scene.sketch;

import org.jspecify.annotations.Nullable;
import understorey.plan.FieldGuide;
import understorey.plan.Subject;

/**
 * Colour in which the petals of a subject are drawn: that of the catalogue, mixed with white until it is as light as its
 * palette needs. Pale petals get an airy palette, others a deep one, whose sky and leaves are darker than the petals.
 *
 * @param rgb   red, green and blue as one number
 * @param deep  true for the deep palette
 */
record PetalTint(int rgb, boolean deep) {

    /** Relative luminance from which petals are pale: our choice, by eye. */
    private static final double PALE = 0.6;
    /** Relative luminance that pale and other petals are lifted to: three times the leaves of their palette, and more. */
    private static final double LEAST_PALE = 0.74;
    private static final double LEAST = 0.38;
    /** Saturation from which a colour is vivid: our choice, by eye. */
    private static final double VIVID = 0.7;
    private static final double DIM = 0.86;
    private static final int WHITE = 0xF4F4EE;
    private static final int BITS = 0x1000000;

    static PetalTint of(Subject subject) {
        FieldGuide guide = subject.guide();
        int rgb = guide == null ? usual(subject.reflectance()) : Integer.parseInt(guide.petals().srgb().substring(1), 16);
        boolean deep = luminance(rgb) < PALE;
        return new PetalTint(lifted(rgb, deep ? LEAST : LEAST_PALE), deep);
    }

    /** Where the catalogue has no colour: common practice, no source. */
    private static int usual(Subject.@Nullable Reflectance petals) {
        return petals == null ? WHITE : switch (petals) {
            case WHITE -> WHITE;
            case YELLOW -> 0xEFD53A;
            case PINK -> 0xC98FB4;
            case BLUE_VIOLET -> 0x7F79C0;
            case GREEN -> 0x9DB067;
            case RED -> 0xC8402E;
        };
    }

    /** A vivid colour is brightened before it is mixed with white, so that red does not turn pink. */
    private static int lifted(int rgb, double least) {
        int most = Math.max(rgb >> 16 & 0xFF, Math.max(rgb >> 8 & 0xFF, rgb & 0xFF));
        int fewest = Math.min(rgb >> 16 & 0xFF, Math.min(rgb >> 8 & 0xFF, rgb & 0xFF));
        double brighter = luminance(rgb) < least && fewest < (1 - VIVID) * most ? 255.0 / most : 1;
        int lifted = mixed(rgb, brighter, 0);
        for (int step = 1; luminance(lifted) < least && step <= 100; step++) {
            lifted = mixed(rgb, brighter, step / 100.0);
        }
        return lifted;
    }

    private static int mixed(int rgb, double brighter, double white) {
        int mixed = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            double part = brighter * (rgb >> shift & 0xFF);
            mixed |= (int) Math.round(part + (255 - part) * white) << shift;
        }
        return mixed;
    }

    /** Relative luminance of an sRGB colour, 0 to 1: WCAG 2.1, after IEC 61966-2-1. */
    static double luminance(int rgb) {
        return 0.2126 * linear(rgb >> 16 & 0xFF) + 0.7152 * linear(rgb >> 8 & 0xFF) + 0.0722 * linear(rgb & 0xFF);
    }

    private static double linear(int part) {
        double share = part / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    /** As {@code #rrggbb}. */
    String hex() {
        return hex(rgb);
    }

    /** The side of a petal that is turned away from the light. */
    String dimHex() {
        return hex(mixed(rgb, DIM, 0));
    }

    private static String hex(int rgb) {
        return '#' + Integer.toHexString(BITS | rgb).substring(1);
    }
}
