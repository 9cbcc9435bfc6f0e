package understorey.pages.html;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import understorey.pages.words.Words;
import understorey.scene.Drawing;
import understorey.scene.chart.VisitFigure;
import understorey.scene.chart.VisitLight;

/**
 * The light of a visit as outlines for SVG, and what is written at them.
 *
 * @param levels   lines at some EV, named by the figures
 * @param band     of any sky
 * @param expected under the sky expected
 * @param flecks   in patches of sun
 * @param atGround where the curve of the ground ends
 * @param atFleck  where that of the patches ends; null without any
 */
public record LightPaths(String levels, String night, String twilight, String band, String expected, String flecks,
                         List<VisitView.Tick> figures, List<Dot> dots, String atGround, @Nullable String atFleck) {

    /** A shot on the curve of light. */
    public record Dot(int number, String left, String top) {
    }

    private static final int RULES = 5;

    static LightPaths of(VisitLight light) {
        StringBuilder flecks = new StringBuilder();
        light.flecks().forEach(run -> flecks.append(path(run)));
        List<Drawing.Point> ground = light.expected().isEmpty() ? light.band().subList(0, light.band().size() / 2) : light.expected();
        List<Drawing.Point> fleck = light.flecks().isEmpty() ? List.of() : light.flecks().get(light.flecks().size() - 1);
        return new LightPaths(light.levels().stream().map(level -> "M0 " + VisitView.px(level.top() * VisitLight.HEIGHT) + "H" + VisitLight.WIDTH).collect(Collectors.joining()),
                rules(light.night(), RULES), rules(light.twilight(), 2 * RULES), light.band().isEmpty() ? "" : path(light.band()) + "Z",
                path(light.expected()), flecks.toString(),
                light.levels().stream().map(level -> new VisitView.Tick(Words.width(level.top()), Words.number(level.ev(), 0))).toList(),
                light.dots().stream().map(dot -> new Dot(dot.number(), Words.width(dot.left()), Words.width(dot.top()))).toList(),
                Words.width(last(ground)), fleck.isEmpty() ? null : Words.width(last(fleck)));
    }

    private static double last(List<Drawing.Point> run) {
        return run.isEmpty() ? 0.5 : run.get(run.size() - 1).y() / VisitLight.HEIGHT;
    }

    /** Level rules over dark stretches, so that they read without colour. */
    private static String rules(List<VisitFigure.Stretch> dark, int step) {
        StringBuilder rules = new StringBuilder();
        for (VisitFigure.Stretch stretch : dark) {
            for (int y = step / 2; y < VisitLight.HEIGHT; y += step) {
                rules.append('M').append(VisitView.px(stretch.left() * VisitLight.WIDTH)).append(' ').append(y)
                        .append('h').append(VisitView.px(stretch.width() * VisitLight.WIDTH));
            }
        }
        return rules.toString();
    }

    private static String path(List<Drawing.Point> points) {
        return points.stream().map(point -> VisitView.px(point.x()) + "," + VisitView.px(point.y())).collect(Collectors.joining(" ", points.isEmpty() ? "" : "M", ""));
    }
}
