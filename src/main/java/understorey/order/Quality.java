package understorey.order;

import java.time.ZonedDateTime;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.light.LightAt;
import understorey.plan.LightWish;
import understorey.plan.Shot;
import understorey.plan.SkyWord;
import understorey.visit.Day;

/** Quality of the light for one picture over time, under one sky. */
public interface Quality {

    /** Quality of the light at a time: 0 hopeless, 1 all that the author wishes for. Asked at 5-minute steps over the date. */
    double at(ZonedDateTime time);

    /** How well the picture can be taken at a time, whatever its light: 0 not at all, 1 without a compromise. */
    default double feasibility(ZonedDateTime time) {
        return 1;
    }

    /** Share of its worth that the picture keeps at a time, because what it shows passes: 1 for what stays. */
    default double kept(ZonedDateTime time) {
        return 1;
    }

    /** The sky that is assumed at a time; null if the forecast has one. */
    default @Nullable SkyWord sky(ZonedDateTime time) {
        return null;
    }

    /** Reason to wait for easier settings in much the same light; null if there is none. */
    default @Nullable Advice easierSettings(ZonedDateTime from, ZonedDateTime start) {
        return null;
    }

    /** Reason to wait from one time until the start of the picture; null if it is only that the light is better then. */
    default @Nullable Advice worthTheWait(ZonedDateTime from, ZonedDateTime start) {
        return null;
    }

    /**
     * Quality for a picture that needs only daylight: 1 while the sun is up, 0 while it is down. Always 1 for a picture of
     * twilight, and on a visit past midnight without any sun: who goes for the whole night goes for its light.
     */
    static Quality daylight(Day day, Shot shot) {
        boolean night = day.trip().stay().passesMidnight() && day.light().stream().map(LightAt::time).filter(day.hours().visit()::contains).noneMatch(day.darkest()::up);
        boolean any = shot.light().contains(LightWish.TWILIGHT) || night;
        return time -> any || day.darkest().up(time) ? 1 : 0;
    }
}
