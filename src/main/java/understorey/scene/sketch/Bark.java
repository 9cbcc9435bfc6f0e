package understorey.scene.sketch;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import understorey.plan.Canopy;
import understorey.scene.Drawing.Point;

/** Trunks by kind, drawn by eye. */
enum Bark {
    /** Grey, without lines but the scars of branches. */
    SMOOTH,
    /** White with dark bars. */
    WHITE,
    /** Plates apart by cracks. */
    PLATED,
    /** Long strips that hang loose. */
    PEELING,
    /** Many thin poles from one stool. */
    COPPICE,
    /** Upright cracks, as on most trees. */
    RIDGED;

    /** A kind of tree and its bark. */
    record Tree(String name, Bark bark) {
    }

    /**
     * The first tree that the catalogue names above a flower and that fits the canopy of the site, which has no species; null
     * where none does.
     */
    static @Nullable Tree usual(Setup setup) {
        Canopy canopy = setup.canopy();
        if (setup.subject().guide() == null || canopy == null) {
            return null;
        }
        List<String> words = Arrays.asList(setup.subject().guide().setting().treesAbove().split("[ ,()/]+"));
        return words.stream().flatMap(word -> Flora.BUILT_IN.trees().stream().filter(tree -> word.startsWith(tree.name())))
                .filter(tree -> tree.bark().fits(canopy.trees())).findFirst().orElse(null);
    }

    private boolean fits(Canopy.@Nullable Trees trees) {
        boolean evergreen = this == PLATED || this == PEELING;
        return trees == null || trees == Canopy.Trees.MIXED || evergreen == (trees == Canopy.Trees.EVERGREEN);
    }

    /** Lines on a trunk. */
    List<List<Point>> lines(Trunk trunk) {
        return switch (this) {
            case SMOOTH -> bars(trunk, 4, 0.24);
            case WHITE -> bars(trunk, 11, 0.5);
            case PLATED -> cracks(trunk, 15, 0.04, 0.05);
            case PEELING -> cracks(trunk, 6, 0.2, 0.16);
            case COPPICE -> List.of();
            case RIDGED -> cracks(trunk, 9, 0.05, 0.1);
        };
    }

    private static List<List<Point>> cracks(Trunk trunk, int most, double least, double more) {
        return IntStream.range(0, (int) Math.min(most, trunk.half() * most / 16)).mapToObj(i -> {
            double turn = i * FlowerHead.GOLDEN + trunk.bow() * 9 + 5;
            return trunk.crack(0.9 * Math.sin(turn), 0.05 + 0.8 * (turn % 1), least + more * (turn * 3 % 1));
        }).toList();
    }

    private static List<List<Point>> bars(Trunk trunk, int most, double wide) {
        return IntStream.range(0, (int) Math.min(most, trunk.half() * most / 14)).mapToObj(i -> {
            double turn = i * FlowerHead.GOLDEN + trunk.bow() * 9 + 5;
            double side = 0.75 * Math.sin(turn);
            return trunk.bar(0.04 + 0.9 * (turn % 1), Math.max(-0.95, side - wide * (0.4 + turn * 3 % 0.6)), Math.min(0.95, side + wide));
        }).toList();
    }
}
