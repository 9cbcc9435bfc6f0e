package understorey.scene.sketch;

/**
 * Sizes that are told apart, so that marks of about one size share a glyph.
 *
 * @param times of a size over the one before
 */
record SizeSteps(double times) {

    /** Number of the step nearest to a size. */
    int of(double px) {
        return (int) Math.round(Math.log(px) / Math.log(times));
    }

    double px(int step) {
        return Math.pow(times, step);
    }
}
