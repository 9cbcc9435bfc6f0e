package understorey.reading.site;

import java.util.List;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import understorey.plan.Canopy;
import understorey.plan.Edge;
import understorey.plan.Foliage;
import understorey.plan.SkylinePoint;
import understorey.plan.Slope;
import understorey.yaml.Fields;
import understorey.yaml.tree.Node;
import understorey.yaml.value.Dimension;

/** Reads what sites and spots have in common: height, skyline, edges, canopy, slope, clearing. */
final class PlaceReader {

    /** Steeper ground is a rock face, and a camera cannot be aimed over it as over ground. */
    private static final double STEEPEST_DEG = 80;

    /** Of a skyline, or of edges: two per degree. */
    private static final int MOST_POINTS = 720;

    private PlaceReader() {
    }

    /** Metres above sea level, from the lowest lake shore to the highest summit. */
    static @Nullable Double elevation(Fields f) {
        return f.quantity("elevation", Dimension.LENGTH, -450, 9000);
    }

    /** By rising bearing; null when not given. */
    static @Nullable List<SkylinePoint> skyline(Fields f) {
        return around(f, "skyline", "skyline point", point -> point.require("angle").angle("angle", -30, 89), SkylinePoint::new);
    }

    /** By rising bearing; null when not given. */
    static @Nullable List<Edge> edges(Fields f) {
        return around(f, "edges", "edge", edge -> edge.require("distance").quantity("distance", Dimension.LENGTH, 1, 5000), Edge::new);
    }

    /** A list of one value per bearing. */
    private static <T> @Nullable List<T> around(Fields f, String key, String called, Function<Fields, @Nullable Double> value,
                                                BiFunction<Double, Double, T> entry) {
        if (!f.has(key)) {
            f.take(key);
            return null;
        }
        f.atMost(MOST_POINTS, key);
        TreeMap<Double, T> entries = new TreeMap<>();
        for (Fields block : f.blocks(key, "this " + called)) {
            Double bearing = block.require("bearing").bearing("bearing");
            Double read = value.apply(block);
            block.done();
            if (bearing != null && read != null && entries.putIfAbsent(bearing, entry.apply(bearing, read)) != null) {
                block.refuse("bearing", "another " + called + " has this bearing", "delete one of the two");
            }
        }
        return List.copyOf(entries.values());
    }

    /** Null when not given. */
    static @Nullable Canopy canopy(Fields f) {
        Node node = f.take("canopy");
        if (node instanceof Node.Scalar scalar) {
            if (!scalar.text().strip().equalsIgnoreCase("none")) {
                f.refuse("canopy", "'canopy' must be none or keys and values, not " + node.described(),
                        "for example {trees: deciduous, stage: half-leaf, height: 18 m}");
            }
            return Canopy.NONE;
        }
        Fields block = f.block(node, "'canopy'", "this canopy");
        if (block == null) {
            return null;
        }
        Canopy.Trees trees = block.word("trees", Canopy.Trees.values());
        Foliage foliage = foliage(block);
        Double height = block.quantity("height", Dimension.LENGTH, 0.5, 120);
        Double base = block.quantity("base", Dimension.LENGTH, 0, 120);
        if (base != null && height != null && base >= height) {
            block.refuse("base", "'base' is not below 'height'", "'base' is the height of the lowest living branches");
        }
        Double stems = block.quantity("stems", Dimension.TREES, 1, 100_000);
        Double diameter = block.quantity("diameter", Dimension.LENGTH, 0.01, 10);
        block.done();
        return new Canopy(trees, foliage, height, base, stems, diameter);
    }

    private static @Nullable Foliage foliage(Fields f) {
        Foliage.Stage stage = f.word("stage", Foliage.Stage.values());
        var leafOut = f.date("leaf_out");
        Double index = f.number("plant_area_index", 0, 12);
        f.oneOf("stage", "leaf_out", "plant_area_index");
        if (stage != null) {
            return stage;
        }
        if (leafOut != null) {
            return new Foliage.LeafOut(leafOut);
        }
        return index == null ? null : new Foliage.Index(index);
    }

    static @Nullable Slope slope(Fields spot) {
        return spot.in("slope", "this slope", f -> {
            f.require("angle", "faces");
            Double angle = f.angle("angle", 0, STEEPEST_DEG);
            Double faces = f.bearing("faces");
            return angle == null || faces == null ? null : new Slope(angle, faces);
        });
    }

    /** Metres to the edge of the trees; null if the spot is not in a clearing. */
    static @Nullable Double clearing(Fields spot) {
        return spot.in("clearing", "this clearing", f -> f.require("radius").quantity("radius", Dimension.LENGTH, 0.5, 2000));
    }
}
