package understorey.light;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import understorey.advice.LightAdvice;
import understorey.plan.FieldGuide.Closing;
import understorey.plan.FieldGuide.Trigger;
import understorey.plan.LightWish;
import understorey.sky.SunAt;

/** That closed flowers spoil a picture, and the limits in hours, cloud and rain: common practice, no source. */
class OpenFlowersTest {

    private static Moment moment(double altitudeDeg, double okta, double temperatureC, double rainMm) {
        SunAt sun = new SunAt(LocalDate.of(2027, 4, 10).atTime(7, 0).atZone(ZoneOffset.UTC), 90, altitudeDeg);
        return new Moment(sun, true, 1, 9, 4, okta, 0, 0, 1, false, temperatureC, rainMm, 1);
    }

    private static Closing closing(@Nullable Double opensFromC, String mark, Trigger... triggers) {
        return new Closing(Set.of(triggers), opensFromC, null, mark, "a flora");
    }

    private static Wishes wishes(Closing closing, LightWish... wishes) {
        return new Wishes(List.of(wishes), 90.0, closing);
    }

    /** Wood anemones droop and close in rain, dull weather and at night: The Times, 2019, and two floras, second-hand. */
    @ParameterizedTest
    @CsvSource({"20,2,0,FlowersOpen", "-3,2,0,ClosedAtNight", "20,7,0,ClosedInDullWeather", "20,2,0.5,ClosedInRain"})
    void closeAtNightInDullWeatherAndInRain(double altitudeDeg, double okta, double rainMm, String kind) {
        Wish flowers = new OpenFlowers(closing(null, "C2", Trigger.NIGHT, Trigger.DULL, Trigger.WET)).at(moment(altitudeDeg, okta, 4, rainMm), false);
        assertEquals(kind, flowers.because().getClass().getSimpleName());
        assertEquals(kind.equals("FlowersOpen") ? Outlook.Grade.GOOD : Outlook.Grade.POOR, Outlook.Grade.of(flowers.value()));
    }

    /** Snowdrops spread from about 10 °C, National Trust, second-hand. */
    @Test
    void openAboveATemperature() {
        OpenFlowers snowdrops = new OpenFlowers(closing(10.0, "C2", Trigger.COLD));
        assertEquals(1, snowdrops.at(moment(20, 2, 10, 0), false).value(), 0);
        Wish cold = snowdrops.at(moment(20, 2, 4, 0), false);
        assertEquals(new LightAdvice.ClosedInTheCold(4, 10, LightAdvice.Source.UNCONFIRMED), cold.because());
        assertEquals(1, snowdrops.at(moment(20, 2, Double.NaN, Double.NaN), false).value(), 0);
        Wish unpublished = new OpenFlowers(closing(null, "M", Trigger.COLD)).at(moment(20, 2, 4, 0), false);
        assertEquals(new LightAdvice.ClosedInTheCold(4, 10, LightAdvice.Source.NONE), unpublished.because());
    }

    @Test
    void spoilTheLightOfAPictureUnlessItIsOfTheNight() {
        Closing night = closing(null, "C", Trigger.NIGHT);
        Moment dusk = moment(-4, 0, 8, 0);
        assertEquals(1, wishes(night, LightWish.TWILIGHT).quality(dusk), 0);
        assertEquals(Set.of(new LightAdvice.TwilightNow(), new LightAdvice.ClosedAtNight(-4, LightAdvice.Source.CONFIRMED)),
                Set.copyOf(wishes(night, LightWish.TWILIGHT).because(dusk)));
        Moment dull = moment(20, 7, 8, 0);
        Closing dullness = closing(null, "C", Trigger.DULL);
        assertEquals(0.25 * wishes(closing(null, "C"), LightWish.SOFT).quality(dull), wishes(dullness, LightWish.SOFT).quality(dull), 1e-12);
        assertEquals(new LightAdvice.ClosedInDullWeather(7, LightAdvice.Source.CONFIRMED), wishes(dullness, LightWish.SOFT).because(dull).get(0));
        assertEquals(1, wishes(dullness).quality(dull), 0);
    }
}
