package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.List;
import understorey.optics.FlowerLayer;
import understorey.scene.Seed;

/**
 * The flowering stems that a frame shows, at the stated density, each where the seed puts it: bands of ground from the
 * camera away, cut into cells that are about as wide as a head looks, a cell with a flower or without by the chance
 * that the density gives, 1 − exp(−stems × area). A head before which another already stands is left out. The same
 * cells are taken at any density, so more stems never give fewer flowers.
 */
final class Scatter {

    /** Where a head and its foot fall; {@code head} is false where only the stem is in the frame. */
    record Plant(double x, double y, double footX, double footY, double depthM, boolean head) {
    }

    private static final double BAND = 0.04;
    private static final double LEAST_GAP_PX = 3.6;
    private static final double HEADS_APART = 0.7;
    private static final int BANDS = 500;
    /** A flower before the lens that would veil more of the frame is moved aside. */
    private static final double VEIL = 0.22;
    /** What is blurred over more of the frame is drawn from deeper bands. */
    private static final double DISSOLVED = 0.03;
    private static final double DEEPER = 6;
    private static final double STEM_VEIL = 0.06;

    private final Setup setup;
    private final Focus focus;
    private final double headM;
    private final double lowM;
    private final double highM;
    private final boolean close;
    private final double leastDepthM;
    private final Perspective perspective;
    private final Trunks trunks;
    private final Seed seed;
    private final double meanM;
    private final List<Plant> plants = new ArrayList<>();
    private final double gapPx;
    private final int columns;
    private final boolean[] taken;

    /**
     * Scatters stems.
     *
     * @param most about as many flowers as there may be if one stood on every cell
     */
    Scatter(Setup setup, double stemsPerM2, int most, Perspective perspective, Trunks trunks, Seed seed) {
        this.setup = setup;
        this.perspective = perspective;
        this.trunks = trunks;
        this.seed = seed;
        focus = setup.focus();
        headM = setup.headM();
        lowM = setup.lowM();
        highM = setup.highM();
        close = setup.close();
        leastDepthM = leastDepthM();
        meanM = (lowM + highM) / 2;
        gapPx = Math.max(LEAST_GAP_PX, Math.sqrt(perspective.width * (perspective.height - topPx()) / most));
        columns = (int) (perspective.width / gapPx + 2);
        taken = new boolean[columns * (int) (perspective.height / gapPx + 2)];
        walk(stemsPerM2);
    }

    /** The upper edge of what the flowers may cover, px: a camera among them sees them up to the top. */
    private double topPx() {
        double depth = perspective.depthM(FlowerLayer.FAR_M, highM);
        if (setup.fit().heightM() <= highM || depth < Perspective.LEAST_DEPTH_M) {
            return 0;
        }
        return Math.max(0, Math.min(perspective.height - 10 * LEAST_GAP_PX, perspective.y(FlowerLayer.FAR_M, highM, depth)));
    }

    /** Near ones first. */
    List<Plant> plants() {
        return plants;
    }

    private void walk(double stemsPerM2) {
        double ahead = perspective.nearestAheadM();
        for (int band = 0; band < BANDS && ahead < FlowerLayer.FAR_M; band++) {
            double thick = BAND * Math.max(0.1, perspective.distanceM(ahead, meanM));
            if (focus.blurShare(Math.max(Perspective.LEAST_DEPTH_M, perspective.depthM(ahead, meanM))) > DISSOLVED) {
                thick *= DEEPER;
            }
            double depth = perspective.depthM(ahead + thick / 2, meanM);
            if (depth > leastDepthM) {
                row(band, ahead, thick, depth, stemsPerM2);
            }
            ahead += thick;
        }
    }

    /** Close up, nothing stands between the lens and its subject, nor beside it where it fills the frame. */
    private double leastDepthM() {
        return setup.closest() ? Math.max(setup.sharpToM(), setup.fit().distanceM() + headM)
                : close ? setup.sharpFromM() : Math.max(Perspective.LEAST_DEPTH_M, headM);
    }

    private void row(int band, double ahead, double thick, double depth, double stemsPerM2) {
        double pxPerM = perspective.pxPerM(depth);
        double wide = headM * pxPerM;
        double blur = focus.sharp(depth) ? 0 : focus.blurShare(depth) * perspective.width;
        double beyond = (wide + blur) / 2;
        double lowest = perspective.y(ahead, lowM, depth);
        double highest = perspective.y(ahead + thick, highM, depth);
        boolean before = depth < setup.fit().focusM();
        boolean over = Math.max(lowest, highest) < 0;
        boolean veils = before && (over ? blur > STEM_VEIL * perspective.width : wide + blur > VEIL * perspective.width);
        double foot = perspective.y(ahead, 0, Math.max(Perspective.LEAST_DEPTH_M, perspective.depthM(ahead, 0)));
        if (veils || Math.max(foot, Math.max(lowest, highest)) < -beyond
                || Math.min(lowest, highest) > perspective.height + beyond) {
            return;
        }
        double cell = Math.max(gapPx, HEADS_APART * (wide + blur)) / pxPerM;
        double share = 1 - Math.exp(-stemsPerM2 * cell * thick);
        int side = (int) Math.min(200, (perspective.halfWidthM(depth) + beyond / pxPerM) / cell + 1);
        for (int column = -side; column < side; column++) {
            int index = band * 1021 + column;
            if (seed.share(index, 21) < share) {
                plant(index, column * cell, cell, ahead, thick, beyond);
            }
        }
    }

    private void plant(int index, double left, double cell, double from, double thick, double beyond) {
        double right = left + seed.share(index, 22) * cell;
        double ahead = from + seed.share(index, 23) * thick;
        double above = lowM + seed.share(index, 24) * (highM - lowM);
        double depth = perspective.depthM(ahead, above);
        if (depth < leastDepthM) {
            return;
        }
        double x = perspective.x(right, depth);
        double y = perspective.y(ahead, above, depth);
        double footDepth = Math.max(Perspective.LEAST_DEPTH_M, perspective.depthM(ahead, 0));
        double footY = perspective.y(ahead, 0, footDepth);
        boolean stemOnly = y <= -beyond && footY > 0 && perspective.inFrame(x, 1, 0);
        if (!stemOnly && !perspective.inFrame(x, y, beyond) || trunks.hides(x, y, depth) || besideSubject(x, depth)) {
            return;
        }
        int place = (int) (Math.max(0, Math.min(perspective.height, y)) / gapPx) * columns
                + (int) (Math.max(0, Math.min(perspective.width, x)) / gapPx);
        if (taken[place]) {
            return;
        }
        taken[place] = true;
        plants.add(new Plant(x, y, perspective.x(right, footDepth), footY, depth, !stemOnly));
    }

    private boolean besideSubject(double x, double depth) {
        return close && depth < focus.sharpToM() + headM
                && Math.abs(x - perspective.width / 2) < 1.2 * headM * perspective.pxPerM(depth);
    }
}
