package understorey.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.brief.SmallTrip.FULL_BAG;
import static understorey.brief.SmallTrip.PHONE;
import static understorey.brief.SmallTrip.WOOD;
import static understorey.brief.SmallTrip.forecast;
import static understorey.brief.SmallTrip.has;
import static understorey.brief.SmallTrip.planned;
import static understorey.brief.SmallTrip.visit;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import understorey.advice.Advice;
import understorey.advice.BagAdvice;
import understorey.advice.HelpAdvice;
import understorey.advice.PhoneAdvice;
import understorey.advice.StoryAdvice;
import understorey.advice.SupportAdvice;
import understorey.advice.ToneAdvice;
import understorey.packing.Packing;

/** What an expert packs, and which pictures an expert calls alike. All of it is common practice, no source. */
class BagDecisionsTest {

    private static final String HOURS = visit("08:00", "12:00");
    private static final String CARPET = "shots: [{name: Carpet, subject: ramsons, role: opening}]\n";
    private static final String EXTRAS = "  batteries: 1\n  extras: [{name: Head torch, weight: 90 g}, {name: Rain cover, weight: 60 g}]\n";
    private static final String BODY = "    - {name: Main body, sensor: full-frame, pixels: 24 Mpx, mount: A, base_iso: 100, top_iso: 3200,"
            + " stabilised: 3 stops, weight: 660 g}\n";

    @TempDir
    private Path folder;

    private static String weather(String temperature, String rain) {
        return forecast(8, 12, "temperature: " + temperature + ", wind: 1 m/s, gust: 2 m/s, cloud: 8, rain: " + rain);
    }

    private Packing packing(String bag, String... more) throws IOException {
        return planned(folder, WOOD, bag, String.join("", more), CARPET).packing();
    }

    private static List<String> names(List<Packing.Item> items) {
        return items.stream().map(Packing.Item::name).toList();
    }

    private String bodyOf(String pixels, String weight) throws IOException {
        String other = BODY.replace("Main body", "Other body").replace("24 Mpx", pixels).replace("660 g", weight);
        return planned(folder, WOOD, FULL_BAG.replace(BODY, BODY + other), HOURS, "sky: overcast\n", CARPET)
                .shot("Carpet").fit().best().camera().body().name();
    }

    @Test
    void takesTheBodyWithTwiceThePixelsAlthoughItIsALittleHeavier() throws IOException {
        assertEquals("Other body", bodyOf("45 Mpx", "680 g"));
    }

    @Test
    void takesTheLighterOfTwoBodiesThatAnExpertCallsEqual() throws IOException {
        assertEquals("Main body", bodyOf("26 Mpx", "680 g"));
        assertEquals("Other body", bodyOf("26 Mpx", "640 g"));
    }

    /** Shelter, a wider frame and a stack are something to do; they are said with the picture. */
    @Test
    void missesOnlyWhatCanBeCarried() throws IOException {
        Brief gale = planned(folder, WOOD, FULL_BAG, HOURS, weather("10 °C", "0 mm").replace("wind: 1 m/s, gust: 2 m/s", "wind: 4 m/s, gust: 8 m/s"),
                "shots: [{name: Head, subject: bluebell, role: closing, frame: {width: 36 mm}}]\n");
        assertTrue(has(HelpAdvice.HelpFrameWider.class, gale.shot("Head").helps()), gale.shot("Head").helps().toString());
        assertTrue(gale.packing().missing().stream().noneMatch(thing -> thing instanceof HelpAdvice && !(thing instanceof HelpAdvice.Thing)),
                gale.packing().missing().toString());
        Brief phone = planned(folder, WOOD, PHONE, HOURS, weather("10 °C", "0 mm"), "shots: [{name: Head, subject: bluebell, role: closing}]\n");
        assertTrue(has(HelpAdvice.HelpCloseUpLens.class, phone.packing().missing()), phone.packing().missing().toString());
    }

    /** A cold battery is soon empty, and an exposure of seconds empties it. */
    @Test
    void takesASpareBatteryIntoTheCold() throws IOException {
        String bag = FULL_BAG.replace("stabilised: 3 stops,", "stabilised: 3 stops, battery: 380 frames,") + EXTRAS;
        Packing cold = packing(bag, HOURS, weather("3 °C", "0 mm"));
        assertEquals(2, cold.batteries());
        assertTrue(has(BagAdvice.BatteriesCold.class, cold.missing()), cold.missing().toString());
        assertEquals(1, packing(bag, HOURS, weather("15 °C", "0 mm")).batteries());
    }

