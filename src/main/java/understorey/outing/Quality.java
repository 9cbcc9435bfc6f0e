package understorey.outing;

import java.time.ZonedDateTime;
import java.util.List;
import understorey.advice.Advice;
import understorey.kit.Intent;
import understorey.light.LightAt;
import understorey.plan.LightWish;

/** How good the light is for a picture at a time. */
public interface Quality {

    /** From 0, hopeless, to 1, all that it wishes for. */
    double at(Intent intent, ZonedDateTime time);

    /** What a picture waits for from one time until its start; null when the light has no more to say than that it is better then. */
    default Advice worthTheWait(Intent intent, ZonedDateTime from, ZonedDateTime start) {
        return null;
    }

    /**
     * Daylight is all that a picture wishes for: 1 while the sun is up, 0 while it is down; always 1 for a picture of
     * twilight.
     *
     * @param light over the whole date, at even steps
     */
    static Quality daylight(List<LightAt> light) {
        DayCurve sun = new DayCurve(light);
        return (intent, time) -> intent.shot().light().contains(LightWish.TWILIGHT) || sun.up(time) ? 1 : 0;
    }
}
