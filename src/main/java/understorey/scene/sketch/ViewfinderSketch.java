package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import understorey.kit.LensFit;
import understorey.optics.FlowerLayer;
import understorey.optics.Projection;
import understorey.scene.Drawing;
import understorey.scene.Drawing.Box;
import understorey.scene.Drawing.Dot;
import understorey.scene.Drawing.Hatch;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.scene.Fact;
import understorey.scene.Scene;
import understorey.scene.Seed;
import understorey.scene.Wording;
import understorey.sky.SunAt;
import understorey.visit.Place;

/**
 * A picture as its lens would draw it, from the camera's height, tilt, angle of view and the rise of the ground:
 * flowers at the subject's usual density and trunks, both to scale and placed by a seed, sharp in full ink and soft
 * in faint ink; the sun where it stands. Leaves are left out, and so are clumps and relief.
 */
public final class ViewfinderSketch {

    private static final double SUN_PX = 9;
    private static final double RAY_PX = 7;
    /** Without words and frame. */
    private static final double MOST_BYTES = 18_500;
    private static final int MOST_HEADS = 2400;

    private final Setup setup;
    private final double stemsPerM2;
    private final Perspective perspective;
    private final Clip clip;
    private final Seed seed;
    private final Focus focus;
    private final double headM;
    private final Trunks trunks;
    private final List<Scatter.Plant> plants;
    private final List<Mark> marks = new ArrayList<>();

    private ViewfinderSketch(Setup setup, double stemsPerM2) {
        this.setup = setup;
        this.stemsPerM2 = stemsPerM2;
        perspective = Perspective.of(setup);
        clip = new Clip(perspective.width, perspective.height);
        seed = new Seed(setup.fit().intent().shot().name().hashCode());
        trunks = new Trunks(setup, perspective, seed);
        focus = setup.focus();
        headM = setup.headM();
        plants = new Scatter(setup, stemsPerM2, MOST_HEADS, perspective, trunks, seed).plants();
    }

    /** At the density of a good stand. */
    public static Scene of(Setup setup) {
        return of(setup, setup.stemsPerM2());
    }

    static Scene of(Setup setup, double stemsPerM2) {
        return words -> drawing(setup, stemsPerM2, words);
    }

    private static Drawing drawing(Setup setup, double stemsPerM2, Wording words) {
        double share = 1;
        ViewfinderSketch full = new ViewfinderSketch(setup, stemsPerM2);
        Drawing drawing = full.drawing(share, words);
        double bytes = bytes(drawing);
        while (share > 0.1 && bytes > MOST_BYTES) {
            share *= Math.min(0.8, 0.9 * MOST_BYTES / bytes);
            drawing = full.drawing(share, words);
            bytes = bytes(drawing);
        }
        return drawing;
    }

    /** What the marks take as text, roughly. */
    private static double bytes(Drawing drawing) {
        double bytes = 0;
        for (Mark mark : drawing.marks()) {
            if (mark instanceof Drawing.Stamps stamps) {
                bytes += 175 + 7 * stamps.outline().size() + 9 * stamps.at().size();
            } else if (mark instanceof Drawing.Spots spots) {
                bytes += 60 + 10 * spots.at().size();
            } else {
                bytes += mark instanceof Hatch hatch ? 40 + 11 * hatch.ends().size() : 85;
            }
        }
        return bytes;
    }

    /**
     * The picture.
     *
     * @param share of its flowers that are drawn, near and far alike; fewer than all where they would make it too large
     */
    private Drawing drawing(double share, Wording words) {
        List<Scatter.Plant> shown = share == 1 ? plants
                : IntStream.range(0, plants.size()).filter(i -> seed.share(i, 41) < share).mapToObj(plants::get).toList();
        marks.clear();
        marks.add(new Box("sheet", 0, 0, perspective.width, perspective.height));
        double horizonY = groundY();
        land(horizonY);
        Projection.Place sun = sun();
        hatch("far-trunks", setup.closest() ? List.of() : trunks.far());
        marks.addAll(trunks.areas());
        flowers(shown, share);
        if (setup.close()) {
            subject();
        }
        if (sun != null) {
            sun(perspective.width / 2 * (1 + sun.x()), perspective.height / 2 * (1 - sun.y()));
        }
        thirds();
        marks.add(new Box("frame", 0, 0, perspective.width, perspective.height));
        return new Drawing(perspective.width, perspective.height,
                words.of(new Fact.FrameOf(setup.fit().intent().shot().name())), words.of(says(horizonY, sun, shown.stream().anyMatch(Scatter.Plant::head), share)),
                List.copyOf(marks));
    }

    /** Where the ground ends: in a wood among the trunks, in the open where it vanishes. */
    private double groundY() {
        double depth = perspective.depthM(FlowerLayer.FAR_M, 0);
        return !setup.trees() ? perspective.vanishingY()
                : depth < 1 ? Double.NEGATIVE_INFINITY : perspective.y(FlowerLayer.FAR_M, 0, depth);
    }

    private void land(double horizonY) {
        double top = clip.y(horizonY);
        if (top < perspective.height) {
            marks.add(new Box("ground", 0, top, perspective.width, perspective.height - top));
        }
        if (top > 0 && top < perspective.height && !setup.closest()) {
            marks.add(new Hatch("horizon", List.of(new Point(0, top), new Point(perspective.width, top))));
        }
    }

