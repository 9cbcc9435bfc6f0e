package understorey.share;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import understorey.plan.Position;

/**
 * Finds a position in a text, in any of the ways in which people write one. What could be something else, such as two
 * bare numbers, counts only near the site, so that other figures pass.
 */
final class PositionText {

    private static final String HEMISPHERE_WORD = "(?i:north|south|east|west|nord|süd|sud|sued|ost|est|ouest|oeste|norte|"
            + "sur|este|øst|vest|öst|väst|syd|norr|söder|öster|väster|ovest|noord|zuid|oost)";
    private static final String HEMISPHERE = "(?:[NSEWO]|" + HEMISPHERE_WORD + ")(?![\\p{L}\\d])";
    private static final String DEGREES = "(?:°|deg\\b|degs\\b|degrees?\\b|grader?\\b|degrés?\\b|grados?\\b|gradi\\b)";
    private static final String MINUTES = "(?:'|\"|min\\b|mins\\b|minutes?\\b|minuten?\\b|minutos?\\b|m(?![\\p{L}\\d]))";
    private static final String WORD = "[\\p{L}\\p{M}]{3,}";
    /** What a dotted name ends in that is no triple of words. */
    private static final String FILE_OR_HOST = "com|org|net|info|edu|gov|test|example|yaml|yml|json|jpe?g|png|gif|tiff?|dng|raw|"
            + "xmp|psd|txt|html?|css|pdf|gpx|svg|csv|zip|docx?|java|xml";
    private static final String NUMBER = "\\d{1,3}(?:[.,]\\d+)?";

    /** Always a position. */
    private static final List<Pattern> PLAIN = List.of(
            Pattern.compile("(?i)" + NUMBER + "\\s*" + DEGREES + "[\\s,]*" + NUMBER + "\\s*" + MINUTES),
            Pattern.compile("(?<!\\d)\\d{1,3}[.,]\\d{2,}\\s*(?:°|deg\\b|degrees?\\b)?\\s*" + HEMISPHERE),
            Pattern.compile("(?<![\\p{L}\\d])" + HEMISPHERE + "\\s*\\d{1,3}[.,]\\d{2,}"),
            Pattern.compile("(?<![\\p{L}\\d])[NSEWO]\\s?\\d{1,3}[.,]\\d{2,}"),
            Pattern.compile("(?<!\\d)" + NUMBER + "\\s?°?\\s?[NS][ ,;/]{0,3}" + NUMBER + "\\s?°?\\s?[EWO](?![\\p{L}\\d])"),
            Pattern.compile("(?<![\\p{L}\\d])[NS]\\s?" + NUMBER + "\\s?°?[ ,;/]{0,3}[EWO]\\s?" + NUMBER + "(?!\\d)"),
            Pattern.compile("(?iu)(?:latitud|longitud|breitengrad|längengrad|breddegrad|lengdegrad|længdegrad|breddgrad|"
                    + "längdgrad|szeroko|długo|широт|долгот|緯度|経度|纬度|经度|위도|경도)[^\\d]{0,20}\\d"),
            Pattern.compile("(?iu)\\d\\s*" + DEGREES + "?\\s*(?:of )?(?:latitud|longitud)"),
            Pattern.compile("(?iu)(?<!\\p{L})(?:northing|easting|rechtswert|hochwert|grid ?ref\\w*|ngr|utm|mgrs|usng|epsg|"
                    + "wgs|osgb\\w*|etrs\\w*|coord\\w*|koord\\w*|plus code|geohash)[^\\d]{0,25}\\d{2,}"),
            Pattern.compile("(?i)\\bgeo:\\s*[-+]?\\d"),
            Pattern.compile("(?i)(?:@|[?&](?:q|ll|sll|cp|center|centre|query|[ds]addr|destination|mlat|mlon|lat|lon|lng|"
                    + "latitude|longitude|point|pos|loc|coords?|marker|at)=|#map=|#\\d+/)[^\\s]*\\d[.,]\\d"),
            Pattern.compile("/{2,3}\\s?\\p{L}{2,}[.·。]\\p{L}{2,}[.·。]\\p{L}{2,}(?![\\p{L}/.])"),
            Pattern.compile("(?i)\\bT\\.?\\s?\\d+\\s?[NS]\\.?,?\\s?R\\.?\\s?\\d+\\s?[EW]\\b"),
            Pattern.compile("(?i)(?<![\\p{L}\\d])[A-Z]{1,2}\\d[A-Z\\d]? ?(?!1st|2nd|3rd|\\dth)\\d[ABD-HJLNP-UW-Z]{2}(?![\\p{L}\\d])"),
            Pattern.compile("(?i)(?<![\\p{L}\\d])[ABCEGHJ-NPR-TVXY]\\d[A-Z] \\d[A-Z]\\d(?![\\p{L}\\d])"),
            Pattern.compile("(?iu)(?<!\\p{L})(?:post ?codes?|postal ?codes?|zip ?codes?|zip|plz|postleitzahl|postnummer|eircode)"
                    + "[^\\p{L}\\d]{0,4}(?:\\p{L}{1,2}-?)?\\d{2,}(?! ?\\p{L}?m)"),
            Pattern.compile("(?iu)(?<![\\p{L}\\d.@-])(?<!//)" + WORD + "[.·]" + WORD + "[.·](?!(?:" + FILE_OR_HOST + ")(?!\\p{L}))" + WORD
                    + "(?![\\p{L}\\d@-]|\\.\\p{L})"),
            Pattern.compile("(?<![-+\\d.,])[-+]?\\d{1,3}[.,]\\d{3,}[^\\p{L}\\d]{1,4}\\d{1,3}[.,]\\d{3,}(?!\\d|\\s?\\p{L})"));

