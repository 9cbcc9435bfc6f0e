package understorey.pages;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import understorey.reason.Figure;

/**
 * Figures as people read them: each with its unit, rounded to what it is good for, half up. Times are local,
 * to the minute, in 24 hours. Figure and unit are held together by a space that does not break.
 */
final class Words {

    static final String NONE = "—";

    private Words() {
    }

    static String of(Figure figure) {
        if (figure.value() instanceof Number number) {
            return of(number.doubleValue(), figure.measure());
        }
        if (figure.value() instanceof ZonedDateTime time) {
            return clock(time);
        }
        if (figure.value() instanceof LocalTime time) {
            return time.truncatedTo(ChronoUnit.MINUTES).toString();
        }
        if (figure.value() instanceof LocalDate date) {
            return day(date);
        }
        return String.valueOf(figure.value());
    }

    private static String of(double value, Figure.Measure measure) {
        return switch (measure) {
            case MILLIMETRES -> millimetres(value);
            case METRES -> metres(value);
            case F_NUMBER -> fNumber(value);
            case SHUTTER_SECONDS -> shutter(value);
            case ISO -> "ISO " + number(value, 0);
            case STOPS -> stops(value);
            case MEGAPIXELS -> number(value, value < 10 ? 1 : 0) + " Mpx";
            case DIOPTRES -> number(value, 1) + " dpt";
            case TIMES -> number(value, value < 10 ? 1 : 0) + "×";
            case SHARE -> percent(value);
            case EV100 -> "EV " + number(value, 1);
            case DEGREES -> number(value, 0) + "°";
            case METRES_PER_SECOND -> number(value, 1) + " m/s";
            case COUNT -> number(value, 0);
            case GRAMS -> weight(value);
            case KILOGRAMS -> number(value, 1) + " kg";
            case MINUTES -> number(value, 0) + " min";
            case CLOCK, DATE, TEXT, REASON -> throw new IllegalArgumentException(measure + " is not a number");
        };
    }

    /** To the minute, half up; a dash for a time that does not come. */
    static String clock(ZonedDateTime time) {
        return time == null ? NONE
                : time.plusSeconds(30).truncatedTo(ChronoUnit.MINUTES).toLocalTime().toString();
    }

    /** In full, without asking for the names of a locale: that would cost a tenth of a cold start. */
    static String day(LocalDate date) {
        return name(date.getDayOfWeek()) + " " + date.getDayOfMonth() + " " + name(date.getMonth()) + " "
                + date.getYear();
    }

    /** An enum constant as a name: {@code APRIL} reads April. */
    static String name(Enum<?> constant) {
        String word = word(constant);
        return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }

    static String millimetres(double mm) {
        return number(mm, mm < 9.95 ? 1 : 0) + " mm";
    }

    /** Millimetres below 10 cm, centimetres below a metre, a decimal below 10 m. */
    static String metres(double m) {
        if (Double.isInfinite(m)) {
            return "the horizon";
        }
        if (m < 0.0995) {
            return millimetres(m * 1000);
        }
        return m < 0.995 ? number(m * 100, 0) + " cm" : number(m, m < 9.95 ? 1 : 0) + " m";
    }

    /** As cameras mark it: one decimal below 10 where there is one. */
    static String fNumber(double fNumber) {
        return Double.isInfinite(fNumber) ? "f/∞" : "f/" + plain(number(fNumber, fNumber < 9.95 ? 1 : 0));
    }

    /** As cameras mark it: fractions below 0.3 s, decimals below 2 s, minutes from 60 s. */
    static String shutter(double seconds) {
        if (seconds >= 60) {
            return number(seconds / 60, seconds < 600 ? 1 : 0) + " min";
        }
        return seconds < 0.29 ? "1/" + number(1 / seconds, 0) + " s" : plain(number(seconds, 1)) + " s";
    }

    /** To the nearest third or half of a stop. */
    static String stops(double stops) {
        String[] marks = {"", "⅓", "½", "⅔", ""};
        double[] parts = {0, 1 / 3.0, 0.5, 2 / 3.0, 1};
        int nearest = 0;
        for (int i = 1; i < parts.length; i++) {
            double part = stops - Math.floor(stops);
            nearest = Math.abs(part - parts[i]) < Math.abs(part - parts[nearest]) ? i : nearest;
        }
        long whole = (long) Math.floor(stops) + (nearest == 4 ? 1 : 0);
        String number = whole == 0 && !marks[nearest].isEmpty() ? marks[nearest] : whole + marks[nearest];
        return number + (whole + parts[nearest] % 1 <= 1 ? " stop" : " stops");
    }

    static String percent(double share) {
        return share > 0 && share < 0.01 ? "under 1 %" : number(share * 100, 0) + " %";
    }

    static String weight(double grams) {
        return grams < 995 ? number(grams, 0) + " g" : number(grams / 1000, 1) + " kg";
    }

    static String ev(double ev100) {
        return number(ev100, 1);
    }

    static String ev(Double ev100) {
        return ev100 == null ? NONE : number(ev100, 1);
    }

    static String degrees(double degrees) {
        return number(degrees, 0) + "°";
    }

    /** One of the 16 points nearest to a bearing. */
    static String compass(double bearingDeg) {
        String[] points = {"N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE", "S", "SSW", "SW", "WSW", "W", "WNW",
            "NW", "NNW"};
        return points[Math.floorMod(Math.round(bearingDeg / 22.5), 16)];
    }

    /** Half up, and never minus nought; {@link Figures} says why the last bits of a sum do not tip it. */
    static String number(double value, int decimals) {
        BigDecimal rounded = Figures.rounded(value, decimals);
        String text = rounded.toPlainString();
        return rounded.signum() < 0 ? "−" + text.substring(1) : text;
    }

    static String plain(String number) {
        return number.endsWith(".0") ? number.substring(0, number.length() - 2) : number;
    }

    /** An enum constant as a word: {@code HALF_LEAF} reads half leaf. */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
