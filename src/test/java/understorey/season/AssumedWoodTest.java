package understorey.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.MAY_DAY;
import static understorey.Samples.picture;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.light.illuminance.CanopyLight;
import understorey.plan.Canopy;
import understorey.plan.Foliage;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.Trip;
import understorey.reading.subject.SubjectCatalogue;

/** Trees and leaves at flowering are those of the catalogue: deciduous, half to full leaf above bluebells (from memory). */
class AssumedWoodTest {

    private static Trip trip(Site site, String... subjects) {
        return Samples.trip(site, MAY_DAY, "09:00", "12:00", List.of(), Arrays.stream(subjects)
                .map(subject -> picture(subject).of(SubjectCatalogue.builtIn().find(subject)).shot()).toArray(Shot[]::new));
    }

    private static double index(Canopy canopy, LocalDate date) {
        return CanopyLight.of(canopy, null, List.of(), date).plantAreaIndex();
    }

    @Test
    void putsAWoodlandFlowerUnderItsTreesWithLeavesByTheDate() {
        AssumedWood wood = AssumedWood.of(trip(Samples.wood(), "bluebell"));
        Canopy canopy = wood.trip().site().canopy();
        assertEquals(Canopy.Trees.DECIDUOUS, canopy.trees());
        Foliage.Growing leaves = assertInstanceOf(Foliage.Growing.class, canopy.foliage());
        assertTrue(leaves.first().isBefore(leaves.last()));
        Canopy half = new Canopy(Canopy.Trees.DECIDUOUS, Foliage.Stage.HALF_LEAF, null);
        Canopy full = new Canopy(Canopy.Trees.DECIDUOUS, Foliage.Stage.FULL_LEAF, null);
        assertEquals(index(half, MAY_DAY), index(canopy, leaves.first().minusDays(20)), 1e-12);
        assertEquals(index(full, MAY_DAY), index(canopy, leaves.last().plusDays(20)), 1e-12);
        double now = index(canopy, leaves.first().plusDays(5));
        assertTrue(now > index(half, MAY_DAY) && now < index(full, MAY_DAY), "" + now);
    }

    /** Half of the trees of a mixed wood keep their leaves, so that it is darker than a bare one. */
    @Test
    void keepsTheEvergreensOfAMixedWoodInLeaf() {
        Canopy canopy = AssumedWood.of(trip(Samples.wood(), "hepatica")).trip().site().canopy();
        double bare = index(new Canopy(Canopy.Trees.DECIDUOUS, Foliage.Stage.LEAFLESS, null), MAY_DAY);
        double full = index(new Canopy(Canopy.Trees.EVERGREEN, null, null), MAY_DAY);
        assertEquals((bare + full) / 2, index(canopy, MAY_DAY), 1e-12);
    }

    @Test
    void leavesOpenGroundAndDescribedTreesAsTheyAre() {
        assertNull(AssumedWood.of(trip(Samples.wood(), "fireweed")));
        assertNull(AssumedWood.of(trip(Samples.wood(), "foxglove")), "an edge is no wood");
        assertNull(AssumedWood.of(trip(Samples.wood().under(Canopy.NONE), "bluebell")), "canopy: none");
        assertNull(AssumedWood.of(Samples.trip(Samples.wood(), "09:00", "12:00", picture("own").shot())), "a subject of the author's");
    }

    @Test
    void takesTheFirstPictureFromTheCatalogue() {
        assertEquals("bluebell", AssumedWood.of(trip(Samples.wood(), "bluebell", "fireweed")).subject().key());
        assertNull(AssumedWood.of(trip(Samples.wood(), "fireweed", "bluebell")));
        Foliage none = AssumedWood.of(trip(Samples.wood(), "bush-lily")).trip().site().canopy().foliage();
        assertNull(none, "evergreens are in full leaf");
    }
}
