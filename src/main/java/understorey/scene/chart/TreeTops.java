package understorey.scene.chart;

import java.util.ArrayList;
import java.util.List;
import understorey.scene.Drawing.Point;
import understorey.scene.Seed;
import understorey.sky.Skyline;

/**
 * The trees round a clearing, seen from its middle: a ragged outline of crowns whose mean is the angle that the
 * trees' height and distance give, and trunks beneath. Which tree stands where follows from the seed alone.
 */
final class TreeTops {

    private static final int SAMPLES = 140;
    private static final int TRUNKS = 50;
    /** From crown to crown. */
    private static final double CROWN_DEG = 8;
    /** Trunks are lost to sight among the lower branches. */
    private static final double TRUNK_SHARE = 0.88;
    private static final double LEAST_TRUNK_PX = 8;

    private final double meanDeg;
    private final Seed seed;
    private final Panorama panorama;

    TreeTops(double meanDeg, int seed, Panorama panorama) {
        this.meanDeg = meanDeg;
        this.seed = new Seed(seed);
        this.panorama = panorama;
    }

    /** The highest that an outline of that mean reaches, degrees. */
    static double highestDeg(double meanDeg) {
        return meanDeg + 2 * ruggedDeg(meanDeg);
    }

    private static double ruggedDeg(double meanDeg) {
        return Math.min(meanDeg / 2, 1.5 + 0.05 * meanDeg);
    }

    /** From the foot at the left over the crowns to the foot at the right. */
    List<Point> outline() {
        double step = 2 * panorama.halfDeg() / (SAMPLES - 1);
        double[] heights = new double[SAMPLES];
        double sum = 0;
        for (int i = 0; i < SAMPLES; i++) {
            double offset = -panorama.halfDeg() + i * step;
            heights[i] = crowns(offset) + 0.35 * seed.share(i, 3);
            sum += heights[i];
        }
        List<Point> outline = new ArrayList<>();
        outline.add(panorama.at(-panorama.halfDeg(), 0));
        for (int i = 0; i < SAMPLES; i++) {
            double bent = Math.max(-2, Math.min(2, heights[i] - sum / SAMPLES));
            outline.add(panorama.at(-panorama.halfDeg() + i * step, meanDeg + bent * ruggedDeg(meanDeg)));
        }
        outline.add(panorama.at(panorama.halfDeg(), 0));
        return outline;
    }

    /** Height of the foremost of the crowns that overlap there, in shares of their ruggedness. */
    private double crowns(double offset) {
        int near = (int) Math.floor(offset / CROWN_DEG);
        double highest = -2;
        for (int crown = near - 1; crown <= near + 2; crown++) {
            double centre = (crown + 0.7 * seed.share(crown, 1) - 0.35) * CROWN_DEG;
            double aside = (offset - centre) / CROWN_DEG;
            highest = Math.max(highest, 1.6 * seed.share(crown, 2) - 2.2 * aside * aside);
        }
        return highest;
    }

    /** Trunks from the land upwards, as pairs of points. */
    List<Point> trunks(Skyline skyline) {
        List<Point> ends = new ArrayList<>();
        double step = 2 * panorama.halfDeg() / TRUNKS;
        for (int i = 1; i < TRUNKS; i++) {
            double offset = (i + 0.8 * seed.share(i, 4) - 0.4) * step - panorama.halfDeg();
            double foot = Math.max(0, skyline.angleDeg(panorama.bearing(offset)));
            double up = meanDeg * (TRUNK_SHARE - 0.35 * seed.share(i, 5));
            Point from = panorama.at(offset, foot);
            Point to = panorama.at(offset, up);
            if (from.y() - to.y() > LEAST_TRUNK_PX) {
                ends.add(from);
                ends.add(to);
            }
        }
        return ends;
    }
}
