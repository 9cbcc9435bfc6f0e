package understorey.share;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import understorey.plan.Position;
import understorey.plan.Site;
import understorey.plan.Spot;

class CoverTest {

    private static Cover cover(String name, String publicName, String... spots) {
        List<Spot> places = Arrays.stream(spots)
                .map(spot -> new Spot(spot, null, null, null, null, null, null, null)).toList();
        return Cover.of(new Site(name, "fern-gill-2", publicName, new Position(0, 0), null, ZoneId.of("UTC"), List.of(),
                null, places, List.of(), null, null, List.of(), List.of(), null, null, true, List.of(), null));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "Down Fern Gill at dawn. | Down the glen at dawn.",
        "FERN GILL's floor       | the glen's floor",
        "fern-gill, fern   gill  | the glen, the glen",
        "**Fern** Gill           | **the glen",
        "as in fern-gill-2       | as in the glen",
        "Ferngill and Fern Gills | Ferngill and Fern Gills",
        "from Gate to Upper gate | from Spot 1 to Spot 2",
        "the gates, a floodgate  | the gates, a floodgate",
        "Bei der Brücke, BRÜCKE  | Bei der Spot 3, Spot 3",
        "Devil’s step            | Spot 4",
        "at 51.24, -2.345 on top | at (position withheld) on top",
        "(51.2401° N, 2.3450° W) | ((position withheld))",
        "51,2401; 2,3450         | (position withheld)",
        "5.5 or 12.5 m, in 2027  | 5.5 or 12.5 m, in 2027",
        "costs $1 at (the) gate  | costs $1 at (the) Spot 1"})
    void replacesWholeNamesAndPositionsHoweverTheyAreWritten(String text, String covered) {
        assertEquals(covered, cover("Fern Gill", "the glen", "Gate", "Upper gate", "Brücke", "Devil's step").text(text));
    }

    @Test
    void putsBackslashesAndDollarsOfAPublicNameAsTheyAre() {
        assertEquals("In a \\$1 wood", cover("Fern Gill", "a \\$1 wood").text("In Fern Gill"));
    }

    @Test
    void leavesTextAloneWhenANameHasNoWord() {
        assertEquals("a — b", cover("—", "the glen", "…").text("a — b"));
        assertNull(cover("—", "the glen").text(null));
        assertNull(cover("—", "the glen", "Gate").spot(null));
    }

    @Test
    void makesASlugOfThePublicName() {
        assertEquals("bois-clair-no-3", cover("X", " Bois clair, no. 3! ").slug());
        assertEquals("foret-elevee", cover("X", "Forêt élevée").slug());
        assertEquals("a-wood", cover("X", "森").slug());
        assertEquals("a-wood", cover("X", "  ").slug());
    }
}
