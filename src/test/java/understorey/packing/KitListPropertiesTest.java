package understorey.packing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AfterContainer;
import understorey.advice.Advice;
import understorey.advice.BagAdvice;
import understorey.kit.Intent;
import understorey.kit.LensFit;
import understorey.kit.RandomKit;
import understorey.kit.ShotFit;
import understorey.kit.SmallestBag;
import understorey.kit.Verdict;
import understorey.kit.camera.Things;
import understorey.plan.Bag;
import understorey.plan.Body;
import understorey.plan.Lens;

/** The list of things to take and to leave says the same as the table of cameras below each picture. */
class KitListPropertiesTest {

    private static final Map<Verdict, Integer> SEEN = new EnumMap<>(Verdict.class);
    private static final Set<Class<?>> WHY = new HashSet<>();

    @Property(tries = 300, shrinking = ShrinkingMode.OFF)
    void agreesWithTheTableOfCameras(@ForAll long seed) {
        Random random = new Random(seed);
        Bag bag = RandomKit.bag(random);
        List<Intent> intents = RandomKit.intents(random);
        SmallestBag smallest = SmallestBag.of(bag, List.of(), intents);
        CompanionBag listed = CompanionBag.of("Friend", smallest);
        Map<Object, Set<String>> uses = new IdentityHashMap<>();
        for (ShotFit fit : smallest.fits()) {
            LensFit best = fit.best();
            SEEN.merge(best == null ? Verdict.CANNOT : best.verdict(), 1, Integer::sum);
            if (best != null && best.verdict() != Verdict.CANNOT) {
                best.things().forEach(thing -> uses.computeIfAbsent(thing, none -> new HashSet<>()).add(fit.intent().shot().name()));
            }
        }
        assertEquals(Things.of(bag).stream().filter(uses::containsKey).map(Things::name).toList(),
                listed.take().stream().map(Packing.Item::name).toList());
        assertEquals(Things.of(bag).stream().filter(uses::containsKey).map(uses::get).toList(),
                listed.take().stream().map(item -> Set.copyOf(item.shots())).toList());
        for (SmallestBag.Left left : smallest.left()) {
            assertTrue(!uses.containsKey(left.thing()), () -> Things.name(left.thing()) + " is taken and left");
            WHY.add(left.why().getClass());
            if (left.thing() instanceof Body || left.thing() instanceof Lens) {
                reason(left, smallest);
            }
        }
    }

    /** What the reason claims of a thing is what the table shows for the cameras that need the thing. */
    private static void reason(SmallestBag.Left left, SmallestBag smallest) {
        Advice why = left.why();
        String claim = why + " for " + Things.name(left.thing());
        if (why instanceof BagAdvice.LeftAsWell well) {
            assertEquals(Verdict.FITS, table(left, well.shot(), smallest), claim);
            assertEquals(Verdict.FITS, best(well.shot(), smallest).verdict(), claim);
        } else if (why instanceof BagAdvice.LeftOutclassed less) {
            assertEquals(Verdict.FITS, table(left, less.shot(), smallest), claim);
            LensFit best = best(less.shot(), smallest);
            // By verdict first: a compromise may fall less short than a picture that fits.
            assertTrue(cameras(left, less.shot(), smallest).stream().allMatch(fit -> fit.verdict().compareTo(best.verdict()) > 0
                    || fit.verdict() == best.verdict() && fit.penalty() > best.penalty()), claim);
        } else if (why instanceof BagAdvice.LeftCompromise less) {
            assertEquals(Verdict.COMPROMISE, table(left, less.shot(), smallest), claim);
        } else if (why instanceof BagAdvice.LeftUnasked) {
            for (ShotFit fit : smallest.fits()) {
                boolean possible = fit.best() != null && fit.best().verdict() != Verdict.CANNOT;
                assertTrue(!possible || table(left, fit.intent().shot().name(), smallest) == Verdict.CANNOT, claim);
            }
        }
    }

    /** The best verdict in the table of a picture among the cameras that need the thing. */
    private static Verdict table(SmallestBag.Left left, String shot, SmallestBag smallest) {
        return cameras(left, shot, smallest).stream().map(LensFit::verdict).min(Verdict::compareTo).orElse(Verdict.CANNOT);
    }

    private static List<LensFit> cameras(SmallestBag.Left left, String shot, SmallestBag smallest) {
        return smallest.fits().stream().filter(fit -> fit.intent().shot().name().equals(shot)).flatMap(fit -> fit.tried().stream())
                .filter(fit -> fit.things().stream().anyMatch(thing -> thing == left.thing())).collect(Collectors.toList());
    }

    private static LensFit best(String shot, SmallestBag smallest) {
        return smallest.fits().stream().filter(fit -> fit.intent().shot().name().equals(shot)).findFirst().orElseThrow().best();
    }

    @AfterContainer
    static void seesEveryVerdictAndReason() {
        assertEquals(Verdict.values().length, SEEN.size(), SEEN::toString);
        assertTrue(WHY.containsAll(List.of(BagAdvice.LeftAsWell.class, BagAdvice.LeftOutclassed.class, BagAdvice.LeftCompromise.class,
                BagAdvice.LeftUnasked.class, BagAdvice.LeftSpared.class)), WHY::toString);
    }
}
