package understorey.brief;

import java.time.ZonedDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.plan.SkyWord;
import understorey.visit.Day;
import understorey.visit.ExpectedSky;

/**
 * A sky that may come.
 *
 * @param word    null for the forecast alone
 * @param instead true if the word replaces the forecast; else it fills in the hours without one
 */
record Sky(@Nullable SkyWord word, boolean instead) {

    /** All skies that may come: one if the cloud cover is known all day, else any in the hours without it. */
    static List<Sky> expected(Day day) {
        return !day.sky().lacksCloudOn(day.hours().day()) ? List.of(new Sky(null, false))
                : ExpectedSky.ANY.stream().map(word -> new Sky(word, day.sky().unknown())).toList();
    }

    /** Cloud cover, 0 to 8 okta. */
    double okta(Day day, ZonedDateTime time) {
        Double forecast = word != null && instead ? null : day.sky().okta(time);
        return forecast != null ? forecast : word != null ? word.okta() : day.sky().plannedOkta(time);
    }
}
