package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import understorey.scene.sketch.Parts.Word;

/**
 * One flower in radii, about its axis.
 *
 * @param tube    whether its outside is lit and its inside dim; the other way round for an open one
 * @param veins   whether its petals have a line along their middle
 * @param stamens number, distance from the axis, place along it; none where empty
 * @param specks  dark specks in a mouth, likewise
 * @param eye     diameter of the middle; 0 for none
 * @param disc    diameter of a darker middle in it; 0 for none
 */
record Blossom(boolean tube, boolean veins, List<Ring> rings, double[] stamens, double[] specks, double eye, double disc) {

    /**
     * Petals or green leaves about the axis.
     *
     * @param turn of the first, radians from upwards
     * @param rows distance from the axis, place along it, half the width, from base to tip
     */
    record Ring(boolean green, int count, double turn, double[][] rows) {

        static Ring of(boolean green, List<String> part) {
            double[] figures = part.stream().mapToDouble(Double::parseDouble).toArray();
            double[][] rows = new double[(figures.length - 2) / 3][];
            for (int i = 0; i < rows.length; i++) {
                rows[i] = new double[] {figures[2 + 3 * i], figures[3 + 3 * i], figures[4 + 3 * i]};
            }
            return new Ring(green, (int) figures[0], Math.toRadians(figures[1]), rows);
        }

        /** Every other row of a long petal. */
        double[][] coarse() {
            return rows.length < 5 ? rows : IntStream.range(0, rows.length).filter(i -> i % 2 == 0 || i == rows.length - 1)
                    .mapToObj(i -> rows[i]).toArray(double[][]::new);
        }
    }

    /** Number of its petals and leaves. */
    int petals() {
        return rings.stream().mapToInt(Ring::count).sum();
    }

    /** How far its widest petal or leaf is from the axis. */
    double spread() {
        return rings.stream().flatMap(ring -> Arrays.stream(ring.rows())).mapToDouble(row -> Math.hypot(row[0], row[2])).max().orElse(1);
    }

    static Blossom of(Parts parts) {
        List<Ring> rings = new ArrayList<>();
        parts.all(Word.PETALS).forEach(part -> rings.add(Ring.of(false, part)));
        parts.all(Word.LEAVES).forEach(part -> rings.add(Ring.of(true, part)));
        return new Blossom(parts.has(Word.TUBE), parts.has(Word.VEINS), rings, parts.figures(Word.STAMENS), parts.figures(Word.SPECKS),
                parts.figures(Word.EYE, 0)[0], parts.figures(Word.DISC, 0)[0]);
    }
}
