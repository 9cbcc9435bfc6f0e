package understorey.packing;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.BagAdvice;
import understorey.advice.HelpAdvice;
import understorey.exposure.Settings;
import understorey.kit.LensFit;
import understorey.kit.SmallestBag;
import understorey.kit.camera.Things;
import understorey.plan.Bag;
import understorey.plan.Filter;

/**
 * Packing list: the things of the bag that the pictures need, and those that can stay at home.
 *
 * @param take      in the order of the bag; extras are the author's choice: only a head torch may be left in daylight, a rain cover on a dry day
 * @param leave     not needed for any picture, each with the reason
 * @param missing   things that would help, to borrow or to buy
 * @param weightG   of the things taken; those without a given weight count as 0
 * @param unweighed number of things without a given weight
 * @param frames    expected, brackets and focus stacks counted
 * @param cardGb    of the RAW frames; null if no body gives the size of a RAW file
 * @param batteries for the frames, in the cold; null if no body gives the frames per battery
 */
public record Packing(List<Item> take, List<Item> leave, List<Advice> missing, double weightG, int unweighed,
                      int frames, @Nullable Double cardGb, @Nullable Integer batteries) {

    /** Shutter speed, s, from which a finger on the release blurs, and a timer misses the lull: common practice, no source. */
    private static final double LONG_S = 1;
    /** Words of authors for a head torch, in lower case. */
    private static final List<String> LAMPS = List.of("torch", "lamp", "flashlight");
    /** Words of authors for a rain cover, in lower case. */
    private static final List<String> COVERS = List.of("rain");

    /** One thing in the bag; the reason is null for a thing that is taken. */
    public record Item(String name, List<String> shots, @Nullable Double weightG, @Nullable Advice why) {
    }

    /**
     * A picture that can be taken.
     *
     * @param fit     with the smallest bag
     * @param dimming filters that take light and their rings for a brighter light that is likely
     */
    public record Use(LensFit fit, Settings settings, List<Filter> dimming) {
    }

    /**
     * The packing list.
     *
     * @param uses     the pictures that can be taken; nothing is packed for the others
     * @param helps    things that would help any picture
     */
    public static Packing of(SmallestBag bag, List<Use> uses, List<Advice> helps, Outdoors outdoors) {
        List<Advice> missing = new ArrayList<>();
        helps.stream().filter(HelpAdvice.Thing.class::isInstance).forEach(help -> add(help, missing));
        Supplies supplies = Supplies.of(bag.whole(), uses, outdoors.coldestC());
        missing.addAll(supplies.lacking());
        release(uses, missing);
        if (outdoors.torch().needed() && bag.whole().extras().stream().noneMatch(extra -> is(extra, LAMPS))) {
            missing.add(new BagAdvice.HelpLamp());
        }
        Map<Object, Set<String>> needed = needed(uses.stream().map(Use::fit));
        uses.forEach(use -> need(use.fit(), use.dimming(), needed));
        List<Item> take = new ArrayList<>(taken(bag.whole(), needed));
        List<Item> leave = new ArrayList<>(Things.of(bag.whole()).stream().filter(thing -> !needed.containsKey(thing))
                .map(thing -> new Item(Things.name(thing), List.of(), Things.weightG(thing), why(thing, bag))).toList());
        others(bag.whole(), uses, outdoors, take, leave);
        return new Packing(List.copyOf(take), List.copyOf(leave), List.copyOf(missing), weightG(take), unweighed(take),
                supplies.frames(), supplies.cardGb(), supplies.batteries());
    }

    static double weightG(List<Item> items) {
        return items.stream().map(Item::weightG).filter(Objects::nonNull).mapToDouble(weight -> weight).sum();
    }

    static int unweighed(List<Item> items) {
        return (int) items.stream().filter(item -> item.weightG() == null).count();
    }

    /** Adds a thing once; one support is enough for all heights. */
    private static void add(Advice help, List<Advice> missing) {
        if (missing.stream().noneMatch(had -> had.equals(help)
                || had instanceof HelpAdvice.HelpSupport && help instanceof HelpAdvice.HelpSupport)) {
            missing.add(help);
        }
    }

    /** Adds a remote release for the longest shutter speed on a support without one. */
    private static void release(List<Use> uses, List<Advice> missing) {
        uses.stream().filter(use -> use.fit().steady() && !use.fit().released() && use.settings().shutterS() >= LONG_S)
                .reduce((longest, use) -> use.settings().shutterS() > longest.settings().shutterS() ? use : longest)
                .ifPresent(use -> missing.add(new BagAdvice.HelpRelease(use.fit().intent().shot().name(), use.settings().shutterS())));
    }

    private static boolean is(Bag.Extra extra, List<String> words) {
        String name = extra.name().toLowerCase(Locale.ROOT);
        return words.stream().anyMatch(name::contains);
    }

    /** Why an extra stays at home; null for one that is taken. */
    private static @Nullable Advice spare(Bag.Extra extra, Outdoors outdoors) {
        return is(extra, LAMPS) && outdoors.light() ? new BagAdvice.LeftLight()
                : is(extra, COVERS) && outdoors.dry() ? new BagAdvice.LeftDry() : null;
    }

    private static Advice why(Object thing, SmallestBag bag) {
        return bag.left().stream().filter(left -> left.thing() == thing).map(SmallestBag.Left::why).findFirst()
                .orElseGet(BagAdvice.LeftNoLight::new);
    }

    /** Adds the remote release for pictures on a steady support, and the extras. */
    private static void others(Bag bag, List<Use> uses, Outdoors outdoors, List<Item> take, List<Item> leave) {
        List<String> steady = uses.stream().filter(use -> bag.remoteRelease() && use.fit().steady())
                .map(use -> use.fit().intent().shot().name()).toList();
        if (!steady.isEmpty()) {
            take.add(new Item("Remote release", steady, null, null));
        }
        for (Bag.Extra extra : bag.extras()) {
            Advice spare = spare(extra, outdoors);
            (spare == null ? take : leave).add(new Item(extra.name(), List.of(), extra.weightG(), spare));
        }
    }

    /** The names of the pictures that need a thing, thing by thing: two things may have one name. */
    static Map<Object, Set<String>> needed(Stream<LensFit> fits) {
        Map<Object, Set<String>> needed = new IdentityHashMap<>();
        fits.forEach(fit -> need(fit, fit.things(), needed));
        return needed;
    }

    private static void need(LensFit fit, List<?> things, Map<Object, Set<String>> needed) {
        things.forEach(thing -> needed.computeIfAbsent(thing, none -> new LinkedHashSet<>()).add(fit.intent().shot().name()));
    }

    /** The things of a bag that some picture needs, in order. */
    static List<Item> taken(Bag bag, Map<Object, Set<String>> needed) {
        return Things.of(bag).stream().filter(needed::containsKey).map(thing -> new Item(Things.name(thing),
                List.copyOf(needed.getOrDefault(thing, Set.of())), Things.weightG(thing), null)).toList();
    }
}
