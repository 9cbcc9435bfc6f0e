package understorey.light;

import understorey.advice.LightAdvice;
import understorey.plan.FieldGuide.Closing;
import understorey.plan.FieldGuide.Trigger;

/**
 * How far flowers that close are open at a moment. Which flowers close when is in the catalogue, mostly second-hand; the
 * limits are common practice, no source. Night is a sun below 2°, dull is from 7 okta on and begins at 4, wet is rain in that hour.
 */
record OpenFlowers(Closing closing) {

    /** What a picture of closed flowers is worth beside one of open flowers. */
    private static final double CLOSED = 0.25;
    private static final double NIGHT_DEG = 0;
    private static final double DAY_DEG = 2;
    private static final double DULL_OKTA = 7;
    private static final double BRIGHT_OKTA = 4;
    /** Most temperatures in the catalogue; for flowers without one. */
    private static final double OPENS_FROM_C = 10;
    /** Flowers open over these degrees. */
    private static final double OPENING_C = 3;
    private static final double WET_MM = 0.1;

    /**
     * Open flowers as a wish of their own.
     *
     * @param night whether a picture of the night is meant, in which closed flowers belong
     */
    Wish at(Moment moment, boolean night) {
        double altitude = moment.sun().altitudeDeg();
        boolean closes = closing.triggers().contains(Trigger.NIGHT);
        if (night) {
            return new Wish(closes && altitude < DAY_DEG ? new LightAdvice.ClosedAtNight(altitude, source()) : new LightAdvice.FlowersOpen());
        }
        Wish open = new Wish(new LightAdvice.FlowersOpen());
        if (closes) {
            open = open.and(worth(Wish.ramp(altitude, NIGHT_DEG, DAY_DEG)), new LightAdvice.ClosedAtNight(altitude, source()));
        }
        if (closing.triggers().contains(Trigger.DULL)) {
            open = open.and(worth(Wish.ramp(moment.okta(), DULL_OKTA, BRIGHT_OKTA)), new LightAdvice.ClosedInDullWeather(moment.okta(), source()));
        }
        if (closing.triggers().contains(Trigger.COLD) && !Double.isNaN(moment.temperatureC())) {
            double from = closing.opensFromC() == null ? OPENS_FROM_C : closing.opensFromC();
            open = open.and(worth(Wish.ramp(moment.temperatureC(), from - OPENING_C, from)),
                    new LightAdvice.ClosedInTheCold(moment.temperatureC(), from, source()));
        }
        if (closing.triggers().contains(Trigger.WET)) {
            open = open.and(worth(moment.rainMm() >= WET_MM ? 0 : 1), new LightAdvice.ClosedInRain(source()));
        }
        return open;
    }

    private static double worth(double share) {
        return CLOSED + (1 - CLOSED) * share;
    }

    private LightAdvice.Source source() {
        return switch (closing.mark()) {
            case "C" -> LightAdvice.Source.CONFIRMED;
            case "M" -> LightAdvice.Source.NONE;
            default -> LightAdvice.Source.UNCONFIRMED;
        };
    }
}