    @Test
    void asksForACardWhereTheBagListsNone() throws IOException {
        String sized = FULL_BAG.replace("stabilised: 3 stops,", "stabilised: 3 stops, raw_size: 28 MB,");
        assertTrue(has(BagAdvice.HelpCard.class, packing(sized, HOURS).missing()));
        assertFalse(has(BagAdvice.HelpCard.class, packing(sized + "  cards: [64 GB]\n", HOURS).missing()));
    }

    @Test
    void leavesTheHeadTorchWhereItIsLightForLong() throws IOException {
        Packing light = packing(FULL_BAG + EXTRAS, HOURS, weather("10 °C", "0 mm"));
        assertTrue(names(light.leave()).contains("Head torch"), names(light.leave()).toString());
        Packing evening = packing(FULL_BAG + EXTRAS, visit("18:00", "21:30"), weather("10 °C", "0 mm"));
        assertTrue(names(evening.take()).contains("Head torch"), names(evening.take()).toString());
    }

    @Test
    void takesTheRainCoverUnlessTheForecastIsDry() throws IOException {
        assertTrue(names(packing(FULL_BAG + EXTRAS, HOURS, weather("10 °C", "0 mm")).leave()).contains("Rain cover"));
        assertTrue(names(packing(FULL_BAG + EXTRAS, HOURS, weather("10 °C", "1 mm")).take()).contains("Rain cover"));
        assertTrue(names(packing(FULL_BAG + EXTRAS, HOURS).take()).contains("Rain cover"), "no forecast");
    }

    @Test
    void tellsAPhoneOnceHowToBeHeld() throws IOException {
        Brief brief = planned(folder, WOOD, PHONE, HOURS, "sky: overcast\n", CARPET);
        TimedShot carpet = brief.shot("Carpet");
        assertFalse(has(SupportAdvice.NoSupport.class, carpet.fit().best().reasons()), carpet.fit().best().reasons().toString());
        assertFalse(has(HelpAdvice.HelpSupport.class, carpet.helps()) || has(HelpAdvice.HelpSupport.class, brief.packing().missing()));
        List<Advice> reasons = carpet.settings().reasons();
        assertTrue(has(PhoneAdvice.PhoneBraced.class, reasons), reasons.toString());
        assertTrue(has(PhoneAdvice.PhoneTones.class, reasons) && !has(ToneAdvice.NoRaw.class, reasons), reasons.toString());
    }

    private static <T> List<T> story(Brief brief, Class<T> kind) {
        return brief.story().gaps().stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    private Brief threeHeads(String bag, String... widths) throws IOException {
        StringBuilder shots = new StringBuilder("shots:\n");
        for (String width : widths) {
            shots.append("  - {name: At ").append(width).append(", subject: ramsons, role: detail, frame: {width: ").append(width).append("}}\n");
        }
        return planned(folder, WOOD, bag, HOURS, "sky: overcast\n", shots.toString());
    }

    /** One head and three heads are two pictures, though both are close up. */
    @Test
    void callsPicturesAlikeOnlyAtOneScale() throws IOException {
        assertEquals(1, story(threeHeads(FULL_BAG, "10 cm", "11 cm"), StoryAdvice.PicturesAlike.class).size());
        assertEquals(List.of(), story(threeHeads(FULL_BAG, "10 cm", "25 cm"), StoryAdvice.PicturesAlike.class));
    }

    @Test
    void missesNoViewThatTheBagHasNoLensFor() throws IOException {
        String macroOnly = FULL_BAG.replaceAll(" {4}- \\{name: (Short|Long|Wide).*\n", "");
        assertEquals(List.of(), story(threeHeads(macroOnly, "5 cm", "10 cm", "20 cm"), StoryAdvice.ViewsAlike.class));
        assertEquals(1, story(threeHeads(FULL_BAG, "5 cm", "10 cm", "20 cm"), StoryAdvice.ViewsAlike.class).size());
    }
}
