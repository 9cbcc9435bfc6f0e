package understorey.exposure;

import java.time.ZonedDateTime;
import understorey.kit.LensFit;
import understorey.light.LightAt;
import understorey.light.Weather;

/**
 * The same picture should it be taken at another time of the day than planned.
 *
 * @param time     when it is taken
 * @param settings for the light and the wind of that time
 */
public record OtherHour(ZonedDateTime time, Settings settings) {

    /** The picture in the light of an instant; as {@link Conditions#of} has it. */
    public static OtherHour of(LensFit fit, LightAt light, double okta, Weather weather, Double facingDeg) {
        return new OtherHour(light.time(), Exposure.of(fit, Conditions.of(light, okta, weather, facingDeg)));
    }
}
