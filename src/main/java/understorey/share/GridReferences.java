package understorey.share;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import understorey.plan.Position;

/**
 * Whether a text names a square of a map's grid near the site: easting and northing in metres, of any of the grids
 * that {@link MapGrid} knows, or the British, the Irish or the military grid, with or without the letters of the square.
 */
final class GridReferences {

    private static final double NEAR_M = 30_000;
    private static final double SQUARE_M = 100_000;
    private static final double NEAR_IN_SQUARE_KM = 2;
    /** Letters of the British and the Irish grid, from the north-west. */
    private static final String LETTERS = "ABCDEFGHJKLMNOPQRSTUVWXYZ";
    private static final String BANDS = "CDEFGHJKLMNPQRSTUVWX";
    private static final Pattern METRES = Pattern.compile("(?<!\\d)(\\d{5,8})(?:\\.\\d+)?(?!\\d)");
    private static final Pattern GROUPED = Pattern.compile("(?<=\\d)[ ,.'](?=\\d{3}(?!\\d))");
    private static final Pattern BRITISH = Pattern.compile("(?<![\\p{L}\\d])([HJNOST])\\s?([A-HJ-Z])[\\s:-]{0,2}(\\d{1,5})"
            + "[\\s:/-]?(\\d{0,5})(?!\\d)");
    private static final Pattern IRISH = Pattern.compile("(?<![\\p{L}\\d])I?([A-HJ-Z])[\\s:-]{0,2}(\\d{2,5})[\\s:/-]?"
            + "(\\d{0,5})(?!\\d)");
    private static final Pattern MILITARY = Pattern.compile("(?<![\\p{L}\\d])(\\d{1,2})\\s?([C-HJ-NP-X])\\s?[A-HJ-NP-Z]"
            + "[A-HJ-NP-V](?:\\s?\\d{1,5}\\s?\\d{1,5})?(?![\\p{L}\\d])");
    /** An easting and a northing of as many digits. */
    private static final String SPLIT = "(?:(\\d{3}) ?(\\d{3})|(\\d{4}) ?(\\d{4})|(\\d{5}) ?(\\d{5}))(?!\\d|[.,]\\d)";
    private static final Pattern DIGITS = Pattern.compile("(?<!\\d|\\d[.,])" + SPLIT);
    private static final Pattern ANNOUNCED = Pattern.compile("(?i)(?<!\\p{L})(?:gr|ngr|grid|refs?|references?|maps?|sheet|os|square)"
            + "(?!\\p{L})[^\\p{L}\\d]{0,4}(?:\\d{1,3}[ ,;/]{1,2})?" + SPLIT.replaceAll(" \\?", "[ /,-]{0,2}"));
    private static final Pattern KILOMETRES = Pattern.compile("(?i)(?<![\\d.])(\\d{1,3}(?:[.,]\\d+)?) ?km(?!\\p{L}|/)[^\\d]{1,20}"
            + "(\\d{1,3}(?:[.,]\\d+)?) ?km(?!\\p{L}|/)");

    private final Position site;
    private final List<double[]> here = new ArrayList<>();
    /** The site in the grids whose squares have letters, those that cover it. */
    private final List<double[]> squares = new ArrayList<>();
    private final double[] british;
    private final double[] irish;

    GridReferences(Position site) {
        this.site = site;
        for (MapGrid grid : MapGrid.around(site)) {
            here.add(grid.of(site));
        }
        double[] web = MapGrid.web(site);
        here.add(new double[] {Math.abs(web[0]), Math.abs(web[1])});
        british = MapGrid.BRITISH.of(site);
        irish = MapGrid.IRISH.of(site);
        squares.add(MapGrid.military(site));
        if (british[0] > 0 && british[0] < 7 * SQUARE_M && british[1] > 0 && british[1] < 13 * SQUARE_M) {
            squares.add(british);
        }
        if (irish[0] > 0 && irish[0] < 5 * SQUARE_M && irish[1] > 0 && irish[1] < 5 * SQUARE_M) {
            squares.add(irish);
        }
    }

