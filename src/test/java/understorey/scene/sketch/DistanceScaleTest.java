package understorey.scene.sketch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.optics.AngleOfView;
import understorey.optics.Projection;
import understorey.pages.DrawingWords;
import understorey.plan.Role;
import understorey.plan.Viewpoint;
import understorey.scene.Drawing;

class DistanceScaleTest {

    private static Setup setup() {
        return Setups.of(Samples.picture("Ground").from(new Viewpoint.Height(1.5)).equivalent(50).tilt(15).sharp(2, 20), null, null, null);
    }

    private static List<Drawing.Label> labels(Setup setup) {
        return DistanceScale.of(setup).drawing(DrawingWords.BUILT_IN).marks().stream().filter(Drawing.Label.class::isInstance)
                .map(Drawing.Label.class::cast).toList();
    }

    /** The ground 1.5 m below the lens and d along an axis that is tilted 15° down, by the projection of directions. */
    @Test
    void aTickIsWhereTheGroundOfThatDistanceFalls() {
        Setup setup = setup();
        double focusM = setup.fit().focusM();
        double ahead = (focusM - 1.5 * Math.sin(Math.toRadians(15))) / Math.cos(Math.toRadians(15));
        AngleOfView view = setup.fit().view();
        Projection.Place place = Projection.of(0, 15, view).place(0, -Math.toDegrees(Math.atan2(1.5, ahead)));
        Drawing.Label focus = labels(setup).stream().filter(label -> label.style().equals("figure-bold")).findFirst().orElseThrow();
        assertEquals(160 * (1 - place.y()), focus.at().y() - 5, 0.2);
        assertTrue(focus.text().endsWith("focus"), focus.text());
    }

    /** 50 mm on 36 mm of width takes in 39.6°: handbook value. The picture faces east. */
    @Test
    void bearingsOfTheEdgesAreHalfTheAngleOfViewAway() {
        List<String> words = labels(setup()).stream().map(Drawing.Label::text).toList();
        assertTrue(words.contains("ENE 70°") && words.contains("ESE 110°"), words.toString());
        assertTrue(words.stream().anyMatch(text -> text.startsWith("E 90°, ") && text.contains(" wide at ")), words.toString());
    }

    @Test
    void noTwoDistancesTouchAndACloseUpHasNone() {
        List<Drawing.Label> labels = labels(setup());
        for (Drawing.Label one : labels) {
            for (Drawing.Label other : labels) {
                assertTrue(one == other || one.at().x() != other.at().x() || Math.abs(one.at().y() - other.at().y()) >= 15, one + " " + other);
            }
        }
        assertTrue(labels(Setups.inTheWood(Samples.picture("Head").role(Role.CLOSING), 0)).stream().noneMatch(label -> label.at().x() > 480));
    }
}
