package understorey.share;

import java.util.Locale;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import understorey.plan.Position;

/**
 * Whether a text holds a code for a place near the site: geohash, open location code, locator of radio amateurs,
 * GEOREF, the tile of a web map. Open location codes with their plus sign and cells of sixteen hexadecimal digits count
 * wherever they lead.
 */
final class PlaceCodes {

    private static final double NEAR_DEG = 1;
    /** A word of the language may be a geohash too: one without a digit counts only where it names this very place. */
    private static final double VERY_NEAR_DEG = 0.1;
    private static final String HASH = "0123456789bcdefghjkmnpqrstuvwxyz";
    private static final String OPEN = "23456789CFGHJMPQRVWX";
    private static final String GEOREF = "ABCDEFGHJKLMNPQRSTUVWXYZ";
    private static final String ALONE = "(?<![\\p{L}\\d])";
    private static final String ENDS = "(?![\\p{L}\\d])";
    private static final Pattern WITH_PLUS = Pattern.compile(ALONE + "(?:[" + OPEN + "]{4,8}\\+[" + OPEN + "]{2,7}|["
            + OPEN + "]{2,6}0{2,6}\\+)" + ENDS);
    /** With a letter before the plus, which a sum has not. */
    private static final Pattern SPACED_PLUS = Pattern.compile(ALONE + "(?=[2-9 ]*[C-X])(?:[" + OPEN + "]{4} )?[" + OPEN + "]{2,8} ?\\+ ?["
            + OPEN + "]{2,7}" + ENDS);
    private static final Pattern WITHOUT_PLUS = Pattern.compile(ALONE + "[" + OPEN + "]{8,11}" + ENDS);
    private static final Pattern GEOHASH = Pattern.compile(ALONE + "[0-9b-hjkmnp-z]{5,12}" + ENDS);
    private static final Pattern LOCATOR = Pattern.compile(ALONE + "[A-R]{2}\\d{2}(?:[A-X]{2}(?:\\d{2}(?:[A-X]{2})?)?)?"
            + ENDS);
    private static final Pattern WORLD = Pattern.compile(ALONE + "[A-HJ-NP-Z][A-HJ-M][A-HJ-Q]{2}(?:\\d{4}|\\d{6}|\\d{8})"
            + ENDS);
    private static final Pattern TILE = Pattern.compile("(?<!\\d)(\\d{1,2})/(\\d{1,7})/(\\d{1,7})(?!\\d)");
    private static final Pattern CELL = Pattern.compile(ALONE + "(?=[0-9a-f]*[a-f])(?=[0-9a-f]*\\d)[0-9a-f]{15,16}" + ENDS);

    private final Position site;

    PlaceCodes(Position site) {
        this.site = site;
    }

    /** The code; null if there is none. */
    @Nullable String in(String text) {
        String upper = text.toUpperCase(Locale.ROOT);
        String lower = text.toLowerCase(Locale.ROOT);
        return Stream.of(PlainText.found(WITH_PLUS, upper, code -> true), PlainText.found(SPACED_PLUS, upper, code -> true),
                        PlainText.found(CELL, lower, code -> true), PlainText.found(GEOHASH, lower, code -> geohash(code.group())),
                        PlainText.found(TILE, text, this::tile), PlainText.found(WITHOUT_PLUS, upper, code -> openLocation(code.group())),
                        PlainText.found(LOCATOR, upper, code -> locator(code.group())),
                        PlainText.found(WORLD, upper, code -> georef(code.group())))
                .flatMap(Function.identity()).findFirst().orElse(null);
    }

    private boolean near(double latitude, double longitude, double nearDeg) {
        return Math.abs(latitude - site.latitude()) < nearDeg
                && Math.abs(Math.IEEEremainder(longitude - site.longitude(), 360)) < nearDeg;
    }

    private boolean geohash(String code) {
        double[] low = {-180, -90};
        double[] size = {360, 180};
        for (int bit = 0; bit < code.length() * 5; bit++) {
            int axis = bit % 2;
            size[axis] /= 2;
            low[axis] += (HASH.indexOf(code.charAt(bit / 5)) >> 4 - bit % 5 & 1) * size[axis];
        }
        boolean digit = code.chars().anyMatch(Character::isDigit);
        return near(low[1] + size[1] / 2, low[0] + size[0] / 2, digit ? NEAR_DEG : VERY_NEAR_DEG);
    }

    private boolean openLocation(String code) {
        double latitude = -90 + 20 * OPEN.indexOf(code.charAt(0)) + OPEN.indexOf(code.charAt(2)) + 0.5;
        double longitude = -180 + 20 * OPEN.indexOf(code.charAt(1)) + OPEN.indexOf(code.charAt(3)) + 0.5;
        return near(latitude, longitude, NEAR_DEG);
    }

    private boolean locator(String code) {
        boolean fine = code.length() > 4;
        double longitude = -180 + 20 * (code.charAt(0) - 'A') + 2 * (code.charAt(2) - '0')
                + (fine ? (code.charAt(4) - 'A') / 12.0 : 1);
        double latitude = -90 + 10 * (code.charAt(1) - 'A') + (code.charAt(3) - '0')
                + (fine ? (code.charAt(5) - 'A') / 24.0 : 0.5);
        return near(latitude, longitude, NEAR_DEG);
    }

    private boolean georef(String code) {
        double longitude = -180 + 15 * GEOREF.indexOf(code.charAt(0)) + GEOREF.indexOf(code.charAt(2)) + 0.5;
        double latitude = -90 + 15 * GEOREF.indexOf(code.charAt(1)) + GEOREF.indexOf(code.charAt(3)) + 0.5;
        return near(latitude, longitude, NEAR_DEG);
    }

    private boolean tile(MatchResult found) {
        double tiles = Math.pow(2, Integer.parseInt(found.group(1)));
        double longitude = (Double.parseDouble(found.group(2)) + 0.5) / tiles * 360 - 180;
        double y = Math.PI * (1 - 2 * (Double.parseDouble(found.group(3)) + 0.5) / tiles);
        double latitude = Math.toDegrees(Math.atan(Math.sinh(y)));
        return tiles >= 64 && near(latitude, longitude, NEAR_DEG);
    }
}
