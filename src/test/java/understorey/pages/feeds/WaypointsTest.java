package understorey.pages.feeds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.jenetics.jpx.GPX;
import io.jenetics.jpx.WayPoint;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Places;
import understorey.pages.Trips;

class WaypointsTest {

    private static final Places PLACE = Places.MID_LATITUDE;

    @Test
    void namesTheSiteAndEverySpotThatHasAPosition() throws IOException {
        List<WayPoint> points = read(Waypoints.of(Trips.brief(Trips.full(PLACE, Trips.EXACT)))).getWayPoints();
        assertEquals(List.of("Gorsewell Dingle", "Footbridge", "Stone bank"),
                points.stream().map(point -> point.getName().orElseThrow()).toList());
        WayPoint bank = points.get(2);
        assertEquals(52.001235, bank.getLatitude().doubleValue(), 1e-9);
        assertEquals(-3.502346, bank.getLongitude().doubleValue(), 1e-9);
        assertEquals(187.3, bank.getElevation().orElseThrow().doubleValue(), 1e-9);
        assertEquals("2 Along the bank, über Moos: 木漏れ日 🌿 (Ramsons)", bank.getDescription().orElseThrow());
        assertEquals("1 The white floor (Ramsons); parking", points.get(1).getDescription().orElseThrow());
    }

    @Test
    void putsPicturesOfASpotWithoutPositionAtTheSite() throws IOException {
        WayPoint site = read(Waypoints.of(Trips.brief(Trips.full(PLACE, Trips.EXACT)))).getWayPoints().get(0);
        assertEquals("3 A plant & its leaf (Ramsons); 4 One head, one drop (Ramsons)",
                site.getDescription().orElseThrow());
    }

    @Test
    void givesACoarsePositionOfTheSiteAlone() throws IOException {
        String text = Waypoints.of(Trips.brief(Trips.full(PLACE, Trips.COARSE)));
        List<WayPoint> points = read(text).getWayPoints();
        assertEquals(1, points.size());
        assertEquals(52, points.get(0).getLatitude().doubleValue(), 1e-9);
        assertFalse(text.contains("52.0012"));
    }

    @Test
    void givesNoPositionWhereItIsHidden() throws IOException {
        String text = Waypoints.of(Trips.brief(Trips.full(PLACE, Trips.HIDDEN)));
        GPX gpx = read(text);
        assertTrue(gpx.getWayPoints().isEmpty());
        assertEquals("Positions are hidden.", gpx.getMetadata().orElseThrow().getDescription().orElseThrow());
        assertFalse(text.contains("52"));
    }

    @Test
    void keepsTheMarksThatXmlReads() throws IOException {
        GPX gpx = read(Waypoints.of(Trips.brief(Trips.full(PLACE, Trips.EXACT))));
        assertEquals("First light; ramsons, stream & \"stone\" <bank>",
                gpx.getMetadata().orElseThrow().getName().orElseThrow());
        assertEquals("Understorey", gpx.getCreator());
    }

    @Test
    void dropsWhatXmlAllowsInNoForm() {
        assertEquals("bell and half", Waypoints.allowed("bell\u0007 and \uD83Chalf"));
        assertEquals("a\tb\nc 🌿", Waypoints.allowed("a\tb\nc 🌿"));
    }

    @Test
    void isWholeOnBothSidesOfTheDateLineAndOfTheEquator() throws IOException {
        for (Places place : Places.ALL) {
            WayPoint site = read(Waypoints.of(Trips.brief(Trips.bare(place, Trips.phone())))).getWayPoints().get(0);
            assertEquals(place.position().latitude(), site.getLatitude().doubleValue(), 1e-6);
            assertEquals(place.position().longitude(), site.getLongitude().doubleValue(), 1e-6);
        }
    }

    private static GPX read(String text) throws IOException {
        return GPX.Reader.of(GPX.Version.V11, GPX.Reader.Mode.STRICT)
                .read(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    }
}
