package understorey.brief;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.brief.SmallTrip.FULL_BAG;
import static understorey.brief.SmallTrip.PHONE;
import static understorey.brief.SmallTrip.WOOD;
import static understorey.brief.SmallTrip.planned;
import static understorey.brief.SmallTrip.visit;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import understorey.exposure.Settings;

/**
 * Aperture, shutter speed and ISO, as planned, against published exposures. In the open these are the ANSI exposure guides
 * PH2.7-1973 and PH2.7-1986, as the encyclopedia article "Exposure value" gives them, within their own step of 1 EV; the guide takes
 * 1 EV off for side light and 2 EV for back light. Under trees they are those of the open, less what a canopy takes: 40 to 70 % of
 * the light reaches the ground leafless, 10 to 30 % in half leaf (from memory, no source); an encyclopedia has no figure for a wood.
 */
class PublishedExposureTest {

    private static final String OPEN = WOOD.replace("canopy: {trees: deciduous, stage: half-leaf, height: 18 m}", "canopy: none");
    private static final String SHADED = OPEN.replace("country: GB", "country: GB\n  skyline: [{bearing: 90, angle: 5}, {bearing: 110, angle: 65},"
            + " {bearing: 250, angle: 65}, {bearing: 270, angle: 5}]");
    private static final String LEAFLESS = WOOD.replace("half-leaf", "leafless");

    @TempDir
    private Path folder;

    /** The exposure that the settings give, EV at ISO 100, without what they give less or more than the meter. */
    private static double ev(Settings settings) {
        return Math.log(settings.fNumber() * settings.fNumber() / settings.shutterS() * 100 / settings.iso()) / Math.log(2) - settings.lessStops();
    }

    @ParameterizedTest
    @CsvSource({"open, clear, 15, 15", "open, overcast, 12, 13", "shaded, clear, 12, 12", "leafless, overcast, 10.7, 12.5", "half-leaf, overcast, 8.7, 11.3"})
    void fitThePublishedExposuresOfTheirLight(String ground, String sky, double least, double most) throws IOException {
        String wood = switch (ground) {
            case "open" -> OPEN;
            case "shaded" -> SHADED;
            case "leafless" -> LEAFLESS;
            default -> WOOD;
        };
        for (String bag : new String[] {FULL_BAG, PHONE}) {
            Brief brief = planned(folder, wood, bag, visit("11:30", "13:30"), "sky: " + sky + "\n",
                    "shots: [{name: Shot, subject: ramsons, role: opening, facing: N}]\n");
            Settings settings = brief.shot("Shot").settings();
            double ev = ev(settings);
            assertTrue(ev >= least - 1 && ev <= most + 1, ground + ", " + sky + ": EV " + ev + ", " + settings);
        }
    }
}
