package understorey.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AfterContainer;
import understorey.kit.camera.Things;
import understorey.plan.Bag;
import understorey.plan.Body;
import understorey.plan.Filter;
import understorey.plan.Lens;
import understorey.plan.Role;
import understorey.plan.Support;

/** Random small bags against every one of their parts, planned for as if it were the whole bag. */
class SmallestBagPropertiesTest {

    private static final Set<Role> ROLES = EnumSet.noneOf(Role.class);
    private static int lighter;

    /** What a part of the bag does. */
    private record Part(List<Integer> things, List<Integer> keptByPriority, double grams, int changes, List<Intent> lost) {

        static final Comparator<Part> BEST_FIRST = Comparator
                .comparing((Part part) -> part.keptByPriority.get(2)).reversed()
                .thenComparing(part -> -part.keptByPriority.get(1)).thenComparing(part -> -part.keptByPriority.get(0))
                .thenComparing(Part::grams).thenComparing(Part::changes).thenComparing(part -> part.things.size())
                .thenComparing(Part::things, SmallestBagPropertiesTest::fileOrder);
    }

    private static int fileOrder(List<Integer> one, List<Integer> other) {
        for (int i = 0; i < Math.min(one.size(), other.size()); i++) {
            if (!one.get(i).equals(other.get(i))) {
                return Integer.compare(one.get(i), other.get(i));
            }
        }
        return Integer.compare(one.size(), other.size());
    }

    @Property(tries = 200, shrinking = ShrinkingMode.OFF)
    void carriesWhatBruteForceCarries(@ForAll long seed) {
        Random random = new Random(seed);
        Bag bag = RandomKit.bag(random);
        List<Intent> intents = RandomKit.intents(random);
        SmallestBag smallest = SmallestBag.of(bag, List.of(), intents);
        Part expected = bruteForce(bag, intents);
        assertEquals(names(part(bag, expected.things())), names(smallest.kept()), () -> bag + "\n" + intents);
        assertEquals(List.of(), expected.lost());
        for (int i = 0; i < intents.size(); i++) {
            assertTheSame(WholeBag.fit(intents.get(i), smallest.kept()).best(), smallest.fits().get(i).best(),
                    WholeBag.fit(intents.get(i), bag).best());
        }
        intents.forEach(intent -> ROLES.add(intent.role()));
        lighter += !expected.things().isEmpty() && expected.things().size() < items(bag).size() ? 1 : 0;
    }

    /** So that the property is seen to try what it claims. */
    @AfterContainer
    static void triesEveryKindOfBag() {
        assertEquals(EnumSet.allOf(Role.class), ROLES);
        assertTrue(lighter > 80, () -> lighter + " bags were lighter");
    }

    private static void assertTheSame(LensFit alone, LensFit chosen, LensFit whole) {
        if (alone == null || whole.verdict() == Verdict.CANNOT) {
            assertTrue(chosen == null || chosen.verdict() == Verdict.CANNOT);
            return;
        }
        assertEquals(alone.verdict(), chosen.verdict());
        assertEquals(alone.camera(), chosen.camera());
        assertSame(alone.support(), chosen.support());
        assertEquals(alone.filters(), chosen.filters());
        assertEquals(alone.heightM(), chosen.heightM());
    }

    private static Part bruteForce(Bag bag, List<Intent> intents) {
        List<LensFit> goals = new ArrayList<>();
        intents.forEach(intent -> goals.add(WholeBag.fit(intent, bag).best()));
        int count = items(bag).size();
        Part best = null;
        for (int set = 0; set < 1 << count; set++) {
            List<Integer> things = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                if ((set >> i) % 2 == 1) {
                    things.add(i);
                }
            }
            Part part = judged(bag, things, intents, goals);
            if (best == null || Part.BEST_FIRST.compare(part, best) < 0) {
                best = part;
            }
        }
        return best;
    }

    private static Part judged(Bag bag, List<Integer> things, List<Intent> intents, List<LensFit> goals) {
        Bag part = part(bag, things);
        Map<Body, String> mounted = new HashMap<>();
        List<Integer> kept = new ArrayList<>(List.of(0, 0, 0));
        List<Intent> lost = new ArrayList<>();
        int changes = 0;
        for (int i = 0; i < intents.size(); i++) {
            LensFit goal = goals.get(i);
            if (goal == null || goal.verdict() == Verdict.CANNOT) {
                continue;
            }
            LensFit best = WholeBag.fit(intents.get(i), part).best();
            if (best == null || !matches(best, goal)) {
                lost.add(intents.get(i));
                continue;
            }
            int at = intents.get(i).priority() - 1;
            kept.set(at, kept.get(at) + 1);
            if (best.camera().lens().mount() != null) {
                Filter tube = best.camera().tubeMm() > 0 ? best.camera().attachment() : null;
                String now = best.camera().lens().name() + tube;
                String before = mounted.put(best.camera().body(), now);
                changes += before == null || before.equals(now) ? 0 : 1;
            }
        }
        double grams = things.stream().map(items(bag)::get).map(SmallestBagPropertiesTest::grams)
                .filter(Objects::nonNull).mapToDouble(weight -> weight).sum();
        return new Part(things, kept, grams, changes, lost);
    }

    /** Craft before weight: a lens that fits may also give way by half a stop only. */
    private static boolean matches(LensFit best, LensFit goal) {
        boolean lens = best.verdict().compareTo(goal.verdict()) <= 0 && best.verdict() != Verdict.CANNOT
                && best.penalty() <= goal.penalty() + 0.5;
        boolean polariser = goal.filters().isEmpty() || !best.filters().isEmpty();
        boolean held = goal.support() == null || best.steady()
                || !goal.steady() && best.support() != null;
        return lens && polariser && held && Math.abs(best.heightM() - goal.heightM()) <= 0.1;
    }

    private static Bag part(Bag bag, List<Integer> things) {
        List<Object> all = items(bag);
        List<Body> bodies = new ArrayList<>();
        List<Lens> lenses = new ArrayList<>();
        List<Support> supports = new ArrayList<>();
        List<Filter> filters = new ArrayList<>();
        for (int i : things) {
            Object thing = all.get(i);
            if (thing instanceof Body body) {
                bodies.add(body);
            } else if (thing instanceof Lens lens) {
                lenses.add(lens);
            } else if (thing instanceof Support support) {
                supports.add(support);
            } else {
                filters.add((Filter) thing);
            }
        }
        return new Bag(bag.name(), null, bodies, lenses, supports, filters, false, List.of(), 0, List.of());
    }

    private static List<Object> items(Bag bag) {
        List<Object> items = new ArrayList<>();
        items.addAll(bag.bodies());
        items.addAll(bag.lenses());
        items.addAll(bag.supports());
        items.addAll(bag.filters());
        return items;
    }

    private static List<String> names(Bag bag) {
        return items(bag).stream().map(Things::name).toList();
    }

    private static Double grams(Object thing) {
        return thing instanceof Body body ? body.weightG() : thing instanceof Lens lens ? lens.weightG()
                : thing instanceof Support support ? support.weightG() : ((Filter) thing).weightG();
    }
}
