package understorey.weather;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import understorey.advice.Advice;
import understorey.plan.ForecastHour;

/** A row of a forecast, told piece by piece; what is not told stays open. */
record Air(LocalDate date, String time, Double temperatureC, Double dewPointC, Double windMs, Double okta, Double rainMm,
        Double chance, Double temperature850C, Double wind850Ms) {

    static Air at(String time) {
        return new Air(null, time, null, null, null, null, null, null, null, null);
    }

    Air on(LocalDate day) {
        return new Air(day, time, temperatureC, dewPointC, windMs, okta, rainMm, chance, temperature850C, wind850Ms);
    }

    Air damp(double airC, double spreadC) {
        return new Air(date, time, airC, airC - spreadC, windMs, okta, rainMm, chance, temperature850C, wind850Ms);
    }

    Air wind(double ms) {
        return new Air(date, time, temperatureC, dewPointC, ms, okta, rainMm, chance, temperature850C, wind850Ms);
    }

    Air cloud(double eighths) {
        return new Air(date, time, temperatureC, dewPointC, windMs, eighths, rainMm, chance, temperature850C, wind850Ms);
    }

    Air rain(double mm) {
        return new Air(date, time, temperatureC, dewPointC, windMs, okta, mm, chance, temperature850C, wind850Ms);
    }

    Air chance(double share) {
        return new Air(date, time, temperatureC, dewPointC, windMs, okta, rainMm, share, temperature850C, wind850Ms);
    }

    Air aloft(double airC, double ms) {
        return new Air(date, time, temperatureC, dewPointC, windMs, okta, rainMm, chance, airC, ms);
    }

    ForecastHour row() {
        return new ForecastHour(date, LocalTime.parse(time), temperatureC, dewPointC, null, windMs, null, okta, rainMm,
                chance, temperature850C, wind850Ms);
    }

    static List<ForecastHour> rows(Air... hours) {
        return List.of(hours).stream().map(Air::row).toList();
    }

    static List<Class<?>> kinds(List<Advice> reasons) {
        return reasons.stream().<Class<?>>map(Advice::getClass).toList();
    }
}
