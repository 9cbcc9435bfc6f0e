package understorey.season;

import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.SeasonAdvice;
import understorey.plan.Site;
import understorey.season.model.Prediction;
import understorey.season.model.SeasonScale;

/**
 * Shift of a flower by a warmer spring, without records of its response to warmth: 2.5 to 7 days earlier per degree, the
 * range of published sensitivities (Environmental Sciences Europe 2019, five UK spring flowers −5.6 to −7.7; Willems and
 * others 2022, 20 woodland herbs −3.6; Ehrlén and Valdés 2020, Lathyrus −2.4 days per °C). Not for summer and autumn.
 *
 * @param warmerC null if it is not given
 */
record SpringShift(@Nullable Double warmerC, SeasonScale scale, Site site) {

    private static final double LEAST_D = 2.5;
    private static final double MOST_D = 7;
    private static final double MIDDLE_D = (LEAST_D + MOST_D) / 2;
    /** Standard deviation of an even spread over the range. */
    private static final double SPREAD_D = (MOST_D - LEAST_D) / Math.sqrt(12);

    /** The peak of such a spring, with an error no smaller than before; adds the reason. */
    Prediction moved(Prediction peak, List<Advice> reasons) {
        if (warmerC == null || warmerC == 0 || !CatalogueSeason.inSpring(scale, site.position().latitude())) {
            return peak;
        }
        double size = Math.abs(warmerC);
        double days = size * MIDDLE_D;
        reasons.add(warmerC > 0 ? new SeasonAdvice.SpringEarlier(size, days, size * LEAST_D, size * MOST_D)
                : new SeasonAdvice.SpringLater(size, days, size * LEAST_D, size * MOST_D));
        return new Prediction(peak.day() - warmerC * MIDDLE_D, peak.errorD(), peak.freedom()).with(size * SPREAD_D);
    }
}
