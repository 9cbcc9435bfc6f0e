package understorey.packing;

import java.time.LocalDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.plan.ForecastHour;
import understorey.sky.Interval;

/** Lowest temperature of a visit, and the share of a battery that it leaves. */
public final class Cold {

    /** The maker's count of frames is taken in a warm room. */
    static final double WARM_C = 20;
    private static final double LESS_A_DEGREE = 0.01;
    private static final double LEAST = 0.6;

    private Cold() {
    }

    /**
     * Lowest temperature of the forecast during the visit, °C: each row holds until the next, and the first row also
     * before it. Null if the forecast has no temperature for the day.
     */
    public static @Nullable Double coldestC(List<ForecastHour> forecast, Interval visit) {
        LocalDateTime arrive = visit.from().toLocalDateTime();
        LocalDateTime leave = visit.to().toLocalDateTime();
        Double coldest = null;
        Double before = null;
        for (ForecastHour hour : forecast) {
            LocalDateTime begins = hour.begins(arrive.toLocalDate());
            Double celsius = hour.temperatureC();
            if (celsius == null || begins.isBefore(arrive.toLocalDate().atStartOfDay()) || begins.toLocalDate().isAfter(leave.toLocalDate())) {
                continue;
            }
            boolean begun = !begins.isAfter(arrive);
            if (!begun && (begins.isBefore(leave) || before == null && coldest == null)) {
                coldest = colder(coldest, celsius);
            }
            before = begun ? celsius : before;
        }
        return before == null ? coldest : colder(coldest, before);
    }

    private static Double colder(@Nullable Double coldest, Double celsius) {
        return coldest == null || celsius < coldest ? celsius : coldest;
    }

    /**
     * Share of its frames that a lithium-ion battery gives at a temperature: 1 from 20 °C up, 1 % less per
     * degree below, so 0.8 at freezing; at least 0.6, at −20 °C, below which cameras are not made to work. From memory of
     * makers' discharge curves, and common practice; batteries differ by 10 %, old ones by much more.
     *
     * @param celsius null, an unknown temperature, counts as warm
     */
    static double batteryShare(@Nullable Double celsius) {
        return celsius == null || celsius >= WARM_C ? 1 : Math.max(LEAST, 1 - LESS_A_DEGREE * (WARM_C - celsius));
    }
}
