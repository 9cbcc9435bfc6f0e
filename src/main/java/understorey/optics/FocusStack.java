package understorey.optics;

/** Frames focused one behind the other, where one frame cannot hold the depth. */
public final class FocusStack {

    private FocusStack() {
    }

    /**
     * Distance between the focus of one frame and of the next: depth of one frame × (1 − overlap), mm.
     * Common practice, no source; an overlap of 0.2 to 0.3 is usual.
     *
     * @param depthOfFieldMm of one frame, above 0
     * @param overlap        share of the depth that neighbours both hold, from 0 to below 1
     */
    public static double stepMm(double depthOfFieldMm, double overlap) {
        if (!(depthOfFieldMm > 0) || !(overlap >= 0 && overlap < 1)) {
            throw new IllegalArgumentException("no such step: " + depthOfFieldMm + " mm, overlap " + overlap);
        }
        return depthOfFieldMm * (1 - overlap);
    }

    /**
     * The fewest frames that hold a depth: max(1, ⌈(D − depth of field) / step⌉ + 1), since n frames hold the
     * depth of one and n − 1 steps. Common practice often counts ⌈D / step⌉ + 1, one or two frames in hand. For
     * close-ups, where the depth of each frame is the same; a finite depth.
     *
     * @param depthMm of the subject
     */
    public static int frames(double depthMm, double depthOfFieldMm, double overlap) {
        if (!Double.isFinite(depthMm)) {
            throw new IllegalArgumentException("no stack holds a depth of " + depthMm + " mm");
        }
        double steps = (depthMm - depthOfFieldMm) / stepMm(depthOfFieldMm, overlap);
        // A whole number of steps may come out a hair above itself; that hair is not another frame.
        return (int) Math.max(1, Math.ceil(steps - 1e-9) + 1);
    }
}
