package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.kit.LensFit;
import understorey.optics.FlowerCover;
import understorey.optics.FlowerLayer;
import understorey.optics.GroundView;
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

/**
 * A picture as its lens would draw it, from the camera's height, tilt, angle of view and the rise of the ground: the
 * backdrop, the far carpet, the trunks, the heads near by, and the one that a close picture is framed for. Clumps and relief
 * are left out.
 */
public final class ViewfinderSketch {

    /** A camera that is no higher, in heights of the flowers, is among them. */
    private static final double LOW = 1.6;
    private static final double SUN_PX = 8;
    private static final double TICK_PX = 7;
    private static final double ALMOST_ALL = 0.93;
    /** With these a sketch needs less than 25 kB in a page. */
    private static final int MOST_HEADS = 560;
    private static final int MOST_HEADS_LOW = 270;
    private static final int MOST_HEADS_CLOSE = 150;
    private static final int MOST_PLANTS = 160;
    private static final int MOST_PLANTS_CLOSE = 80;

    private final Setup setup;
    private final double stemsPerM2;
    private final Perspective perspective;
    private final PetalTint tint;
    private final Trunks trunks;
    private final Carpet carpet;
    private final Seed seed;
    private final Bloom bloom;

    private ViewfinderSketch(Setup setup, double stemsPerM2) {
        this.setup = setup;
        this.stemsPerM2 = stemsPerM2;
        perspective = Perspective.of(setup);
        seed = new Seed(setup.fit().intent().shot().name().hashCode());
        tint = PetalTint.of(setup.subject());
        trunks = new Trunks(setup, perspective, seed);
        bloom = new Bloom(setup);
        carpet = new Carpet(setup, stemsPerM2, perspective, trunks, bloom, seed,
                setup.close() ? MOST_HEADS_CLOSE : perspective.aboveM() < LOW * setup.highM() ? MOST_HEADS_LOW : MOST_HEADS);
    }

    /** At the density of a good stand. */
    public static Scene of(Setup setup) {
        return of(setup, setup.stemsPerM2());
    }

    static Scene of(Setup setup, double stemsPerM2) {
        return words -> new ViewfinderSketch(setup, stemsPerM2).drawing(words);
    }

    private Drawing drawing(Wording words) {
        List<Mark> marks = new ArrayList<>();
        double horizonY = groundY();
        Projection.Place sun = sun();
        marks.addAll(new Backdrop(setup, perspective, seed, trunks, horizonY).marks(sun));
        List<Mark> near = new ArrayList<>();
        if (setup.closest()) {
            marks.addAll(trunks.marks());
        } else {
            Sward sward = new Sward(setup, perspective, trunks, seed);
            List<Mark> plants = sward.plants(setup.close() ? setup.sharpFromM() : 0, setup.close() ? MOST_PLANTS_CLOSE : MOST_PLANTS);
            if (!setup.close()) {
                marks.addAll(sward.patches());
            }
            marks.addAll(setup.amongFlowers() ? List.of() : plants);
            marks.addAll(new FarCarpet(setup, stemsPerM2 * setup.stage().open(), perspective, bloom, seed, carpet).marks());
            marks.addAll(trunks.marks());
            near.addAll(setup.amongFlowers() ? plants : List.of());
        }
        marks.addAll(Stems.marks(setup, perspective, seed, carpet.heads()));
        marks.addAll(near);
        marks.addAll(carpet.marks());
        if (setup.close()) {
            marks.addAll(new CloseUp(setup, perspective, seed).marks());
        }
        if (sun != null) {
            marks.add(new Dot("sun-ring", perspective.point(sun), SUN_PX));
        }
        marks.addAll(new ComposeMarks(setup, perspective).marks());
        thirds(marks);
        marks.add(new Box("frame", 0, 0, perspective.width, perspective.height));
        return new Drawing(perspective.width, perspective.height,
                words.of(new Fact.FrameOf(setup.fit().intent().shot().name())), words.of(says(horizonY, sun)),
                List.of(new Drawing.Palette(tint.deep() ? "deep" : "airy", tint.hex(), tint.dimHex(), List.copyOf(marks))));
    }

