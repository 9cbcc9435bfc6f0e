package understorey.share;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import understorey.plan.Position;

/**
 * Whether numbers of a text, side by side, are a latitude and a longitude near the site: decimal, in degrees, minutes
 * and seconds, in one run of digits, in radians or gon, either first, with a point or a comma, signs left out.
 */
final class Coordinates {

    /** Most characters between two numbers that belong together. */
    private static final int GAP = 40;
    private static final double NEAR_DEG = 1;
    private static final double NEAR_SEXAGESIMAL_DEG = 0.1;
    private static final double ALONE_DEG = 0.05;
    private static final double ALONE_SMALL_DEG = 0.0006;
    private static final double RADIAN_DEG = Math.toDegrees(1);
    private static final double GON_DEG = 0.9;
    private static final Pattern POINT = Pattern.compile("\\d+(?:\\.\\d+)?");
    private static final Pattern COMMA = Pattern.compile("\\d+(?:[.,]\\d+)?");
    /** A decimal whose point is a space. */
    private static final Pattern PARTED = Pattern.compile("(?<!\\d)(\\d{1,3}) (\\d{3,6})(?!\\d)");
    private static final Pattern DOTTED = Pattern.compile("(?<![\\d.])(\\d{1,3})\\.([0-5]?\\d)\\.([0-5]?\\d)(?![\\d.]\\d|\\d)");
    private static final Pattern MIXED = Pattern.compile("(\\d{1,3}) (\\d)/(\\d{1,2})");

    private final double latitude;
    private final double longitude;

    /** A number and its place in the text. */
    private record Num(String digits, int from, int to) {

        double value() {
            return Double.parseDouble(digits);
        }

        int decimals() {
            int point = digits.indexOf('.');
            return point < 0 ? 0 : digits.length() - point - 1;
        }
    }

    /** A reading of one or more numbers as degrees. */
    private record Angle(double deg, double near, int next) {
    }

    Coordinates(Position site) {
        this.latitude = Math.abs(site.latitude());
        this.longitude = Math.abs(site.longitude());
    }

    /** The words from the first number to the last; null if the text has no such numbers. */
    @Nullable String in(String text) {
        String whole = MIXED.matcher(text).replaceAll(mixed -> String.valueOf(Double.parseDouble(mixed.group(1))
                + Double.parseDouble(mixed.group(2)) / Math.max(1, Double.parseDouble(mixed.group(3)))));
        String joined = PARTED.matcher(whole).replaceAll("$1.$2");
        String found = among(numbers(POINT, whole), whole);
        found = found == null ? among(numbers(COMMA, whole), whole) : found;
        String sixtieths = DOTTED.matcher(whole).replaceAll("$1 $2 $3");
        found = found == null ? among(numbers(POINT, sixtieths), sixtieths) : found;
        return found == null ? among(numbers(POINT, joined), joined) : found;
    }

    private static List<Num> numbers(Pattern pattern, String text) {
        List<Num> numbers = new ArrayList<>();
        Matcher found = pattern.matcher(text);
        while (found.find()) {
            numbers.add(new Num(found.group().replace(',', '.'), found.start(), found.end()));
        }
        return numbers;
    }

    private @Nullable String among(List<Num> numbers, String text) {
        for (int i = 0; i < numbers.size(); i++) {
            if (alone(numbers.get(i))) {
                return text.substring(numbers.get(i).from(), numbers.get(i).to());
            }
            for (Angle one : angles(numbers, i)) {
                boolean follows = one.next() < numbers.size()
                        && numbers.get(one.next()).from() - numbers.get(one.next() - 1).to() <= GAP;
                for (Angle other : follows ? angles(numbers, one.next()) : List.<Angle>of()) {
                    if (site(one, other)) {
                        return text.substring(numbers.get(i).from(), numbers.get(other.next() - 1).to());
                    }
                }
            }
        }
        return null;
    }

    private boolean site(Angle one, Angle other) {
        double near = Math.min(one.near(), other.near());
        return Math.abs(one.deg() - latitude) < near && Math.abs(other.deg() - longitude) < near
                || Math.abs(one.deg() - longitude) < near && Math.abs(other.deg() - latitude) < near;
    }

    /** Whether a number alone gives half of the position: three decimals or more, near the site. */
    private boolean alone(Num number) {
        if (number.decimals() < 3) {
            return false;
        }
        double near = number.value() < 1 ? ALONE_SMALL_DEG : ALONE_DEG;
        return Math.abs(number.value() - latitude) < near || Math.abs(number.value() - longitude) < near;
    }

    private static List<Angle> angles(List<Num> numbers, int at) {
        List<Angle> angles = new ArrayList<>();
        Num first = numbers.get(at);
        double value = first.value();
        if (first.decimals() >= 1) {
            angles.add(new Angle(value, NEAR_DEG, at + 1));
        }
        if (first.decimals() >= 3) {
            angles.add(new Angle(value * RADIAN_DEG, NEAR_SEXAGESIMAL_DEG, at + 1));
            angles.add(new Angle(value * GON_DEG, NEAR_SEXAGESIMAL_DEG, at + 1));
        }
        if (first.decimals() == 0 && value <= 180) {
            sexagesimal(numbers, at, angles);
        }
        run(first, at, angles);
        return angles;
    }

    private static void sexagesimal(List<Num> numbers, int at, List<Angle> angles) {
        if (sixtieths(numbers, at + 1)) {
            double minutes = numbers.get(at).value() + numbers.get(at + 1).value() / 60;
            angles.add(new Angle(minutes, NEAR_SEXAGESIMAL_DEG, at + 2));
            if (sixtieths(numbers, at + 2)) {
                angles.add(new Angle(minutes + numbers.get(at + 2).value() / 3600, NEAR_SEXAGESIMAL_DEG, at + 3));
            }
        }
    }

    private static boolean sixtieths(List<Num> numbers, int at) {
        return at < numbers.size() && numbers.get(at).value() < 60
                && numbers.get(at).from() - numbers.get(at - 1).to() <= GAP / 2;
    }

    /** Degrees, minutes and seconds without a space between (ISO 6709), or a decimal that lost its point. */
    private static void run(Num number, int at, List<Angle> angles) {
        int point = number.digits().indexOf('.');
        int length = point < 0 ? number.digits().length() : point;
        if (length < 3 || length > 12) {
            return;
        }
        double value = number.value();
        double seconds = Math.floor(value / 10_000) + Math.floor(value % 10_000 / 100) / 60 + value % 100 / 3600;
        angles.add(new Angle(Math.floor(value / 100) + value % 100 / 60, NEAR_SEXAGESIMAL_DEG, at + 1));
        angles.add(new Angle(seconds, NEAR_SEXAGESIMAL_DEG, at + 1));
        for (int decimals = 3; decimals <= 9; decimals++) {
            angles.add(new Angle(value / Math.pow(10, decimals), NEAR_SEXAGESIMAL_DEG, at + 1));
        }
    }
}
