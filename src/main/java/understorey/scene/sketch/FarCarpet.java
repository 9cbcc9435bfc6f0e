package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import understorey.optics.FlowerLayer;
import understorey.scene.Drawing.Glyph;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.scene.Drawing.Spots;
import understorey.scene.Drawing.Stamps;
import understorey.scene.Drawing.Stop;
import understorey.scene.Drawing.Wash;
import understorey.scene.Seed;

/**
 * The carpet beyond the heads that are drawn one by one: strips of ground with as many drifts of spots as their stems make,
 * as far as a spot can be seen, and a wash for what they leave open of the stated cover.
 */
final class FarCarpet {

    private static final double LEAST_PX = 0.8;
    private static final SizeSteps SIZES = new SizeSteps(1.25);
    private static final double ROW_PX = 6;
    /** Stated cover from which spots are drawn; what is thinner is a wash. */
    private static final double LEAST_COVER = 0.03;
    /** A spot whose blur is wider than this, in its diameters, is part of the wash. */
    private static final double DISSOLVED = 2.5;
    private static final int STRIPS = 60;
    private static final int MOST_DRIFTS = 340;
    /** Spots of a drift: more where the carpet is dense. */
    private static final int FEWEST_SPOTS = 14;
    private static final int MOST_SPOTS = 48;
    /** Diameter of the spots of a drift and its height, in parts of {@value FlowerHead#WIDTH} of its width. */
    private static final double SPOT = 0.42;
    private static final double HEIGHT = 3;
    /** Cover up to which spots are drawn; what is thicker is a wash. */
    private static final double MOST_COVER = 0.45;

    /**
     * Ground from side to side.
     *
     * @param widePx   a little more than the frame
     * @param size     step of the diameter of its spots
     * @param diameter of its spots, px
     * @param wanted   spots that its stems make
     */
    private record Strip(double aheadM, double thickM, double widePx, int size, double diameter, double wanted) {
    }

    private final Setup setup;
    private final Perspective perspective;
    private final Bloom bloom;
    private final Seed seed;
    private final double stemsPerM2;
    private final double fromM;
    private final double meanM;
    private final Map<Integer, List<Point>> drifts = new TreeMap<>();
    private final double[] petalsPx2;
    private int spots = FEWEST_SPOTS;

    FarCarpet(Setup setup, double stemsPerM2, Perspective perspective, Bloom bloom, Seed seed, Carpet near) {
        this.setup = setup;
        this.stemsPerM2 = stemsPerM2;
        this.perspective = perspective;
        this.bloom = bloom;
        this.seed = seed;
        fromM = near.farFromM();
        meanM = (setup.lowM() + setup.highM()) / 2;
        petalsPx2 = new double[(int) (perspective.height / ROW_PX) + 1];
    }

    /** Notes petals in the rows that they fall in. */
    private void count(double y, double highPx, double px2) {
        int from = (int) Math.floor((y - highPx / 2) / ROW_PX);
        int to = (int) Math.floor((y + highPx / 2) / ROW_PX);
        for (int row = Math.max(0, from); row <= Math.min(petalsPx2.length - 1, to); row++) {
            petalsPx2[row] += px2 / (to - from + 1);
        }
    }

    private double y(double ahead, double above) {
        return perspective.y(ahead, above, perspective.depthM(ahead, above));
    }

    /** The wash, then the drifts, far ones first. */
    List<Mark> marks() {
        double top = y(FlowerLayer.FAR_M, meanM);
        if (fromM >= FlowerLayer.FAR_M || perspective.depthM(FlowerLayer.FAR_M, meanM) < 0.1 || top > perspective.height) {
            return List.of();
        }
        List<Strip> strips = strips();
        double wanted = strips.stream().mapToDouble(Strip::wanted).sum();
        spots = (int) Math.max(FEWEST_SPOTS, Math.min(MOST_SPOTS, wanted / MOST_DRIFTS));
        double share = Math.min(1.0 / spots, MOST_DRIFTS / Math.max(1, wanted));
        IntStream.range(0, strips.size()).forEach(i -> place(i, strips.get(i), share));
        List<Mark> marks = new ArrayList<>();
        double[] rows = {y(FlowerLayer.FAR_M, setup.highM()), y(FlowerLayer.FAR_M, setup.lowM()), y(fromM, setup.highM()), y(fromM, setup.lowM())};
        double from = Math.max(0, Arrays.stream(rows).min().orElseThrow());
        double to = Math.min(perspective.height, Arrays.stream(rows).max().orElseThrow());
        if (to - from > 2) {
            marks.add(wash(from, to));
        }
        if (!drifts.isEmpty()) {
            marks.add(new Glyph(Motif.DRIFT.id, List.of(new Spots("petal-dot", SPOT, placesInADrift()))));
            drifts.forEach((size, at) -> marks.add(new Stamps(Motif.DRIFT.id, SIZES.px(size) / SPOT * FlowerHead.WIDTH, 1, at)));
        }
        return marks;
    }

