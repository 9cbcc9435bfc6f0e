package understorey.pages.html;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.ZonedDateTime;
import org.junit.jupiter.api.Test;
import understorey.brief.Brief;
import understorey.brief.TimedShot;
import understorey.pages.Briefs;
import understorey.sky.Interval;

class ShotInItsWindowTest {

    /** Under each sky that the page gives: the middle of the picture has the light of the window that it lies in. */
    @Test
    void hasTheLightOfTheWindowThatItIsTakenIn() {
        int within = 0;
        for (Brief brief : Briefs.all()) {
            for (TimedShot shot : brief.timed()) {
                for (TimedShot.Wished wished : shot.wished()) {
                    for (Interval window : wished.outlook().windows()) {
                        if (shot.time() != null && window.contains(middle(shot.time()))) {
                            within++;
                            assertTrue(wished.outlook().grade().compareTo(wished.outlook().best()) <= 0 && wished.outlook().quality() > 0,
                                    shot.intent().shot().name() + " " + wished.outlook().quality() + " in " + window);
                        }
                    }
                }
            }
        }
        assertTrue(within > 20, within + " pictures in a window");
    }

    private static ZonedDateTime middle(Interval time) {
        return time.from().plus(Duration.between(time.from(), time.to()).dividedBy(2));
    }
}
