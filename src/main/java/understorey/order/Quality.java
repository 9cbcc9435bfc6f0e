package understorey.order;

import java.time.ZonedDateTime;
import understorey.advice.Advice;
import understorey.plan.LightWish;
import understorey.plan.Shot;
import understorey.visit.DayCurve;

/** How good the light is for one picture at a time. */
public interface Quality {

    /** From 0, hopeless, to 1, all that it wishes for. Asked at five-minute steps over the date. */
    double at(ZonedDateTime time);

    /** What the picture waits for from one time until its start; null when there is no more to say than that the light is better then. */
    default Advice worthTheWait(ZonedDateTime from, ZonedDateTime start) {
        return null;
    }

    /**
     * Daylight is all that a picture wishes for: 1 while the sun is up, 0 while it is down; always 1 for a picture of
     * twilight.
     */
    static Quality daylight(DayCurve sun, Shot shot) {
        boolean twilight = shot.light().contains(LightWish.TWILIGHT);
        return time -> twilight || sun.up(time) ? 1 : 0;
    }
}
