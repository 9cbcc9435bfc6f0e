package understorey.share;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.plan.Position;
import understorey.plan.Site;
import understorey.plan.Spot;

class CoverTest {

    static Site site(String name, String publicName, String... spots) {
        List<Spot> places = Arrays.stream(spots)
                .map(spot -> new Spot(spot, null, null, null, null, null, null, null, null)).toList();
        return new Site(name, "fern-gill-2", publicName, new Position(52.337, -3.548), null, ZoneId.of("UTC"), List.of(),
                null, places, List.of(), null, null, List.of(), List.of(), null, null, true, List.of(), null, List.of(), null);
    }

    @Test
    void numbersSpots() {
        PublicNames cover = PublicNames.of(site("X", "the glen", "Gate", "Upper gate"));
        assertEquals("Spot 2", cover.spot("Upper gate"));
        assertNull(cover.spot(null));
    }

    @Test
    void makesASlugOfThePublicName() {
        assertEquals("bois-clair-no-3", PublicNames.of(site("X", " Bois clair, no. 3! ")).slug());
        assertEquals("foret-elevee", PublicNames.of(site("X", "Forêt élevée")).slug());
        assertEquals("a-wood", PublicNames.of(site("X", "森")).slug());
        assertEquals("a-wood", PublicNames.of(site("X", "  ")).slug());
    }
}