    /** Null when it is not in the frame. */
    private Projection.@Nullable Place sun() {
        Double facingDeg = setup.fit().intent().shot().facingDeg();
        SunAt sun = setup.sun();
        if (sun == null || facingDeg == null) {
            return null;
        }
        Projection.Place place = Projection.of(facingDeg, setup.fit().tiltDeg(), setup.fit().view())
                .place(sun.azimuthDeg(), sun.apparentAltitudeDeg());
        return place != null && place.inFrame() ? place : null;
    }

    private void sun(double x, double y) {
        List<Point> rays = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            double cosine = Math.cos(i * Math.PI / 4);
            double sine = Math.sin(i * Math.PI / 4);
            clip.stroke(x + (SUN_PX + 4) * cosine, y + (SUN_PX + 4) * sine, x + (SUN_PX + 4 + RAY_PX) * cosine,
                    y + (SUN_PX + 4 + RAY_PX) * sine, rays);
        }
        hatch("sun-rays", rays);
        marks.add(new Dot("sun-ring", new Point(x, y), SUN_PX));
    }

    /** Far ones first: spots, then stems, then heads that are large enough to have one. */
    private void flowers(List<Scatter.Plant> shown, double share) {
        List<List<Point>> bySize = new ArrayList<>();
        for (Scatter.Plant plant : shown) {
            if (!plant.head()) {
                continue;
            }
            int step = Heads.step(headM * perspective.pxPerM(plant.depthM()));
            while (bySize.size() <= step) {
                bySize.add(new ArrayList<>());
            }
            bySize.get(step).add(new Point(plant.x(), plant.y()));
        }
        Heads drawn = new Heads(setup, perspective);
        int stemmed = Math.min(bySize.size(), Heads.step(Stems.LEAST_PX));
        for (int step = 0; step < bySize.size(); step++) {
            if (step == stemmed) {
                new Stems(setup, perspective, seed, share).draw(shown, marks);
            }
            if (!bySize.get(step).isEmpty()) {
                double px = Heads.size(step);
                drawn.draw(px, headM * perspective.pxPerM(1) / px, bySize.get(step), marks);
            }
        }
    }

    /** The plant that is framed: its head as high as it grows, or as nearly as it is not cut off. */
    private void subject() {
        double distance = setup.fit().distanceM();
        double ahead = perspective.aheadOnAxisM(distance);
        double above = (setup.lowM() + setup.highM()) / 2;
        double px = headM * perspective.pxPerM(distance);
        double y = perspective.y(ahead, above, perspective.depthM(ahead, above));
        double room = Math.min(px, perspective.height) / 2 * 0.999;
        double whole = Math.max(room, Math.min(perspective.height - room, y));
        above += (y - whole) / perspective.pxPerM(distance);
        y = whole;
        double x = perspective.width / 2;
        double footDepth = Math.max(Perspective.LEAST_DEPTH_M, perspective.depthM(ahead, 0));
        double footY = perspective.y(ahead, Math.min(0, above - setup.lowM()), footDepth);
        List<Point> stem = new ArrayList<>();
        clip.stroke(x, y, x + 0.06 * (footY - y), footY, stem);
        hatch(setup.closest() ? "stem" : "stems broader", stem);
        new Heads(setup, perspective).draw(px, distance, List.of(new Point(x, y)), marks);
    }

    private void hatch(String style, List<Point> ends) {
        if (!ends.isEmpty()) {
            marks.add(new Hatch(style, ends));
        }
    }

    private void thirds() {
        List<Point> ends = new ArrayList<>();
        for (int i = 1; i < 3; i++) {
            ends.add(new Point(perspective.width * i / 3, 0));
            ends.add(new Point(perspective.width * i / 3, perspective.height));
            ends.add(new Point(0, perspective.height * i / 3));
            ends.add(new Point(perspective.width, perspective.height * i / 3));
        }
        marks.add(new Hatch("thirds", ends));
    }

    private Fact says(double horizonY, Projection.@Nullable Place sun, boolean flowers, double share) {
        LensFit fit = setup.fit();
        List<Fact> says = new ArrayList<>();
        double fills = headM / fit.frameWidthM();
        says.add(setup.partOfHead() ? new Fact.FrameCoversFlower(fit.frameWidthM(), fit.frameHeightM(), fit.distanceM(), headM, fills)
                : new Fact.FrameCovers(fit.frameWidthM(), fit.frameHeightM(), fit.distanceM(), headM, fills));
        says.add(ground(1 - clip.y(horizonY) / perspective.height));
        if (!trunks.areas().isEmpty()) {
            says.add(new Fact.TrunksApart(Trunks.SPACING_M));
        }
        if (sun != null) {
            says.add(new Fact.SunPlacedInFrame((1 + sun.x()) / 2, (1 - sun.y()) / 2));
        }
        if (flowers) {
            Fact density = setup.stemsKnown() ? new Fact.StemDensity(stemsPerM2) : Fact.Word.UNKNOWN_DENSITY;
            says.add(share < 1 ? new Fact.FlowersThinned(density, share) : new Fact.Flowers(density));
        }
        says.add(Fact.Word.DARK_LINES_ARE_SHARP);
        return Fact.text(says);
    }

    private Fact ground(double share) {
        return share >= 1 ? Fact.Word.GROUND_FILLS_FRAME : share <= 0 ? Fact.Word.NO_GROUND
                : setup.trees() ? new Fact.GroundMeetsTrees(share) : new Fact.GroundReachesHorizon(share);
    }
}
