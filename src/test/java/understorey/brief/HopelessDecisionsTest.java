package understorey.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.brief.SmallTrip.FULL_BAG;
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
import understorey.Samples;
import understorey.advice.Advice;
import understorey.advice.CautionAdvice;
import understorey.advice.SpoilerAdvice;

/** When someone with twenty years of practice stays at home, and says so first. All of it is common practice, no source. */
class HopelessDecisionsTest {

    private static final String RECORDS = """
            season:
              - subject: ramsons
                records:
                  - {first: 2023-04-24, full: 2023-05-03, over: 2023-05-25}
                  - {first: 2024-04-25, full: 2024-05-04, over: 2024-05-26}
                  - {first: 2025-04-26, full: 2025-05-05, over: 2025-05-27}
            """.indent(2);
    private static final String CARPET = "shots: [{name: Carpet, subject: ramsons, role: opening, light: [soft]}]\n";
    private static final String CALM = forecast(6, 13, "temperature: 10 °C, wind: 1 m/s, gust: 2 m/s, cloud: 7, rain: 0 mm");

    @TempDir
    private Path folder;

    private Brief brief(String date, String weather, String shots) throws IOException {
        return planned(folder, WOOD.replace("date: 2027-05-08", RECORDS.stripTrailing() + "\n" + date), FULL_BAG, visit("08:00", "12:00"), weather, shots);
    }

    /** With the days to go instead. */
    @Test
    void staysAtHomeWhenTheFlowersAreOver() throws IOException {
        List<Advice> hopeless = brief("date: 2027-06-20", CALM, CARPET).hopeless();
        assertTrue(Samples.the(SpoilerAdvice.FlowersHardly.class, hopeless).chance() < 0.2, hopeless.toString());
        SpoilerAdvice.GoInstead instead = Samples.the(SpoilerAdvice.GoInstead.class, hopeless);
        assertEquals(5, instead.to().getMonthValue());
        assertTrue(instead.most() > 0.5, instead.toString());
    }

    @Test
    void goesWhenTheFlowersAreLikelyAndTheAirIsCalm() throws IOException {
        assertEquals(List.of(), brief("date: 2027-05-08", CALM, CARPET).hopeless());
    }

    /** One picture in two of a faded flower leaves the other. */
    @Test
    void goesForTheOtherHalf() throws IOException {
        assertEquals(List.of(), brief("date: 2027-06-20", CALM, """
                shots:
                  - {name: Carpet, subject: ramsons, role: opening, light: [soft]}
                  - {name: Head, subject: foxglove, role: closing, light: [soft]}
                """).hopeless().stream().filter(SpoilerAdvice.FlowersHardly.class::isInstance).toList());
    }

    /** The catalogue alone knows the season to a fortnight, so no day has a high chance. A photographer still goes near the peak. */
    @Test
    void goesNearAPeakThatIsHardlyKnown() throws IOException {
        Brief brief = planned(folder, WOOD.replace("2027-05-08", "2027-05-10"), FULL_BAG, visit("08:00", "12:00"), CALM, CARPET);
        assertTrue(brief.season().window().chanceOn(brief.date()) < 0.2);
        assertEquals(List.of(), brief.hopeless());
        Brief late = planned(folder, WOOD.replace("2027-05-08", "2027-07-10"), FULL_BAG, visit("08:00", "12:00"), CALM, CARPET);
        assertTrue(has(SpoilerAdvice.FlowersHardly.class, late.hopeless()));
    }

    @Test
    void saysThatNoneOfTheDaysGivenIsBetter() throws IOException {
        Brief brief = brief("dates: {from: 2027-06-20, to: 2027-06-26}\nweekdays: [Sat, Sun]", "", CARPET);
        assertEquals(2, Samples.the(SpoilerAdvice.BestOfDaysGiven.class, brief.hopeless()).days(), brief.hopeless().toString());
    }

    /** Branches fall. */
    @Test
    void staysOutOfTheWoodInGusts() throws IOException {
        String gale = "temperature: 10 °C, wind: 8 m/s, gust: %s m/s, cloud: 7, rain: 0 mm";
        assertTrue(has(CautionAdvice.GustsBreakBranches.class, brief("date: 2027-05-08", forecast(6, 13, gale.formatted("14")), CARPET).hopeless()));
        assertTrue(brief("date: 2027-05-08", forecast(6, 13, gale.formatted("12")), CARPET).hopeless().stream()
                .noneMatch(CautionAdvice.class::isInstance));
    }

    /** A phone takes one of these three. */
    @Test
    void staysAtHomeWhenMostPicturesAreImpossible() throws IOException {
        Brief brief = planned(folder, WOOD, SmallTrip.PHONE, visit("08:00", "12:00"), CALM, """
                shots:
                  - {name: Carpet, subject: ramsons, role: opening, light: [soft]}
                  - {name: Far, subject: ramsons, role: approach, focal_equivalent: 300 mm, frame: {width: 20 mm, distance: 3 m}}
                  - {name: Further, subject: ramsons, role: detail, frame: {width: 20 mm, distance: 5 m}}
                """);
        assertEquals(new SpoilerAdvice.FewPossible(1, 3), Samples.the(SpoilerAdvice.FewPossible.class, brief.hopeless()));
    }

    /** "0 minutes after you are back" is no way to say it. */
    @Test
    void saysPlainlyThatNoSlackIsLeftAtTheGate() throws IOException {
        Brief brief = planned(folder, WOOD.replace("country: GB\n", "country: GB\n  spots: [{name: Gate}]\n  parking: {spot: Gate, closes: \"12:00\"}\n"),
                FULL_BAG, visit("08:00", "12:00"), CALM,
                "shots: [{name: Carpet, subject: ramsons, role: opening, spot: Gate, start: \"11:30\", duration: 30 min}]\n");
        assertTrue(has(SpoilerAdvice.ClosingAtOnce.class, brief.spoilers()), brief.spoilers() + " " + brief.safety());
    }
}
