package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.List;
import understorey.scene.Drawing.Hatch;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.scene.Seed;

/** The stems of the nearest plants, the very nearest with two leaves, which are over half as long as the stem. */
final class Stems {

    /** From here on, px of the head, a stem is told from its head. */
    static final double LEAST_PX = 8;
    private static final double LEAF_PX = 17;
    /** Stems of heads so wide, px, and of twice as wide ones, are drawn broader. */
    private static final double BROAD_PX = 26;
    private static final List<String> BREADTHS = List.of("", " broad", " broader");
    private static final int MOST_STEMS = 85;
    private static final int MOST_LEAVES = 22;

    private final Setup setup;
    private final Perspective perspective;
    private final Seed seed;
    private final double share;
    private final Clip clip;
    private final List<List<Point>> stems = new ArrayList<>();

    /**
     * Stems to draw.
     *
     * @param share of the stems and leaves that an ordinary sketch has room for
     */
    Stems(Setup setup, Perspective perspective, Seed seed, double share) {
        this.setup = setup;
        this.perspective = perspective;
        this.seed = seed;
        this.share = share;
        clip = new Clip(perspective.width, perspective.height);
        for (int i = 0; i < BREADTHS.size() * Tone.values().length; i++) {
            stems.add(new ArrayList<>());
        }
    }

    /** Adds the stems of plants that stand in order, the nearest first. */
    void draw(List<Scatter.Plant> plants, List<Mark> marks) {
        int number = 0;
        for (Scatter.Plant plant : plants) {
            double px = setup.headM() * perspective.pxPerM(plant.depthM());
            if (px < LEAST_PX || number >= MOST_STEMS * share) {
                break;
            }
            List<Point> ends = ends(Tone.of(setup.focus(), plant.depthM()), px < BROAD_PX ? 0 : px < 2 * BROAD_PX ? 1 : 2);
            clip.stroke(plant.footX(), plant.footY(), plant.x(), plant.y(), ends);
            if (px > LEAF_PX && number < MOST_LEAVES * share) {
                leaf(plant, -0.06 - 0.14 * seed.share(number, 31), ends);
                leaf(plant, 0.06 + 0.14 * seed.share(number, 32), ends);
            }
            number++;
        }
        for (Tone tone : Tone.values()) {
            for (int broad = 0; broad < BREADTHS.size(); broad++) {
                boolean lost = setup.closest() && tone == Tone.FAINT;
                if (!lost && !ends(tone, broad).isEmpty()) {
                    marks.add(new Hatch("stems" + tone.suffix + BREADTHS.get(broad), ends(tone, broad)));
                }
            }
        }
    }

    private List<Point> ends(Tone tone, int broad) {
        return stems.get(BREADTHS.size() * tone.ordinal() + broad);
    }

    private void leaf(Scatter.Plant plant, double lean, List<Point> ends) {
        double upX = plant.x() - plant.footX();
        double upY = plant.y() - plant.footY();
        double kneeX = plant.footX() + 0.42 * upX - 0.35 * lean * upY;
        double kneeY = plant.footY() + 0.42 * upY + 0.35 * lean * upX;
        clip.stroke(plant.footX(), plant.footY(), kneeX, kneeY, ends);
        clip.stroke(kneeX, kneeY, plant.footX() + 0.7 * upX - lean * upY, plant.footY() + 0.7 * upY + lean * upX, ends);
    }
}