    /** The words of the reference; null if there is none. */
    @Nullable String in(String text) {
        String upper = text.toUpperCase(Locale.ROOT);
        return Stream.of(Stream.of(text, GROUPED.matcher(text).replaceAll("")).map(this::metres).filter(Objects::nonNull),
                        PlainText.found(MILITARY, upper, this::military), PlainText.found(BRITISH, upper, this::british),
                        PlainText.found(IRISH, text, this::irish), PlainText.found(DIGITS, text, this::inSquare),
                        PlainText.found(KILOMETRES, text, this::inSquare), PlainText.found(ANNOUNCED, text, anywhere -> true))
                .flatMap(Function.identity()).findFirst().orElse(null);
    }

    /** A pair without the letters of its square, near the site in any such square. */
    private boolean inSquare(MatchResult found) {
        int first = 1;
        while (found.group(first) == null) {
            first += 2;
        }
        return nearInSquare(km(found.group(first)), km(found.group(first + 1)));
    }

    /** Of digits without a point, the first two are kilometres. */
    private static double km(String digits) {
        double value = Double.parseDouble(digits.replace(',', '.'));
        return digits.matches("\\d{3,5}") ? value / Math.pow(10, digits.length() - 2) : value;
    }

    private boolean nearInSquare(double eastKm, double northKm) {
        return squares.stream().anyMatch(at -> away(at[0], eastKm) < NEAR_IN_SQUARE_KM && away(at[1], northKm) < NEAR_IN_SQUARE_KM);
    }

    private static double away(double m, double km) {
        return Math.abs(Math.IEEEremainder(m / 1000 - km, SQUARE_M / 1000));
    }

    private @Nullable String metres(String text) {
        Matcher number = METRES.matcher(text);
        double last = Double.NaN;
        int from = 0;
        while (number.find()) {
            double value = Double.parseDouble(number.group(1));
            for (double[] at : here) {
                if (near(last, at[0]) && near(value, at[1]) || near(last, at[1]) && near(value, at[0])) {
                    return text.substring(from, number.end());
                }
            }
            last = value;
            from = number.start();
        }
        return null;
    }

    private static boolean near(double one, double other) {
        return Math.abs(one - other) < NEAR_M;
    }

    private boolean british(MatchResult found) {
        int first = LETTERS.indexOf(found.group(1));
        int second = LETTERS.indexOf(found.group(2));
        double east = (Math.floorMod(first - 2, 5) * 5 + second % 5) * SQUARE_M;
        double north = (19 - first / 5 * 5 - second / 5) * SQUARE_M;
        return even(found.group(3), found.group(4)) && square(east, north, british);
    }

    private boolean irish(MatchResult found) {
        int letter = LETTERS.indexOf(found.group(1));
        return even(found.group(2), found.group(3)) && square(letter % 5 * SQUARE_M, (4 - letter / 5) * SQUARE_M, irish);
    }

    /** As many digits for the easting as for the northing. */
    private static boolean even(String some, String others) {
        return others.isEmpty() ? some.length() % 2 == 0 : (some + others).length() % 2 == 0;
    }

    /** The square of a hundred kilometres, or one beside it. */
    private static boolean square(double east, double north, double[] at) {
        return at[0] > east - SQUARE_M && at[0] < east + 2 * SQUARE_M
                && at[1] > north - SQUARE_M && at[1] < north + 2 * SQUARE_M;
    }

    private boolean military(MatchResult found) {
        int zone = (int) Math.floor((site.longitude() + 180) / 6) + 1;
        int band = Math.max(0, Math.min(BANDS.length() - 1, (int) Math.floor((site.latitude() + 80) / 8)));
        int away = Math.floorMod(Integer.parseInt(found.group(1)) - zone, 60);
        return (away <= 1 || away == 59) && Math.abs(BANDS.indexOf(found.group(2)) - band) <= 1;
    }
}