    /** Where the ground ends: in a wood among the trunks, in the open where it vanishes. */
    private double groundY() {
        double depth = perspective.depthM(FlowerLayer.FAR_M, 0);
        return !setup.trees() ? perspective.vanishingY()
                : depth < 1 ? Double.NEGATIVE_INFINITY : perspective.y(FlowerLayer.FAR_M, 0, depth);
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

    /** Ticks at the edges. */
    private void thirds(List<Mark> marks) {
        List<Point> ends = new ArrayList<>();
        for (int i = 1; i < 3; i++) {
            double x = Math.round(perspective.width * i / 3);
            double y = Math.round(perspective.height * i / 3);
            ends.addAll(List.of(new Point(x, 0), new Point(x, TICK_PX), new Point(x, perspective.height - TICK_PX), new Point(x, perspective.height),
                    new Point(0, y), new Point(TICK_PX, y), new Point(perspective.width - TICK_PX, y), new Point(perspective.width, y)));
        }
        marks.add(new Hatch("thirds", ends));
    }

    private Fact says(double horizonY, Projection.@Nullable Place sun) {
        LensFit fit = setup.fit();
        double headM = setup.headM();
        List<Fact> says = new ArrayList<>();
        double fills = headM / fit.frameWidthM();
        says.add(setup.partOfHead() ? new Fact.FrameCoversFlower(fit.frameWidthM(), fit.frameHeightM(), fit.distanceM(), headM, fills)
                : new Fact.FrameCovers(fit.frameWidthM(), fit.frameHeightM(), fit.distanceM(), headM, fills));
        says.add(ground(1 - Math.max(0, Math.min(perspective.height, horizonY)) / perspective.height));
        if (!trunks.trunks().isEmpty()) {
            says.add(new Fact.TrunksApart(trunks.spacingM()));
            wood(says);
        }
        if (sun != null) {
            says.add(new Fact.SunPlacedInFrame((1 + sun.x()) / 2, (1 - sun.y()) / 2));
        }
        if (!carpet.heads().isEmpty()) {
            says.add(new Fact.Flowers(setup.stemsKnown() ? new Fact.StemDensity(stemsPerM2) : Fact.Word.UNKNOWN_DENSITY));
        }
        if (!carpet.heads().isEmpty() && carpet.farFromM() < FlowerLayer.FAR_M && !setup.close()) {
            says.add(bloom.drawnShare() > ALMOST_ALL ? new Fact.HeadsDrawnTo(carpet.farFromM())
                    : new Fact.SomeHeadsDrawnTo(bloom.drawnShare(), carpet.farFromM()));
        }
        if (setup.subject().flowerAreaIndex() != null && !setup.close() && perspective.aboveM() > setup.highM()) {
            double open = setup.stage().open();
            says.add(open == 1 ? Fact.Word.TONE_IS_COVER : new Fact.OpenCover(cover(open * setup.subject().flowerAreaIndex().typical())));
        }
        stage(says);
        if (setup.air().mist() && !setup.close()) {
            says.add(Fact.Word.MIST_DRAWN);
        }
        if (trunks.shadowed()) {
            says.add(Fact.Word.SHADOWS_DRAWN);
        }
        new ComposeMarks(setup, perspective).says(says);
        return Fact.text(says);
    }

    /** Share of the ground in the frame that petals cover, as the page states it for full flower. */
    private double cover(double areaIndex) {
        double tiltDeg = Math.max(-90, Math.min(90, setup.fit().tiltDeg()));
        return FlowerCover.of(new GroundView(setup.fit().heightM(), tiltDeg, setup.riseDeg(), setup.fit().view(), Perspective.LEAST_DEPTH_M),
                FlowerLayer.of((setup.lowM() + setup.highM()) / 2, areaIndex)).cover();
    }

    private void wood(List<Fact> says) {
        if (trunks.kind() != null) {
            says.add(new Fact.TreesLike(trunks.kind().name(), setup.subject().name()));
        }
        if (trunks.crowns().seen()) {
            says.add(switch (Crowns.stage(setup)) {
                case LEAFLESS -> Fact.Word.TREES_BARE;
                case BUD_BURST -> Fact.Word.TREES_BREAK_BUD;
                case HALF_LEAF -> Fact.Word.TREES_HALF_IN_LEAF;
                case FULL_LEAF -> Fact.Word.TREES_IN_LEAF;
            });
        }
    }

    /** What of the stage and of drops is drawn. */
    private void stage(List<Fact> says) {
        Stage stage = setup.stage();
        if (stage.buds() > 0) {
            says.add(stage.open() > 0 ? new Fact.StillInBud(stage.buds()) : Fact.Word.ALL_IN_BUD);
        } else if (stage.faded() > 0) {
            says.add(stage.open() > 0 ? new Fact.AlreadyFaded(stage.faded()) : Fact.Word.ALL_FADED);
        }
        if (setup.close() && CloseUp.chosen(setup)) {
            says.add(Fact.Word.CHOSEN_OPEN);
        }
        if (setup.close() && setup.air().drops() && !setup.fungus()) {
            says.add(Fact.Word.DROPS_DRAWN);
        }
    }

    private Fact ground(double share) {
        return share >= 1 ? Fact.Word.GROUND_FILLS_FRAME : share <= 0 ? Fact.Word.NO_GROUND
                : setup.trees() ? new Fact.GroundMeetsTrees(share) : new Fact.GroundReachesHorizon(share);
    }
}
