package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import understorey.optics.FlowerLayer;
import understorey.scene.Drawing.Area;
import understorey.scene.Drawing.Point;
import understorey.scene.Seed;

/**
 * The trees of a wood as a frame shows them, to scale: one trunk on each square of {@value #SPACING_M} m, a quarter to
 * half a metre thick, as in many a tall wood (common practice, no source); which one stands where, the seed says.
 */
final class Trunks {

    static final double SPACING_M = 6;
    private static final double THIN_M = 0.25;
    private static final double THICK_M = 0.5;
    /** Trunks taper to their tops by this share. */
    private static final double TAPER = 0.8;
    private static final double UNKNOWN_TOP_M = 20;
    /** No trunk is drawn right in front of the camera. */
    private static final double CLEAR_M = 5;
    /** Beyond where flowers are drawn, trunks are strokes. */
    private static final double LAST_M = 2.2 * FlowerLayer.FAR_M;
    private static final int MOST = 40;
    private static final int MOST_FAR = 40;

    private final Setup setup;
    private final Perspective perspective;
    private final Clip clip;
    private final Focus focus;
    private final Seed seed;
    private final double[] depthAt;
    private final double[] footAt;
    private final List<Area> areas = new ArrayList<>();
    private final List<Point> far = new ArrayList<>();

    Trunks(Setup setup, Perspective perspective, Seed seed) {
        this.setup = setup;
        this.perspective = perspective;
        this.seed = seed;
        clip = new Clip(perspective.width, perspective.height);
        focus = setup.focus();
        depthAt = new double[(int) perspective.width + 1];
        footAt = new double[depthAt.length];
        Arrays.fill(depthAt, Double.POSITIVE_INFINITY);
        if (setup.trees()) {
            stand();
        }
    }

    /** Far ones first. */
    List<Area> areas() {
        return areas;
    }

    /** Strokes of those behind. */
    List<Point> far() {
        return far;
    }

    /** True when a trunk stands before that place. */
    boolean hides(double x, double y, double depthM) {
        int column = (int) x;
        return column >= 0 && column < depthAt.length && depthAt[column] < depthM && y < footAt[column];
    }

    /** Row after row of squares, from the camera away. */
    private void stand() {
        for (int row = 0; row * SPACING_M < LAST_M; row++) {
            double edgeM = perspective.halfWidthM(perspective.depthM((row + 1) * SPACING_M, 0)) + SPACING_M;
            int side = (int) Math.min(60, edgeM / SPACING_M);
            for (int column = -side; column <= side; column++) {
                int index = row * 251 + column;
                tree((column + seed.share(index, 11) - 0.5) * SPACING_M, (row + seed.share(index, 12)) * SPACING_M,
                        THIN_M + (THICK_M - THIN_M) * seed.share(index, 13));
            }
        }
        Collections.reverse(areas);
    }

    private void tree(double rightM, double aheadM, double thickM) {
        double depth = perspective.depthM(aheadM, 0);
        double clearM = setup.clearingRadiusM() == null ? CLEAR_M : Math.max(CLEAR_M, setup.clearingRadiusM());
        if (depth < 1 || Math.hypot(rightM, aheadM) < clearM) {
            return;
        }
        double top = topM(aheadM, depth);
        double topDepth = perspective.depthM(aheadM, top);
        double footY = perspective.y(aheadM, 0, depth);
        double topY = perspective.y(aheadM, top, topDepth);
        double footX = perspective.x(rightM, depth);
        double topX = perspective.x(rightM, topDepth);
        if (aheadM > FlowerLayer.FAR_M) {
            if (far.size() < 2 * MOST_FAR && topY < footY) {
                clip.stroke(footX, footY, topX, topY, far);
            }
            return;
        }
        double half = thickM / 2 * perspective.pxPerM(depth);
        double halfTop = (1 - TAPER) * thickM / 2 * perspective.pxPerM(topDepth);
        Tone tone = Tone.of(focus, depth);
        if (tone != Tone.SHARP) {
            double blur = focus.blurShare(depth) * perspective.width;
            half += blur / 4;
            halfTop += blur / 4;
        }
        area("trunk" + tone.suffix, new double[] {footX - half, footX + half, topX - halfTop, topX + halfTop}, footY, topY, depth);
    }

    /** Up to near its top, or to where a camera that looks down would lose it. */
    private double topM(double aheadM, double depthM) {
        Double treesM = setup.canopy() == null ? null : setup.canopy().heightM();
        double top = 0.95 * (treesM == null ? UNKNOWN_TOP_M : treesM);
        double topDepth = perspective.depthM(aheadM, top);
        return topDepth >= depthM / 4 ? top : top * 0.75 * depthM / (depthM - topDepth);
    }

    private void area(String style, double[] xs, double footY, double topY, double depthM) {
        double low = clip.y(footY);
        double high = clip.y(topY);
        if (low - high < 2 || areas.size() >= MOST) {
            return;
        }
        double down = (low - topY) / (footY - topY);
        double up = (high - topY) / (footY - topY);
        double left = xs[2] + down * (xs[0] - xs[2]);
        double right = xs[3] + down * (xs[1] - xs[3]);
        double leftUp = xs[2] + up * (xs[0] - xs[2]);
        double rightUp = xs[3] + up * (xs[1] - xs[3]);
        if (Math.max(right, rightUp) < 1 || Math.min(left, leftUp) > perspective.width - 1
                || clip.x(right) - clip.x(left) + clip.x(rightUp) - clip.x(leftUp) < 0.8) {
            return;
        }
        boolean seen = false;
        for (int x = (int) clip.x(left); x <= (int) clip.x(right); x++) {
            seen |= depthAt[x] > depthM;
            if (depthAt[x] > depthM && x >= left && x <= right) {
                depthAt[x] = depthM;
                footAt[x] = low;
            }
        }
        if (seen) {
            areas.add(new Area(style, List.of(new Point(clip.x(left), low), new Point(clip.x(leftUp), high),
                    new Point(clip.x(rightUp), high), new Point(clip.x(right), low))));
        }
    }
}
