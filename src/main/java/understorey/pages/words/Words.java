package understorey.pages.words;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import understorey.plan.LightWish;
import understorey.plan.Share;
import understorey.plan.Site;

/**
 * Figures as people read them: each with its unit, rounded to what it is good for, half up. Figure and unit are held together
 * by a space that does not break.
 */
public final class Words {

    public static final String NONE = "—";

    private Words() {
    }

    /** What follows from a value that may be absent: then it is absent too. */
    public static <T, R> @Nullable R ifKnown(@Nullable T value, Function<T, @Nullable R> then) {
        return value == null ? null : then.apply(value);
    }

    /** The words for a value that may be absent: then a dash. */
    public static <T> String orDash(@Nullable T value, Function<T, String> words) {
        return value == null ? NONE : words.apply(value);
    }

    /** {@code 1 picture}, {@code 5 pictures}. */
    public static String count(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    /** {@code picture 2}, {@code pictures 1–3, 5}. */
    public static String pictures(List<?> numbers) {
        List<String> runs = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= numbers.size(); i++) {
            if (i == numbers.size() || (Integer) numbers.get(i) != (Integer) numbers.get(i - 1) + 1) {
                boolean pair = i - from == 2;
                runs.add(numbers.get(from) + (i - from == 1 ? "" : (pair ? ", " : "–") + numbers.get(i - 1)));
                from = i;
            }
        }
        return (numbers.size() == 1 ? "picture " : "pictures ") + String.join(", ", runs);
    }

    /** A spot by its name; none is the site itself. */
    public static String place(Site site, @Nullable String spot) {
        return spot == null ? site.name() : spot;
    }

    /** With a capital. */
    public static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    /** An enum constant as a name: {@code APRIL} reads April. */
    public static String name(Enum<?> constant) {
        return capital(word(constant));
    }

    /** Focal lengths and filter threads, which every photographer has in millimetres. */
    public static String millimetres(double mm) {
        return tenths(mm) + " mm";
    }

    /** As cameras mark it: one decimal below 10 where there is one. */
    public static String fNumber(double fNumber) {
        return Double.isInfinite(fNumber) ? "f/∞" : "f/" + plain(tenths(fNumber));
    }

    /** As cameras mark it: fractions below 0.3 s, then seconds with a decimal where there is one; minutes from 60 s. */
    public static String shutter(double seconds) {
        if (seconds >= 59.95) {
            return plain(tenths(seconds / 60)) + " min";
        }
        return seconds < 0.29 ? "1/" + number(1 / seconds, 0) + " s" : plain(tenths(seconds)) + " s";
    }

    /** To the nearest third or half of a stop; up to one stop is singular, none is not. */
    public static String stops(double stops) {
        String[] marks = {"", "⅓", "½", "⅔", ""};
        double[] parts = {0, 1 / 3.0, 0.5, 2 / 3.0, 1};
        double size = Math.abs(stops);
        double part = size - Math.floor(size);
        int nearest = 0;
        for (int i = 1; i < parts.length; i++) {
            nearest = Math.abs(part - parts[i]) < Math.abs(part - parts[nearest]) ? i : nearest;
        }
        long whole = (long) Math.floor(size) + (nearest == 4 ? 1 : 0);
        boolean none = whole == 0 && marks[nearest].isEmpty();
        boolean one = !none && (whole == 0 || whole == 1 && marks[nearest].isEmpty());
        return (stops < 0 && !none ? "−" : "") + (whole == 0 && !none ? "" : whole) + marks[nearest]
                + (one ? " stop" : " stops");
    }

    /** From an hour on in hours and what is left. */
    public static String minutes(long minutes) {
        return minutes < 60 ? minutes + " min" : minutes / 60 + " h" + (minutes % 60 == 0 ? "" : " " + minutes(minutes % 60));
    }

    /** Whole days: {@code 1 day}, {@code 12 days}. */
    public static String days(double days) {
        String whole = number(days, 0);
        return whole + (whole.equals("1") ? " day" : " days");
    }

    /** A share of a width or a height as style sheets write it: {@code 12.50%}. */
    public static String width(double share) {
        return number(share * 100, 2) + "%";
    }

    public static String percent(double share) {
        return share > 0 && share < 0.01 ? "under 1 %" : number(share * 100, 0) + " %";
    }

    /** As {@link #percent}, for a narrow cell. */
    public static String percentInCell(double share) {
        return percent(share).replace("under ", "<");
    }

    /** A dash where there is no such light. */
    public static String ev(@Nullable Double ev100) {
        return orDash(ev100, ev -> number(ev, 1));
    }

    public static String degrees(double degrees) {
        return number(degrees, 0) + "°";
    }

    /** A direction, below 360: what rounds to a full turn is north again. */
    public static String bearing(double bearingDeg) {
        String degrees = degrees(bearingDeg);
        return degrees.equals("360°") ? "0°" : degrees;
    }

    /** One of the 16 points nearest to a bearing. */
    public static String compass(double bearingDeg) {
        String[] points = {"N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE", "S", "SSW", "SW", "WSW", "W", "WNW",
            "NW", "NNW"};
        return points[Math.floorMod(Math.round(bearingDeg / 22.5), 16)];
    }

    /** Half up, and never minus nought; {@link Figures} says why the last bits of a sum do not tip it. */
    public static String number(double value, int decimals) {
        BigDecimal rounded = Figures.rounded(value, decimals);
        String text = rounded.toPlainString();
        return rounded.signum() < 0 ? "−" + text.substring(1) : text;
    }

    /** One decimal below 10, none from there on: by what is shown, so that 9.96 reads 10 and never 10.0. */
    public static String tenths(double value) {
        return number(value, Figures.rounded(Math.abs(value), 1).compareTo(BigDecimal.TEN) < 0 ? 1 : 0);
    }

    public static String plain(String number) {
        return number.endsWith(".0") ? number.substring(0, number.length() - 2) : number;
    }

    /** Who may see a plan. */
    public static String audience(Share.Audience audience) {
        return audience == Share.Audience.PARTY ? "for the group" : word(audience);
    }

    /** An enum constant as a word: {@code HALF_LEAF} reads half leaf. */
    public static String word(Enum<?> constant) {
        return constant == LightWish.FRONTLIGHT ? "front light"
                : constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
