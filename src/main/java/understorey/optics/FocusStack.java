package understorey.optics;

/**
 * Focus stack: frames focused one behind the other, if one frame cannot hold the depth.
 *
 * <p>Depths are in any measure in which all frames are equally deep: millimetres close up, where magnification
 * hardly changes; 1/near − 1/far for a view ({@link DepthOfField#depthPerMm}).
 */
public final class FocusStack {

    private FocusStack() {
    }

    /**
     * Distance between the focus of one frame and of the next: depth of one frame × (1 − overlap), in the measure
     * of that depth. Common practice, no source; an overlap of 0.2 to 0.3 is usual.
     *
     * @param frameDepth depth of field of one frame, above 0
     * @param overlap    share of the depth that neighbours both hold, from 0 to below 1
     */
    public static double step(double frameDepth, double overlap) {
        if (!(frameDepth > 0) || !(overlap >= 0 && overlap < 1)) {
            throw new IllegalArgumentException("no such step: " + frameDepth + ", overlap " + overlap);
        }
        return frameDepth * (1 - overlap);
    }

    /**
     * The fewest frames that hold a depth: max(1, ⌈(D − depth of field) / step⌉ + 1), since n frames hold the
     * depth of one and n − 1 steps. Common practice often counts ⌈D / step⌉ + 1, one or two frames in hand. For a
     * finite depth.
     *
     * @param depth to hold
     */
    public static int frames(double depth, double frameDepth, double overlap) {
        if (!Double.isFinite(depth)) {
            throw new IllegalArgumentException("no stack holds a depth of " + depth);
        }
        double steps = (depth - frameDepth) / step(frameDepth, overlap);
        // A whole number of steps may come out a hair above itself; that hair is not another frame.
        return (int) Math.max(1, Math.ceil(steps - 1e-9) + 1);
    }
}
