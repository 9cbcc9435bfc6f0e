package understorey.packing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.BagAdvice;
import understorey.advice.HelpAdvice;
import understorey.exposure.Settings;
import understorey.kit.LensFit;
import understorey.kit.SmallestBag;
import understorey.plan.Bag;
import understorey.plan.Body;
import understorey.plan.Filter;
import understorey.plan.Lens;
import understorey.plan.Support;
import understorey.visit.HeadTorchHours;

/**
 * Packing list: the things of the bag that the pictures need, and those that can stay at home.
 *
 * @param take      in the order of the bag; extras are the author's choice and are always taken
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

    /** Shutter speed from which a finger on the release blurs, and a timer misses the lull: common practice, no source. */
    private static final double LONG_S = 1;
    /** Words of authors for a head torch, in lower case. */
    private static final List<String> LAMPS = List.of("torch", "lamp", "flashlight");

    /** One thing in the bag; the reason is null for a thing that is taken. */
    public record Item(String name, List<String> shots, @Nullable Double weightG, @Nullable Advice why) {
    }

    /**
     * A picture that can be taken.
     *
     * @param fit     with the smallest bag
     * @param dimming neutral density filters and their rings for a brighter light that is likely
     */
    public record Use(LensFit fit, Settings settings, List<Filter> dimming) {
    }

    /**
     * The packing list.
     *
     * @param uses     the pictures that can be taken; nothing is packed for the others
     * @param helps    things that would help any picture
     * @param coldestC while the visit lasts, °C; null if unknown
     */
    public static Packing of(SmallestBag bag, List<Use> uses, List<Advice> helps, @Nullable Double coldestC, HeadTorchHours torch) {
        List<Advice> missing = new ArrayList<>();
        helps.forEach(help -> add(help, missing));
        Map<String, Set<String>> needed = new LinkedHashMap<>();
        for (Use use : uses) {
            need(use.fit(), needed);
            need(use.fit(), use.dimming(), needed);
        }
        Supplies supplies = Supplies.of(bag.whole(), uses, coldestC);
        missing.addAll(supplies.lacking());
        release(uses, missing);
        if (dark(torch) && !hasLamp(bag.whole())) {
            missing.add(new BagAdvice.HelpLamp());
        }
        List<Item> take = new ArrayList<>();
        List<Item> leave = new ArrayList<>();
        for (Item item : items(bag.whole())) {
            Set<String> shots = needed.get(item.name());
            if (shots != null) {
                take.add(new Item(item.name(), List.copyOf(shots), item.weightG(), null));
            } else {
                leave.add(new Item(item.name(), List.of(), item.weightG(), why(item, bag)));
            }
        }
        others(bag.whole(), uses, take);
        double weightG = 0;
        int unweighed = 0;
        for (Item item : take) {
            weightG += item.weightG() == null ? 0 : item.weightG();
            unweighed += item.weightG() == null ? 1 : 0;
        }
        return new Packing(List.copyOf(take), List.copyOf(leave), List.copyOf(missing), weightG, unweighed,
                supplies.frames(), supplies.cardGb(), supplies.batteries());
    }

    /** Adds a thing once; one support is enough for all heights. */
    private static void add(Advice help, List<Advice> missing) {
        for (Advice had : missing) {
            if (had.equals(help) || had instanceof HelpAdvice.HelpSupport && help instanceof HelpAdvice.HelpSupport) {
                return;
            }
        }
        missing.add(help);
    }

    /** Adds a remote release for the longest shutter speed on a support without one. */
    private static void release(List<Use> uses, List<Advice> missing) {
        Use longest = null;
        for (Use use : uses) {
            if (use.fit().steady() && !use.fit().released() && use.settings().shutterS() >= LONG_S
                    && (longest == null || use.settings().shutterS() > longest.settings().shutterS())) {
                longest = use;
            }
        }
        if (longest != null) {
            missing.add(new BagAdvice.HelpRelease(longest.fit().intent().shot().name(), longest.settings().shutterS()));
        }
    }

    private static boolean dark(HeadTorchHours lamp) {
        return lamp.allDay() || lamp.until() != null || lamp.from() != null;
    }

    private static boolean hasLamp(Bag bag) {
        for (Bag.Extra extra : bag.extras()) {
            String name = extra.name().toLowerCase(Locale.ROOT);
            for (String lamp : LAMPS) {
                if (name.contains(lamp)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static Advice why(Item item, SmallestBag bag) {
        for (SmallestBag.Left left : bag.left()) {
            if (left.name().equals(item.name())) {
                return left.why();
            }
        }
        return new BagAdvice.LeftNoLight();
    }

    /** Adds the remote release for pictures on a steady support, and the extras. */
    private static void others(Bag bag, List<Use> uses, List<Item> take) {
        List<String> steady = new ArrayList<>();
        for (Use use : uses) {
            if (bag.remoteRelease() && use.fit().steady()) {
                steady.add(use.fit().intent().shot().name());
            }
        }
        if (!steady.isEmpty()) {
            take.add(new Item("Remote release", List.copyOf(steady), null, null));
        }
        for (Bag.Extra extra : bag.extras()) {
            take.add(new Item(extra.name(), List.of(), extra.weightG(), null));
        }
    }

    /** Adds the things of a picture to those needed, with the name of the picture. */
    static void need(LensFit fit, Map<String, Set<String>> needed) {
        List<String> names = new ArrayList<>();
        names.add(fit.camera().body().name());
        if (!fit.camera().lens().builtIn()) {
            names.add(fit.camera().lens().name());
        }
        if (fit.camera().attachment() != null) {
            names.add(fit.camera().attachment().name());
        }
        if (fit.camera().ring() != null) {
            names.add(fit.camera().ring().name());
        }
        if (fit.support() != null) {
            names.add(fit.support().name());
        }
        for (String name : names) {
            need(name, fit, needed);
        }
        need(fit, fit.filters(), needed);
    }

    private static void need(LensFit fit, List<Filter> filters, Map<String, Set<String>> needed) {
        for (Filter filter : filters) {
            need(filter.name(), fit, needed);
        }
    }

    private static void need(String name, LensFit fit, Map<String, Set<String>> needed) {
        if (!needed.containsKey(name)) {
            needed.put(name, new LinkedHashSet<>());
        }
        needed.get(name).add(fit.intent().shot().name());
    }

    /** All things of a bag without its extras, in order, without pictures. */
    static List<Item> items(Bag bag) {
        List<Item> items = new ArrayList<>();
        for (Body body : bag.bodies()) {
            items.add(new Item(body.name(), List.of(), body.weightG(), null));
        }
        for (Lens lens : bag.lenses()) {
            items.add(new Item(lens.name(), List.of(), lens.weightG(), null));
        }
        for (Support support : bag.supports()) {
            items.add(new Item(support.name(), List.of(), support.weightG(), null));
        }
        for (Filter filter : bag.filters()) {
            items.add(new Item(filter.name(), List.of(), filter.weightG(), null));
        }
        return items;
    }
}