    /** Depth of the strip of ground whose heads fill about the height of a drift in the frame; 5 % of the way at least. */
    private double thick(double ahead) {
        double least = 0.05 * ahead;
        double rises = Math.abs(y(ahead, meanM) - y(ahead + least, meanM));
        return Math.max(least, Math.min(0.4 * ahead, least * HEIGHT / SPOT * Math.max(LEAST_PX, spot(ahead)) / Math.max(rises, 0.01)));
    }

    private double spot(double ahead) {
        return bloom.spot(setup.headM() * perspective.pxPerM(perspective.depthM(ahead, meanM)));
    }

    /** Those in the frame whose spots can be seen, near ones first. */
    private List<Strip> strips() {
        List<Strip> strips = new ArrayList<>();
        double ahead = fromM;
        for (int i = 0; i < STRIPS && ahead < FlowerLayer.FAR_M; i++) {
            double thick = Math.min(thick(ahead), FlowerLayer.FAR_M - ahead);
            double middle = ahead + thick / 2;
            double depth = perspective.depthM(middle, meanM);
            double spot = spot(middle);
            double y = y(middle, meanM);
            double blur = setup.focus().blurShare(depth) * perspective.width;
            if (spot >= LEAST_PX && blur <= DISSOLVED * spot && perspective.inFrame(1, y, HEIGHT / SPOT * spot)
                    && FlowerLayer.cover(bloom.seenM2(stemsPerM2), perspective.sineAt(y)) >= LEAST_COVER) {
                double wide = perspective.width + 4 * spot;
                int size = SIZES.of(spot);
                double diameter = SIZES.px(size);
                double stems = stemsPerM2 * thick * wide / perspective.pxPerM(depth);
                double area = Math.max(1, y(ahead, meanM) - y(ahead + thick, meanM)) * wide;
                double most = -Math.log(1 - MOST_COVER) * area / (Math.PI / 4 * diameter * diameter);
                strips.add(new Strip(ahead, thick, wide, size, diameter, Math.min(most, stems * spot * spot / (diameter * diameter))));
            }
            ahead += thick;
        }
        return strips;
    }

    private void place(int number, Strip strip, double share) {
        int placed = (int) (strip.wanted() * share + seed.share(number, 61));
        double high = HEIGHT * strip.diameter() / SPOT;
        for (int i = 0; i < placed; i++) {
            int index = number * 509 + i;
            double y = y(strip.aheadM() + strip.thickM() * seed.share(index, 63),
                    setup.lowM() + seed.share(index, 64) * (setup.highM() - setup.lowM()));
            if (y > -high && y < perspective.height + high) {
                drifts.computeIfAbsent(strip.size(), any -> new ArrayList<>()).add(new Point(
                        Math.round((i + seed.share(index, 62)) / placed * strip.widePx() - 2 * strip.diameter()), Math.round(y)));
                count(y, high, spots * Math.PI / 4 * strip.diameter() * strip.diameter() * perspective.width / strip.widePx());
            }
        }
    }

    /** What the far petals that are drawn leave open of the cover by all far ones, row by row. */
    private Wash wash(double top, double bottom) {
        List<Stop> stops = new ArrayList<>();
        double fromDepthM = Math.max(perspective.depthM(fromM, meanM), Perspective.LEAST_DEPTH_M);
        double perM = bloom.seenM2(stemsPerM2) / (setup.highM() - setup.lowM() + bloom.thickM());
        double low = setup.lowM() - bloom.thickM() / 2;
        double high = setup.highM() + bloom.thickM() / 2;
        for (double y = top; y < bottom; y += y < top + ROW_PX ? ROW_PX / 3 : ROW_PX) {
            int row = (int) (y / ROW_PX);
            int from = Math.max(0, row - 1);
            int to = Math.min(petalsPx2.length - 1, row + 1);
            double drawn = Arrays.stream(petalsPx2, from, to + 1).sum() / ((to - from + 1) * ROW_PX * perspective.width);
            double bare = Math.exp(-perM * perspective.wayBetweenM(y, low, high, fromDepthM, FlowerLayer.FAR_M));
            stops.add(new Stop((y - top) / (bottom - top), Math.max(0, 1 - bare * Math.exp(drawn))));
        }
        stops.add(new Stop(1, bottom < perspective.height ? 0 : stops.get(stops.size() - 1).strength()));
        return new Wash("petal-wash", top, bottom, thinned(stops));
    }

    private List<Point> placesInADrift() {
        List<Point> places = new ArrayList<>();
        for (int i = 0; i < spots; i++) {
            double x = ((i + seed.share(i, 65)) / spots - 0.5) * FlowerHead.WIDTH;
            places.add(new Point(x, (seed.share(i, 66) - 0.5) * HEIGHT * 1.3));
        }
        return places;
    }

    /** The ends, and stops that are far enough from the one before. */
    private static List<Stop> thinned(List<Stop> stops) {
        List<Stop> kept = new ArrayList<>();
        for (int i = 0; i < stops.size(); i++) {
            Stop stop = stops.get(i);
            Stop before = kept.isEmpty() ? stop : kept.get(kept.size() - 1);
            if (i == 0 || i == stops.size() - 1 || stop.at() - before.at() > 0.09 || Math.abs(stop.strength() - before.strength()) > 0.08) {
                kept.add(stop);
            }
        }
        return kept;
    }
}
