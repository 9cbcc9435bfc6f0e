package understorey.optics;

/**
 * Share of a picture that flowers cover, 0 to 1 of its area, by the layer of {@link FlowerLayer}.
 *
 * <p>Every point of the frame is a look at the ground, and the cover of that ground is that of the whole layer before it.
 * A camera among the flowers sees some of them against the ground and those above the lens against the background: both
 * count. So a lower camera, which looks flatter, never sees a thinner carpet.
 *
 * <p>Only the share of the whole frame depends on where flowers are seen. A look from among them passes the flowers between
 * the closest focus and the ground, or up and out at the heads, or on to where the flowers end.
 *
 * @param cover      of the part of the frame that shows ground; 0 where no part does
 * @param near       of the lowest third of that part, by height in the frame
 * @param middle     of the middle third
 * @param far        of the highest third
 * @param ground     of the frame: what shows ground from the closest focus to where the flowers end
 * @param flowers    of the whole frame, with those that are seen above the ground's far end, before the distance
 * @param nearestM   from the lens to the nearest ground shown, in the middle of its row; infinite where none is
 * @param farthestM  to the farthest ground shown; infinite where none is
 */
public record FlowerCover(double cover, double near, double middle, double far, double ground, double flowers,
                          double nearestM, double farthestM) {

    /** Gauss and Legendre's rule on −1 to 1, for a mean: Abramowitz and Stegun, 1964, table 25.4. Five points up. */
    private static final double[] POINTS = {-0.906179845938664, -0.538469310105683, 0, 0.538469310105683,
        0.906179845938664};
    private static final double[] WEIGHTS = {0.118463442528095, 0.239314335249683, 0.284444444444444,
        0.239314335249683, 0.118463442528095};
    /** Three points from the middle of a row to its end, along which little changes. */
    private static final double[] SIDE_POINTS = {-0.774596669241483, 0, 0.774596669241483};
    private static final double[] SIDE_WEIGHTS = {0.277777777777778, 0.444444444444444, 0.277777777777778};

    /**
     * The cover of one picture, averaged over its area: 1 − exp(−density × way through the layer) for each point.
     * For any view and layer; the averaging is good to 0.003, far better than the area index.
     */
    public static FlowerCover of(GroundView view, FlowerLayer layer) {
        Looks seen = new Looks(view, layer, view.closestM());
        Looks whole = new Looks(view, layer.notAbove(view.heightM()), 0);
        double edge = view.topEdge();
        double low = view.lowestRow();
        double high = view.highestRow(layer.farM());
        double above = seen.above(Math.max(-edge, Math.min(edge, high)), edge);
        if (!(low < high)) {
            return new FlowerCover(0, 0, 0, 0, 0, above / (2 * edge), Double.POSITIVE_INFINITY,
                    Double.POSITIVE_INFINITY);
        }
        double[] thirds = whole.thirds(low, high);
        double cover = mean(thirds);
        double nearestM = view.grazingDeg(low) > 90 ? view.aboveM() : view.distanceM(low);
        return new FlowerCover(cover, thirds[0], thirds[1], thirds[2], (high - low) / (2 * edge),
                (mean(seen.thirds(low, high)) * (high - low) + above) / (2 * edge), nearestM,
                Math.max(view.distanceM(low), view.distanceM(high)));
    }

    private static double mean(double[] thirds) {
        return (thirds[0] + thirds[1] + thirds[2]) / 3;
    }

    /** Depth of the ground in the frame, from the nearest to the farthest, metres; 0 without ground. */
    public double depthM() {
        return ground == 0 ? 0 : Math.max(0, farthestM - nearestM);
    }

    /** Lines of sight that make up a frame; depths are metres along the lens axis. */
    private static final class Looks {
        private final double sine;
        private final double cosine;
        private final double aboveM;
        private final double headsM;
        private final double closestM;
        private final double farM;
        private final double densityPerM;
        private final double vanishingRow;
        private final double sideEdge;

        Looks(GroundView view, FlowerLayer layer, double closestM) {
            double axis = Math.toRadians(view.axisDeg());
            sine = Math.sin(axis);
            cosine = Math.cos(axis);
            aboveM = view.aboveM();
            headsM = layer.headsM() * view.cosSlope();
            this.closestM = closestM;
            farM = layer.farM();
            densityPerM = layer.densityPerM(view.cosSlope());
            vanishingRow = view.vanishingRow();
            sideEdge = view.sideEdge();
        }

        /** Cover above the far end of the ground, share times rows; it is cut where the ground vanishes. */
        double above(double from, double to) {
            double cut = Math.max(from, Math.min(to, vanishingRow));
            double below = cut > from ? mean(from, cut) * (cut - from) : 0;
            return aboveM < headsM && to > cut ? below + mean(cut, to) * (to - cut) : below;
        }

        /** Mean cover of each third of the rows from one to another, the lowest first. */
        double[] thirds(double low, double high) {
            double third = (high - low) / 3;
            return new double[] {mean(low, low + third), mean(low + third, high - third), mean(high - third, high)};
        }

        /** Mean cover of the rows from one to another. */
        double mean(double from, double to) {
            double sum = 0;
            for (int i = 0; i < POINTS.length; i++) {
                double row = (from + to) / 2 + POINTS[i] * (to - from) / 2;
                sum += WEIGHTS[i] * acrossRow(row);
            }
            return sum;
        }

        /** Cover of one row: towards the sides a line of sight is longer at the same depth, and passes more flowers. */
        private double acrossRow(double row) {
            double passed = densityPerM * depthInLayerM(row);
            if (passed == 0) {
                return 0;
            }
            double bare = 0;
            for (int i = 0; i < SIDE_POINTS.length; i++) {
                double side = sideEdge * (1 + SIDE_POINTS[i]) / 2;
                bare += SIDE_WEIGHTS[i] * FlowerLayer.bare(1, passed * Math.sqrt(1 + row * row + side * side));
            }
            return Math.max(0, 1 - bare);
        }

        private double depthInLayerM(double row) {
            double falls = sine - row * cosine;
            double from = closestM;
            double to = farM / Math.max(cosine + row * sine, 1e-6);
            if (falls > 0) {
                from = Math.max(from, (aboveM - headsM) / falls);
                to = Math.min(to, aboveM / falls);
            } else if (aboveM >= headsM) {
                return 0;
            } else if (falls < 0) {
                to = Math.min(to, (headsM - aboveM) / -falls);
            }
            return Math.max(0, to - from);
        }
    }
}
