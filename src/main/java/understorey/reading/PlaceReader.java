package understorey.reading;

import java.util.ArrayList;
import java.util.List;
import understorey.plan.Canopy;
import understorey.plan.Foliage;
import understorey.plan.SkylinePoint;
import understorey.plan.Slope;
import understorey.yaml.Dimension;
import understorey.yaml.Fields;
import understorey.yaml.Node;

/** Reads what sites and spots have in common: height, skyline, canopy, slope, clearing. */
final class PlaceReader {

    /** Steeper ground is a rock face, and a camera cannot be aimed over it as over ground. */
    private static final double STEEPEST_DEG = 80;

    /** Of a skyline: two a degree. */
    private static final int MOST_POINTS = 720;

    private PlaceReader() {
    }

    /** Metres above sea level, from the lowest lake shore to the highest summit. */
    static Double elevation(Fields f) {
        return f.quantity("elevation", Dimension.LENGTH, -450, 9000);
    }

    /** By rising bearing; null when not given. */
    static List<SkylinePoint> skyline(Fields f) {
        if (!f.has("skyline")) {
            f.take("skyline");
            return null;
        }
        f.atMost(MOST_POINTS, "skyline");
        List<SkylinePoint> points = new ArrayList<>();
        for (Fields block : f.blocks("skyline", "this skyline point")) {
            block.require("bearing", "angle");
            Double bearing = block.bearing("bearing");
            Double angle = block.angle("angle", -30, 89);
            block.done();
            if (bearing == null || angle == null) {
                continue;
            }
            for (SkylinePoint point : points) {
                if (point.bearingDeg() == bearing) {
                    block.refuse("bearing", "this bearing is already in the skyline", "delete one of the two points");
                }
            }
            points.add(new SkylinePoint(bearing, angle));
        }
        points.sort((a, b) -> Double.compare(a.bearingDeg(), b.bearingDeg()));
        return List.copyOf(points);
    }

    /** Null when not given. */
    static Canopy canopy(Fields f) {
        Node node = f.take("canopy");
        if (node instanceof Node.Scalar scalar) {
            if (!scalar.text().equals("none")) {
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
        block.done();
        return new Canopy(trees, foliage, height);
    }

    private static Foliage foliage(Fields f) {
        Foliage.Stage stage = f.word("stage", Foliage.Stage.values());
        var leafOut = f.date("leaf_out");
        Double index = f.number("plant_area_index", 0, 12);
        int given = 0;
        for (String key : List.of("stage", "leaf_out", "plant_area_index")) {
            if (f.has(key) && ++given == 2) {
                f.findings().error(f.atKey(key), "give only one of 'stage', 'leaf_out' and 'plant_area_index'",
                        "delete the others");
            }
        }
        if (stage != null) {
            return stage;
        }
        if (leafOut != null) {
            return new Foliage.LeafOut(leafOut);
        }
        return index == null ? null : new Foliage.Index(index);
    }

    static Slope slope(Fields spot) {
        Fields f = spot.block("slope", "this slope");
        if (f == null) {
            return null;
        }
        f.require("angle", "faces");
        Double angle = f.angle("angle", 0, STEEPEST_DEG);
        Double faces = f.bearing("faces");
        f.done();
        return angle == null || faces == null ? null : new Slope(angle, faces);
    }

    /** Metres to the edge of the trees; null if the spot is not in a clearing. */
    static Double clearing(Fields spot) {
        Fields f = spot.block("clearing", "this clearing");
        if (f == null) {
            return null;
        }
        f.require("radius");
        Double radius = f.quantity("radius", Dimension.LENGTH, 0.5, 2000);
        f.done();
        return radius;
    }
}
