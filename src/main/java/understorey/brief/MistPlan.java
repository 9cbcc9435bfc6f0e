package understorey.brief;

import java.time.ZonedDateTime;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.WeatherAdvice;
import understorey.exposure.Metering;
import understorey.kit.LensFit;
import understorey.light.LightAt;
import understorey.plan.LightWish;
import understorey.plan.Shot;
import understorey.sky.Interval;
import understorey.weather.Mist;

/** What mist changes for a picture, and what to do if the mist that it wishes for does not come: common practice, no source. */
final class MistPlan {

    private static final double LIKELY = 0.5;
    private static final double MOST_STOPS = 1;
    /** Least width of a frame that mist veils, m. */
    private static final double VEILED_M = 0.4;

    private MistPlan() {
    }

    /** The advice for one picture at a time; empty for a picture that does not wish for mist. */
    static List<Advice> of(Shot shot, Mist mist, ZonedDateTime time) {
        if (!wished(shot)) {
            return List.of();
        }
        return mist.when() == null || !mist.when().contains(time) || likely(mist, time) ? List.of(new WeatherAdvice.WithoutMist())
                : List.of(exposed(mist.when()), new WeatherAdvice.WithoutMist());
    }

    /**
     * What a picture meters under a cloud cover of 0 to 8 okta. Mist, if the picture wishes for it and it is likelier than not.
     *
     * @param fit null for a picture that no lens takes
     */
    static Metering metering(Shot shot, @Nullable LensFit fit, Mist mist, LightAt light, double okta) {
        return wished(shot) && likely(mist, light.time()) ? Metering.inMist(light, okta) : Metering.of(fit, light, okta);
    }

    /**
     * Whether mist that may well come would change a picture that is planned without it. A closer frame is too near to be veiled, and needs no other
     * settings than under cloud.
     */
    static boolean otherwise(LensFit fit, Mist mist, ZonedDateTime time) {
        return !wished(fit.intent().shot()) && mist.mayBe(time) && fit.frameWidthM() > VEILED_M;
    }

    private static boolean likely(Mist mist, ZonedDateTime time) {
        return mist.at(time) >= LIKELY;
    }

    /** How to expose pictures that do not wish for mist, for all of them once; empty where none is taken while it is likely. */
    static List<Advice> ofAll(List<TimedShot> shots) {
        return shots.stream().filter(shot -> !wished(shot.intent().shot())).map(MistPlan::during).filter(Objects::nonNull)
                .<Advice>map(MistPlan::exposed).limit(1).toList();
    }

    /** The time of likely mist in which a picture is taken; null for none. */
    private static @Nullable Interval during(TimedShot shot) {
        Mist mist = shot.fitted().place().mist();
        return shot.time() != null && likely(mist, shot.time().from()) ? mist.when() : null;
    }

    private static boolean wished(Shot shot) {
        return shot.light().contains(LightWish.MIST);
    }

    private static Advice exposed(Interval mist) {
        return new WeatherAdvice.InMist(Metering.IN_MIST_STOPS, MOST_STOPS, mist.to());
    }
}
