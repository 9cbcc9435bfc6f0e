package understorey.pages.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.time.Duration;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import understorey.Places;
import understorey.brief.Brief;
import understorey.brief.TimedShot;
import understorey.kit.LensFit;
import understorey.light.LightAt;
import understorey.pages.Trips;
import understorey.pages.tables.LensColumns;
import understorey.pages.tables.Tables;
import understorey.pages.words.Sentences;
import understorey.pages.words.Words;
import understorey.plan.ForecastHour;
import understorey.plan.Trip;

class PlanJsonTest {

    static final ObjectMapper MAPPER = new ObjectMapper().enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION);
    @Test
    void givesTheFiguresOfTheBriefWithinTheirRounding() throws IOException {
        Brief brief = Trips.brief(Trips.full(Places.MID_LATITUDE, Trips.EXACT));
        JsonNode json = json(brief);
        near(brief.day().sun().noonAltitudeDeg(), json.at("/sun/noon_altitude_deg"), 0.005);
        near(brief.day().moon().illuminatedFraction(), json.at("/moon/illuminated_fraction"), 0.0005);
        near(brief.day().moon().phaseDeg(), json.at("/moon/phase_deg"), 0.05);
        at(brief.day().sun().sunrise(), json.at("/sun/sunrise"));
        at(brief.day().sun().civilDusk(), json.at("/sun/civil_dusk"));
        at(brief.day().sun().lowSunEvening().to(), json.at("/sun/low_sun_evening/to"));
        at(brief.day().places().get(0).sunlit().get(0).from(), json.at("/places/sunlit/0/0/from"));
        near(brief.day().places().get(0).light().get(0).plantAreaIndex(), json.at("/places/plant_area_index/0"), 0.005);
        at(brief.order().leaveLastSpotBy(), json.at("/trip/leave_last_spot_by"));
        JsonNode rows = Tables.rows(json.get("light"));
        assertEquals(brief.day().light().size(), rows.size());
        for (int i = 0; i < brief.day().light().size(); i++) {
            light(brief.day().light().get(i), rows.get(i));
        }
        for (int i = 0; i < brief.timed().size(); i++) {
            shot(brief.timed().get(i), json.get("shots").get(i));
        }
        near(brief.packing().weightG(), json.at("/kit/weight_g"), 0.5);
        near(brief.packing().cardGb(), json.at("/kit/card_gb"), 0.05);
        assertEquals(brief.packing().batteries(), json.at("/kit/batteries").intValue());
    }

    @Test
    void givesOneLegOfTheRunningOrderAfterAnotherAndTheWordsOfTheContract() throws IOException {
        JsonNode order = json(Trips.full(Places.MID_LATITUDE, Trips.EXACT)).get("running_order");
        assertTrue(order.size() > 6);
        for (int i = 0; i < order.size(); i++) {
            assertTrue(List.of("walk", "set up", "shoot", "wait").contains(order.get(i).get("what").textValue()));
            if (i > 0) {
                assertEquals(order.get(i - 1).get("to"), order.get(i).get("from"));
            }
            boolean wayBack = i == order.size() - 1 && order.get(i).get("what").textValue().equals("walk");
            assertEquals(wayBack, order.get(i).get("shot").isNull(), "only the way back is for no picture");
        }
    }

    @Test
    void writesNullForTheSunThatDoesNotRise() throws IOException {
        JsonNode json = json(Trips.bare(Places.POLAR_NIGHT, Trips.phone()));
        assertTrue(json.at("/sun/sunrise").isNull());
        assertTrue(json.at("/sun/sunset").isNull());
        assertTrue(json.at("/sun/down_all_day").booleanValue());
        assertEquals(0, json.at("/sun/sunlit").size());
        assertTrue(json.at("/sun/noon_altitude_deg").doubleValue() < 0);
        assertTrue(json.at("/light/open_ev100/sun/48").isNull());
        assertTrue(json.at("/light/shadow_per_height/0").isNull());
    }

    @Test
    void writesNullForTheSunThatDoesNotSet() throws IOException {
        JsonNode json = json(Trips.bare(Places.POLAR_DAY, Trips.phone()));
        assertTrue(json.at("/sun/sunset").isNull());
        assertTrue(json.at("/sun/civil_dawn").isNull());
        assertTrue(json.at("/sun/deep_twilight_morning").isNull(), "a stretch that does not come has no ends");
        assertTrue(json.at("/sun/up_all_day").booleanValue());
    }

    @Test
    void runsTheLightOverDaysOf23And25Hours() throws IOException {
        JsonNode shortDay = json(Trips.bare(Places.SHORT_DAY, Trips.phone())).at("/light/time");
        JsonNode longDay = json(Trips.bare(Places.LONG_DAY, Trips.phone())).at("/light/time");
        assertEquals(92, shortDay.size());
        assertEquals("2027-03-28T01:45:00+01:00", shortDay.get(7).textValue());
        assertEquals("2027-03-28T03:00:00+02:00", shortDay.get(8).textValue());
        assertEquals(100, longDay.size());
        assertEquals("2027-10-31T02:45:00+02:00", longDay.get(11).textValue());
        assertEquals("2027-10-31T02:00:00+01:00", longDay.get(12).textValue());
    }

    @Test
    void movesTheMonthsSouthAndFindsTheNoonSunInTheNorth() throws IOException {
        JsonNode json = json(Trips.bare(Places.SOUTHERN, Trips.dayBag()));
        assertTrue(json.at("/season/months_shifted").booleanValue());
        assertEquals(10, json.at("/season/first_month").intValue());
        assertFalse(json.at("/season/in_season").booleanValue());
        double azimuth = json.at("/light/sun_azimuth_deg/49").doubleValue();
        assertTrue(azimuth > 330 || azimuth < 30, "at " + json.at("/light/time/49") + " " + azimuth);
    }

    @Test
    void writesNullForSharpnessThatReachesTheHorizon() throws IOException {
        Brief brief = Trips.brief(Trips.full(Places.MID_LATITUDE, Trips.EXACT));
        assertTrue(Double.isInfinite(brief.timed().get(0).settings().sharpToM()), "the first picture is for the horizon");
        JsonNode shot = json(brief).at("/shots/0");
        assertTrue(shot.get("sharp_to_m").isNull());
        assertTrue(shot.get("sharp_from_m").isNumber());
    }

    @Test
    void countsTheFramesOfAStackWhereOneIsTaken() throws IOException {
        int stacked = 0;
        for (List<ForecastHour> forecast : List.of(Trips.stillAir(), Trips.forecast())) {
            Brief brief = Trips.brief(Trips.trip(Places.MID_LATITUDE, Trips.EXACT, Trips.dayBag(), Trips.pictures(),
                    LocalTime.of(5, 0), LocalTime.of(11, 0), forecast));
            for (TimedShot shot : brief.timed()) {
                JsonNode json = json(brief).at("/shots/" + (shot.number() - 1));
                boolean advised = shot.settings().stack() != null;
                int frames = advised ? shot.settings().stack().frames() : 1;
                assertEquals(frames, json.get("stack_frames").intValue(), shot.intent().shot().name());
                assertEquals(advised, frames > 1);
                assertEquals(advised ? frames : 0, json.at("/stack/frames").intValue());
                stacked += advised ? 1 : 0;
            }
        }
        assertEquals(1, stacked, "12 mm at 0.8 times is more than one frame holds; in the wind of the forecast one must do");
    }

    @Test
    void givesSettingsForAnHourEachWay() throws IOException {
        Brief brief = Trips.brief(Trips.full(Places.MID_LATITUDE, Trips.EXACT));
        Trip early = Trips.trip(Places.MID_LATITUDE, Trips.EXACT, Trips.dayBag(), Trips.pictures(), LocalTime.of(5, 30), LocalTime.of(6, 30),
                Trips.forecast());
        JsonNode first = json(Trips.brief(early)).at("/shots/0");
        assertEquals(0, hours(first).size(), "an hour earlier is before the visit, an hour later after it");
        JsonNode shot = StreamSupport.stream(json(brief).get("shots").spliterator(), false)
                .filter(one -> hours(one).size() == 2).findFirst().orElseThrow();
        ZonedDateTime from = ZonedDateTime.parse(shot.get("from").textValue());
        ZonedDateTime middle = from.plus(Duration.between(from, ZonedDateTime.parse(shot.get("to").textValue())).dividedBy(2));
        assertEquals(middle.minusHours(1), ZonedDateTime.parse(hours(shot).get(0).get("time").textValue()));
        assertEquals(middle.plusHours(1), ZonedDateTime.parse(hours(shot).get(1).get("time").textValue()));
        assertTrue(hours(shot).get(0).get("ev100").doubleValue() < shot.get("ev100").doubleValue(), "nearer to the night");
    }

    @Test
    void saysThatABagWithoutACameraCannot() throws IOException {
        JsonNode shot = json(Trips.bare(Places.MID_LATITUDE, Trips.empty())).at("/shots/0");
        assertEquals("cannot", shot.get("verdict").textValue());
        for (String key : List.of("lens", "focal_mm", "f_number", "sharp_from_m", "stack_frames", "viewpoint_m")) {
            assertTrue(shot.get(key).isNull(), key);
        }
        assertEquals(0, shot.at("/lenses_tried/lens").size());
        assertEquals(1, shot.get("helps").size());
    }

    @Test
    void listsWhatIsAssumedByNameInOrder() throws IOException {
        JsonNode json = json(Trips.bare(Places.MID_LATITUDE, Trips.phone()));
        assertEquals("[\"arrive\",\"audience\",\"leave\",\"position\",\"sky\"]", json.at("/trip/assumed").toString());
        List<String> assumed = new ArrayList<>();
        json.at("/shots/0/assumed").forEach(name -> assumed.add(name.textValue()));
        assertEquals(assumed.stream().sorted().toList(), assumed);
        assertTrue(assumed.contains("role") && assumed.contains("viewpoint"), assumed.toString());
    }

    @Test
    void neverNamesTheContact() {
        String json = PlanJson.of(Trips.brief(Trips.full(Places.MID_LATITUDE, Trips.EXACT)), Sentences.builtIn()::of);
        assertFalse(json.contains("my sister"));
    }

    @Test
    void writesOneSpaceALevelLineFeedsAndTheSameBytesAnywhere() {
        Trip trip = Trips.full(Places.MID_LATITUDE, Trips.EXACT);
        String here = PlanJson.of(Trips.brief(trip), Sentences.builtIn()::of);
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
            assertEquals(here, PlanJson.of(Trips.brief(trip), Sentences.builtIn()::of));
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
        assertTrue(here.startsWith("{\n \"$schema\": \"../plan.schema.json\",\n \"format\": \"understorey-plan/2\",\n \"trip\": {\n  \"title\": "));
        assertTrue(here.endsWith("\n}\n"));
        assertFalse(here.contains("\r"));
        assertTrue(here.contains("über Moos: 木漏れ日 🌿"));
    }

    private static List<JsonNode> hours(JsonNode shot) {
        return StreamSupport.stream(Tables.rows(shot.get("if_the_light_differs")).spliterator(), false)
                .filter(row -> !row.get("time").isNull()).toList();
    }

    private static void light(LightAt light, JsonNode json) {
        at(light.sun().time(), json.get("time"));
        near(light.sun().altitudeDeg(), json.get("sun_altitude_deg"), 0.005);
        near(light.sun().azimuthDeg(), json.get("sun_azimuth_deg"), 0.005);
        near(light.open().sun(), json.at("/open_ev100/sun"), 0.05);
        near(light.open().overcast(), json.at("/open_ev100/overcast"), 0.05);
        near(light.floor().fleck(), json.at("/floor_ev100/fleck"), 0.05);
        near(light.floor().shade(), json.at("/floor_ev100/shade"), 0.05);
        near(light.floor().broken(), json.at("/floor_ev100/broken"), 0.05);
        near(light.fleckShare(), json.get("fleck_share"), 0.0005);
        share(light.shadowPerHeight(), json.get("shadow_per_height"), 0.005);
        assertEquals(light.aboveSkyline(), json.get("above_skyline").booleanValue());
        assertEquals(light.colourTemperatureK(), json.get("colour_temperature_k").intValue());
    }

    private static void shot(TimedShot shot, JsonNode json) {
        LensFit fit = shot.fit().best();
        assertEquals(shot.intent().shot().name(), json.get("name").textValue());
        assertEquals(fit.camera().lens().name(), json.get("lens").textValue());
        share(fit.focalMm(), json.get("focal_mm"), 0.0005);
        share(fit.equivalentMm(), json.get("equivalent_mm"), 0.0005);
        near(fit.view().diagonalDeg(), json.at("/angle_of_view_deg/diagonal"), 0.05);
        near(fit.tiltDeg(), json.get("tilt_deg"), 0.05);
        share(fit.distanceM(), json.get("distance_m"), 0.0005);
        share(fit.frameWidthM(), json.get("frame_width_m"), 0.001);
        share(fit.frameHeightM(), json.get("frame_height_m"), 0.0017);
        near(fit.magnification(), json.get("magnification"), 0.00005);
        share(shot.settings().shutterS(), json.get("shutter_s"), 0.0005);
        share(shot.settings().fNumber(), json.get("f_number"), 0.005);
        assertEquals(shot.settings().iso(), json.get("iso").intValue());
        near(shot.settings().ev100(), json.get("ev100"), 0.05);
        share(shot.settings().sharpFromM(), json.get("sharp_from_m"), 0.0005);
        share(shot.settings().hyperfocalM(), json.get("hyperfocal_m"), 0.0005);
        share(fit.focusM(), json.get("focus_m"), 0.0005);
        if (shot.sunlight() == null || shot.sunlight().now() == null) {
            assertTrue(json.get("light_angle_deg").isNull());
        } else {
            near(Math.abs(shot.sunlight().now().bearingDeg()), json.get("light_angle_deg"), 0.05);
        }
        near(shot.outlook() == null ? null : shot.outlook().quality(), json.get("light_quality"), 0.0005);
        at(shot.time() == null ? null : shot.time().from(), json.get("from"));
        assertEquals(fit.reasons().size() + shot.settings().reasons().size(), json.get("reasons").size());
        assertEquals(LensColumns.tried(shot).rows().size(), json.at("/lenses_tried/lens").size());
        JsonNode other = json.get("if_the_light_differs");
        assertEquals(3 + (shot.ifMist() == null ? 0 : 1) + shot.otherHours().size(), other.get("sky").size());
        assertEquals(shot.ifMist() != null, other.at("/sky/3").asText().equals("mist"));
        for (int i = 0; i < 3; i++) {
            assertEquals(Words.word(shot.otherSkies().get(i).metered()),
                    other.get("metered").get(i).asText());
        }
        assertEquals(shot.fitted().companions().size(), json.get("companions").size());
    }

    private static void near(Double expected, JsonNode actual, double within) {
        if (expected == null) {
            assertTrue(actual.isNull(), actual.toString());
        } else {
            assertTrue(actual.isNumber(), "no number: " + actual);
            assertEquals(expected, actual.doubleValue(), within * 1.00001);
        }
    }

    private static void share(Double expected, JsonNode actual, double share) {
        near(expected, actual, expected == null ? 0 : Math.abs(expected) * share);
    }

    private static void at(ZonedDateTime expected, JsonNode actual) {
        if (expected == null) {
            assertTrue(actual.isNull());
            return;
        }
        OffsetDateTime time = OffsetDateTime.parse(actual.textValue());
        assertEquals(expected.getOffset(), time.getOffset());
        assertEquals(expected.toInstant().toEpochMilli() / 1000.0, time.toEpochSecond(), 0.5);
    }

    static JsonNode json(Trip trip) throws IOException {
        return json(Trips.brief(trip));
    }

    static JsonNode json(Brief brief) throws IOException {
        return MAPPER.readTree(PlanJson.of(brief, Sentences.builtIn()::of));
    }
}
