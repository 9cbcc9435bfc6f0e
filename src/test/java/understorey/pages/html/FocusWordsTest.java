package understorey.pages.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.LEGS;
import static understorey.Samples.MACRO;
import static understorey.Samples.POLARISER;
import static understorey.Samples.RING;
import static understorey.Samples.bag;
import static understorey.Samples.fullFrame;
import static understorey.Samples.picture;
import static understorey.Samples.with;

import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Glass;
import understorey.Places;
import understorey.Samples;
import understorey.advice.Measure;
import understorey.exposure.Conditions;
import understorey.exposure.Exposure;
import understorey.exposure.Metering;
import understorey.exposure.Settings;
import understorey.kit.Darkening;
import understorey.kit.LensFit;
import understorey.kit.WholeBag;
import understorey.pages.Briefs;
import understorey.pages.Page;
import understorey.pages.SitePagesTest;
import understorey.pages.Trips;
import understorey.pages.markdown.Prose;
import understorey.pages.svg.Glyphs;
import understorey.pages.words.Sentences;
import understorey.plan.Bag;
import understorey.plan.Lens;
import understorey.plan.Trip;

class FocusWordsTest {

    private static final Sentences SENTENCES = Sentences.builtIn();
    private static final Bag MACRO_BAG = with(bag(fullFrame(24), MACRO), LEGS);
    private static final Samples.Picture DEEP = picture("Deep").wide(0.072).deep(0.02);

    private static LensFit fit(Samples.Picture picture, Bag bag) {
        return WholeBag.fit(picture.intent(), bag).best();
    }

    private static Settings in(LensFit fit, double gustMs) {
        return Exposure.of(fit, List.of(), new Conditions(9, 0, null, 0.0, gustMs, null, Metering.GROUND, 2));
    }

    @Test
    void tellsFramesAndStepOfACloseUp() {
        LensFit fit = fit(DEEP, MACRO_BAG);
        Settings settings = in(fit, 0.04);
        assertTrue(FocusWords.stack(fit, settings, SENTENCES).matches("\\d+ frames, \\d\\.\\d\u00a0mm steps, nearest first"),
                FocusWords.stack(fit, settings, SENTENCES));
        assertEquals("20\u00a0mm in " + settings.stackFrames() + " frames", FocusWords.sharp(fit, settings, SENTENCES));
        LensFit lifeSize = fit(picture("Deep").wide(0.036).deep(0.01), MACRO_BAG);
        assertTrue(FocusWords.stack(lifeSize, in(lifeSize, 0.04), SENTENCES).contains(" frames on a rail, "));
    }

    /** In a gust there is one frame, and what is told sharp is what that one holds. */
    @Test
    void tellsOfOneFrameWhatOneFrameHolds() {
        LensFit fit = fit(DEEP, MACRO_BAG);
        Settings gusty = in(fit, 1.0);
        assertNull(FocusWords.stack(fit, gusty, SENTENCES));
        double heldM = fit.depthOfField(gusty.fNumber(), fit.focusM() * 1000).depthMm() / 1000;
        assertTrue(heldM < 0.01);
        assertEquals(SENTENCES.of(heldM, Measure.METRES), FocusWords.sharp(fit, gusty, SENTENCES));
    }

    /** A lens marks its distances from the sensor. */
    @Test
    void tellsFromWhereToWhereTheFocusOfAViewGoes() {
        LensFit fit = fit(picture("View").equivalent(135).sharp(10, 60), with(bag(fullFrame(24), Samples.prime(135)), LEGS));
        Settings settings = in(fit, 0.1);
        assertEquals(settings.stackFrames() + " frames, focus " + SENTENCES.of(fit.fromSensorM(settings.stack().firstM()), Measure.METRES) + " to "
                + SENTENCES.of(fit.fromSensorM(settings.stack().lastM()), Measure.METRES), FocusWords.stack(fit, settings, SENTENCES));
        assertTrue(fit.fromSensorM(settings.stack().firstM()) > settings.stack().firstM() + 0.1);
        assertTrue(FocusWords.sharp(fit, settings, SENTENCES).endsWith(" in " + settings.stackFrames() + " frames"));
    }

    @Test
    void namesEveryFilterToPutOn() {
        Lens fast = new Lens("Fast", "A", null, 50, 50, 1.4, 1.4, 16.0, 0.5, null, 62.0, 0, null);
        Bag bag = with(with(bag(fullFrame(24), fast), LEGS), RING, POLARISER, Glass.neutralDensity(72, 3));
        LensFit fit = fit(picture("Plant").wide(0.72).deep(0.001).polarised(), bag);
        Conditions bright = new Conditions(17, 0, null, 0, 0, null, Metering.GROUND, 2);
        Settings settings = Exposure.of(fit, Darkening.of(bag, fit), bright);
        assertEquals("Ring 62 to 72, Polariser, ND 3.0", FocusWords.filters(fit, settings));
        assertNull(FocusWords.filters(fit(DEEP, MACRO_BAG), in(fit(DEEP, MACRO_BAG), 0)));
    }

    /** Nobody who takes the sheet along reads the reasons. */
    @Test
    void standsInTheHeadlineOnTheStoryboardAndOnTheFieldSheet() {
        Trip still = Trips.trip(Places.MID_LATITUDE, Trips.EXACT, Trips.dayBag(), Trips.pictures(), LocalTime.of(5, 0),
                LocalTime.of(11, 0), Trips.stillAir());
        ShotView shot = Trips.brief(still).shots().stream().filter(one -> one.timed().settings().stack() != null).findFirst()
                .map(one -> ShotView.of(Trips.brief(still), one, Sentences.builtIn(), new Prose(), new Glyphs())).orElseThrow();
        List<Page> pages = Briefs.pages(List.of(still), List.of());
        String headline = SitePagesTest.page(pages, "first-light/index.html");
        assertTrue(headline.contains(" · <b>" + shot.settings().stack() + "</b>"), "under its sketch: " + shot.settings().stack());
        assertTrue(headline.contains(" · " + shot.settings().stack() + "</p>"), "under its settings");
        assertTrue(SitePagesTest.page(pages, "first-light/plan.md").lines().map(line -> line.replace('\u00a0', ' '))
                .anyMatch(line -> line.contains("**" + shot.settings().line().replace('\u00a0', ' ') + "**")
                        && line.contains(" · " + shot.settings().stack().replace('\u00a0', ' '))));
        String sheet = SitePagesTest.page(pages, "first-light/field-sheet.html");
        assertTrue(sheet.contains("stack <b>" + shot.settings().stack() + "</b>"));
        assertTrue(sheet.contains("with <b>Polariser</b>"));
        assertFalse(shot.settings().stack().isBlank());
    }
}
