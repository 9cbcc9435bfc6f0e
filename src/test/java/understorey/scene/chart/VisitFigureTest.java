package understorey.scene.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.brief.Brief;
import understorey.order.Leg;
import understorey.pages.DrawingWords;
import understorey.scene.Fact;
import understorey.sky.Interval;

class VisitFigureTest {

    private static VisitFigure figure(Brief brief) {
        return brief.visit() == null ? null : brief.visit().figure(DrawingWords.BUILT_IN);
    }

    private static void within(VisitFigure.Stretch stretch) {
        assertTrue(stretch.left() >= 0 && stretch.width() >= 0 && stretch.left() + stretch.width() <= 1 + 1e-9, stretch.toString());
    }

    @Test
    void laysEveryLegAndEventInsideTheFigureInTheOrderTaken() {
        int drawn = 0;
        for (Brief brief : Charts.briefs()) {
            VisitFigure figure = figure(brief);
            List<Leg> shooting = brief.order().shooting();
            if (figure == null) {
                assertTrue(shooting.isEmpty());
                continue;
            }
            drawn++;
            assertEquals(shooting.stream().map(leg -> brief.shot(leg.shot()).number()).toList(),
                    figure.rows().stream().map(VisitFigure.Row::number).toList());
            for (VisitFigure.Row row : figure.rows()) {
                row.windows().forEach(VisitFigureTest::within);
                row.tasks().forEach(task -> within(task.when()));
                assertEquals(1, row.tasks().stream().filter(task -> task.what() == Leg.What.SHOOT).count());
            }
            figure.events().forEach(event -> assertTrue(event.at() >= 0 && event.at() <= 1, event.toString()));
            figure.light().dots().forEach(dot -> assertTrue(dot.left() > 0 && dot.left() < 1 && dot.top() >= 0 && dot.top() <= 1, dot.toString()));
        }
        assertTrue(drawn > 50, "only " + drawn);
    }

    /** A picture's share of the width is its share of the hours between the ends. */
    @Test
    void keepsTheScaleOfTheHours() {
        Brief brief = Charts.briefs().stream().filter(one -> one.visit() != null).findFirst().orElseThrow();
        VisitFigure figure = figure(brief);
        assertNotNull(figure);
        double minutes = Duration.between(figure.from(), figure.to()).toSeconds() / 60.0;
        for (int i = 0; i < figure.rows().size(); i++) {
            Leg leg = brief.order().shooting().get(i);
            VisitFigure.Stretch when = figure.rows().get(i).tasks().stream().filter(task -> task.what() == Leg.What.SHOOT)
                    .map(VisitFigure.Task::when).findFirst().orElseThrow();
            assertEquals(Duration.between(leg.from(), leg.to()).toSeconds() / 60.0, when.width() * minutes, 1e-6);
            assertEquals(Duration.between(figure.from(), leg.from()).toSeconds() / 60.0, when.left() * minutes, 1e-6);
        }
    }

    @Test
    void beginsBeforeTheVisitAndEndsAfterItOnAHalfHour() {
        for (Brief brief : Charts.briefs()) {
            VisitFigure figure = figure(brief);
            if (figure != null) {
                for (ZonedDateTime end : List.of(figure.from(), figure.to())) {
                    assertEquals(0, end.getMinute() % 30, end.toString());
                }
                assertTrue(figure.from().isBefore(brief.order().arrive()));
                assertTrue(!figure.to().isBefore(brief.order().back()));
            }
        }
    }

    @Test
    void saysWhenEachPictureIsTakenAndItsHoursOfLight() {
        for (Brief brief : Charts.briefs()) {
            VisitFigure figure = figure(brief);
            if (figure != null) {
                String says = figure.says();
                for (Leg leg : brief.order().shooting()) {
                    Interval time = brief.order().timeOf(leg.shot());
                    assertTrue(says.contains(brief.shot(leg.shot()).number() + " " + leg.shot() + " " + DrawingWords.BUILT_IN.of(
                            new Fact.Hours(time.from(), time.to()))), says);
                }
            }
        }
    }
}
