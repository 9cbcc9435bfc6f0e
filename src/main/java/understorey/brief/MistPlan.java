package understorey.brief;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import understorey.advice.Advice;
import understorey.advice.WeatherAdvice;
import understorey.plan.LightWish;
import understorey.plan.Shot;
import understorey.weather.Likelihood;
import understorey.weather.Mist;

/** What mist changes for a picture, and what to do if the mist that it wishes for does not come: common practice, no source. */
final class MistPlan {

    /** A meter takes mist for mid-grey, and it is brighter. */
    private static final double LEAST_STOPS = 2 / 3.0;
    private static final double MOST_STOPS = 1;

    private MistPlan() {
    }

    /** The advice at a time; empty where mist is neither likely nor wished for. */
    static List<Advice> of(Shot shot, Mist mist, ZonedDateTime time) {
        boolean wished = shot.light().contains(LightWish.MIST);
        boolean likely = mist.likelihood() == Likelihood.HIGH || mist.likelihood() == Likelihood.MEDIUM;
        List<Advice> advice = new ArrayList<>();
        if (mist.when() != null && mist.when().contains(time) && (wished || likely)) {
            advice.add(new WeatherAdvice.InMist(LEAST_STOPS, MOST_STOPS, mist.when().to()));
        }
        if (wished) {
            advice.add(new WeatherAdvice.WithoutMist());
        }
        return List.copyOf(advice);
    }
}