    /** A latitude or a longitude, if the number beside it is near the site's. */
    private static final Pattern LABELLED = Pattern.compile("(?iu)(?<!\\p{L})(?:lat|lon|lng|long|breite|länge|bredde|"
            + "lengde|længde|φ|λ)[^\\p{L}\\d]{0,4}(\\d{1,3}(?:[.,]\\d+)?)");
    private static final Pattern WHOLE_DEGREES = Pattern.compile("(?<![\\d.,])(\\d{1,3}(?:[.,]\\d)?)\\s*(?:" + DEGREES + "\\s*"
            + HEMISPHERE + "|[NSEWO](?![\\p{L}\\d]))");

    private final Position site;
    private final Coordinates coordinates;
    private final GridReferences grids;
    private final PlaceCodes codes;

    PositionText(Position site) {
        this.site = site;
        this.coordinates = new Coordinates(site);
        this.grids = new GridReferences(site);
        this.codes = new PlaceCodes(site);
    }

    /** The words that read as a position in any form of a text; null if there are none. */
    @Nullable String in(Set<String> forms) {
        Set<String> all = new LinkedHashSet<>(forms);
        for (String form : forms) {
            String counted = NumberWords.inDigits(form);
            all.addAll(List.of(counted, PlainText.joined(counted)));
        }
        return all.stream().map(this::in).filter(Objects::nonNull).findFirst().orElse(null);
    }

    private @Nullable String in(String text) {
        String near = Stream.of(PLAIN.stream().flatMap(pattern -> PlainText.found(pattern, text, anywhere -> true)),
                        PlainText.found(LABELLED, text, this::near), PlainText.found(WHOLE_DEGREES, text, this::near))
                .flatMap(Function.identity()).findFirst().orElse(null);
        near = near == null ? coordinates.in(text) : near;
        near = near == null ? grids.in(text) : near;
        return near == null ? codes.in(text) : near;
    }

    private boolean near(MatchResult found) {
        double degrees = Double.parseDouble(found.group(1).replace(',', '.'));
        return Math.abs(degrees - Math.abs(site.latitude())) < 1 || Math.abs(degrees - Math.abs(site.longitude())) < 1;
    }
}
