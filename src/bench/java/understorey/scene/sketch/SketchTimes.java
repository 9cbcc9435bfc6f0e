package understorey.scene.sketch;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import understorey.pages.svg.Glyphs;
import understorey.pages.svg.Svg;
import understorey.scene.Drawing;

/**
 * Size and time of the sketch of every subject wide, low and close: the SVG without its words, and the median of
 * {@value #ROUNDS} drawings on one core that is warm.
 */
public final class SketchTimes {

    private static final int WARM = 400;
    private static final int ROUNDS = 101;

    private record Cost(double ms, double kB) {
    }

    private SketchTimes() {
    }

    public static void main(String[] none) {
        Map<String, Setup> setups = Setups.everySubject();
        for (int i = 0; i < WARM; i++) {
            setups.values().forEach(SketchTimes::drawn);
        }
        Map<String, Cost> costs = new LinkedHashMap<>();
        setups.forEach((name, setup) -> costs.put(name, cost(setup)));
        say("drawn, ms", costs, Cost::ms);
        say("SVG, kB", costs, Cost::kB);
    }

    private static Drawing drawn(Setup setup) {
        return ViewfinderSketch.of(setup).drawing(fact -> "");
    }

    private static Cost cost(Setup setup) {
        double[] ms = new double[ROUNDS];
        for (int i = 0; i < ROUNDS; i++) {
            long from = System.nanoTime();
            drawn(setup);
            ms[i] = (System.nanoTime() - from) / 1e6;
        }
        Arrays.sort(ms);
        return new Cost(ms[ROUNDS / 2], Svg.shared(drawn(setup), "s", new Glyphs()).getBytes(StandardCharsets.UTF_8).length / 1000.0);
    }

    private static void say(String what, Map<String, Cost> costs, ToDoubleFunction<Cost> figure) {
        StringBuilder largest = new StringBuilder();
        costs.entrySet().stream().sorted(Comparator.comparingDouble((Map.Entry<String, Cost> one) -> figure.applyAsDouble(one.getValue())).reversed())
                .limit(6).forEach(one -> largest.append(String.format(Locale.ROOT, "; %s %.2f", one.getKey(), figure.applyAsDouble(one.getValue()))));
        System.out.printf(Locale.ROOT, "%s: mean %.3f of %d%s%n", what, costs.values().stream().mapToDouble(figure).average().orElseThrow(),
                costs.size(), largest);
    }
}
