package understorey.share;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import understorey.plan.Position;

/**
 * Whether a text names a square of a map's grid near the site: easting and northing in metres, of any of the grids
 * that {@link MapGrid} knows, or the letters and digits of the British, the Irish or the military grid.
 */
final class GridReferences {

    private static final double NEAR_M = 30_000;
    private static final double SQUARE_M = 100_000;
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

    private final Position site;
    private final List<double[]> here = new ArrayList<>();
    private final double[] british;
    private final double[] irish;

    GridReferences(Position site) {
        this.site = site;
        for (MapGrid grid : MapGrid.around(site)) {
            here.add(grid.of(site));
        }
        british = MapGrid.BRITISH.of(site);
        irish = MapGrid.IRISH.of(site);
    }

    /** The words of the reference; null if there is none. */
    @Nullable String in(String text) {
        String found = metres(text);
        found = found == null ? metres(GROUPED.matcher(text).replaceAll("")) : found;
        String upper = text.toUpperCase(Locale.ROOT);
        found = found == null ? military(upper) : found;
        found = found == null ? british(upper) : found;
        return found == null ? irish(text) : found;
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

    private @Nullable String british(String text) {
        Matcher found = BRITISH.matcher(text);
        while (found.find()) {
            int first = LETTERS.indexOf(found.group(1));
            int second = LETTERS.indexOf(found.group(2));
            double east = (Math.floorMod(first - 2, 5) * 5 + second % 5) * SQUARE_M;
            double north = (19 - first / 5 * 5 - second / 5) * SQUARE_M;
            if (even(found.group(3), found.group(4)) && square(east, north, british)) {
                return found.group();
            }
        }
        return null;
    }

    private @Nullable String irish(String text) {
        Matcher found = IRISH.matcher(text);
        while (found.find()) {
            int letter = LETTERS.indexOf(found.group(1));
            if (even(found.group(2), found.group(3))
                    && square(letter % 5 * SQUARE_M, (4 - letter / 5) * SQUARE_M, irish)) {
                return found.group();
            }
        }
        return null;
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

    private @Nullable String military(String text) {
        int zone = (int) Math.floor((site.longitude() + 180) / 6) + 1;
        int band = Math.max(0, Math.min(BANDS.length() - 1, (int) Math.floor((site.latitude() + 80) / 8)));
        Matcher found = MILITARY.matcher(text);
        while (found.find()) {
            int away = Math.floorMod(Integer.parseInt(found.group(1)) - zone, 60);
            if ((away <= 1 || away == 59) && Math.abs(BANDS.indexOf(found.group(2)) - band) <= 1) {
                return found.group();
            }
        }
        return null;
    }
}
