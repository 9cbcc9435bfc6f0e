package understorey.pages.feeds;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import understorey.brief.Brief;
import understorey.brief.TimedShot;
import understorey.pages.words.Figures;
import understorey.pages.words.Xml;
import understorey.plan.Parking;
import understorey.plan.Position;
import understorey.plan.Share;
import understorey.plan.Site;
import understorey.plan.Spot;

/**
 * {@code spots.gpx}: where the pictures are, as waypoints of GPX 1.1 (WGS 84). A coarse position gives the site
 * alone, a hidden one gives no waypoint at all.
 */
public final class Waypoints {

    private final Brief brief;
    private final Site site;
    private final Share.Precision precision;
    private final StringBuilder xml = new StringBuilder(1024);

    private Waypoints(Brief brief) {
        this.brief = brief;
        this.site = brief.trip().site();
        this.precision = brief.trip().precision();
    }

    public static String of(Brief brief) {
        return new Waypoints(brief).gpx();
    }

    private String gpx() {
        xml.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<gpx xmlns=\"http://www.topografix.com/GPX/1/1\" "
                + "version=\"1.1\" creator=\"Understorey\">\n  <metadata>");
        element("name", brief.trip().title());
        element("desc", switch (precision) {
            case EXACT -> "Spots of " + site.name() + ".";
            case COARSE -> "The position of " + site.name() + " is approximate; spots are hidden.";
            case HIDDEN -> "Positions are hidden.";
        });
        xml.append("\n  </metadata>");
        if (precision != Share.Precision.HIDDEN) {
            waypoint(site.position(), site.elevationM(), site.name(), atTheSite());
        }
        if (precision == Share.Precision.EXACT) {
            for (Spot spot : site.spots()) {
                if (spot.at() != null) {
                    waypoint(spot.at(), spot.elevationM(), spot.name(), atSpot(spot.name()));
                }
            }
        }
        return xml.append("\n</gpx>\n").toString();
    }

    private void waypoint(Position at, @Nullable Double elevationM, String name, List<String> what) {
        xml.append("\n  <wpt lat=\"").append(Figures.positionDeg(at.latitude()).toPlainString())
                .append("\" lon=\"").append(Figures.positionDeg(at.longitude()).toPlainString()).append("\">");
        BigDecimal height = Figures.decimals(elevationM, 1);
        if (height != null) {
            element("ele", height.toPlainString());
        }
        element("name", name);
        if (!what.isEmpty()) {
            element("desc", String.join("; ", what));
        }
        xml.append("\n  </wpt>");
    }

    /** Pictures taken anywhere on the site, and at spots whose own position is not given. */
    private List<String> atTheSite() {
        return titles(shot -> {
            Spot spot = site.spot(shot.intent().shot().spot());
            return spot == null || spot.at() == null || precision != Share.Precision.EXACT;
        });
    }

    private List<String> atSpot(String name) {
        List<String> what = new ArrayList<>(titles(shot -> name.equals(shot.intent().shot().spot())));
        Parking parking = site.parking();
        if (parking != null && name.equals(parking.spot())) {
            what.add("parking");
        }
        return what;
    }

    private List<String> titles(Predicate<TimedShot> which) {
        return brief.timed().stream().filter(which).map(shot -> shot.number() + " " + shot.intent().shot().name()
                + " (" + shot.intent().shot().subject().name() + ")").toList();
    }

    private void element(String name, String text) {
        xml.append("\n    <").append(name).append('>').append(Xml.escape(allowed(text)))
                .append("</").append(name).append('>');
    }

    /** Without what XML 1.0 allows in no form (section 2.2): most control characters and lone surrogates. */
    static String allowed(String text) {
        StringBuilder allowed = new StringBuilder();
        for (int i = 0; i < text.length(); i = text.offsetByCodePoints(i, 1)) {
            int character = text.codePointAt(i);
            if (character == '\t' || character == '\n' || character >= ' ' && character < Character.MIN_SURROGATE
                    || character > Character.MAX_SURROGATE && character != 0xFFFE && character != 0xFFFF) {
                allowed.appendCodePoint(character);
            }
        }
        return allowed.toString();
    }
}
