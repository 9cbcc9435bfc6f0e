package understorey.packing;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import understorey.exposure.Settings;
import understorey.kit.FitReason;
import understorey.kit.LensFit;
import understorey.plan.Bag;
import understorey.plan.Body;
import understorey.plan.Filter;
import understorey.plan.Lens;
import understorey.plan.Support;
import understorey.reason.Reason;

/**
 * What the pictures need of the bag, and what can stay at home.
 *
 * @param take      in the order of the bag; extras are always taken
 * @param leave     not needed for any picture
 * @param missing   what would have helped
 * @param weightG   of what is taken; items whose weight the bag does not give count nothing
 * @param unweighed how many of those there are
 * @param frames    expected, brackets counted
 * @param cardGb    that the RAW frames of those take; null when no body gives the size of a RAW file
 * @param batteries that they take; null when no body gives the frames a battery lasts
 */
public record Packing(List<Item> take, List<Item> leave, List<Reason> missing, double weightG, int unweighed,
                      int frames, Double cardGb, Integer batteries) {

    /** Frames that a picture takes to get right, before brackets: common practice, no source. */
    static final int FRAMES_A_PICTURE = 20;

    /** One thing in the bag; the weight is null when not given. */
    public record Item(String name, List<String> shots, Double weightG) {
    }

    /** One picture as it will be taken. */
    public record Use(LensFit fit, Settings settings) {
    }

    /**
     * Packs for the pictures that can be taken.
     *
     * @param helps what would help any picture, also those that cannot be taken
     */
    public static Packing of(Bag bag, List<Use> uses, List<Reason> helps) {
        Map<String, Set<String>> needed = new LinkedHashMap<>();
        Set<Reason> missing = new LinkedHashSet<>();
        for (Reason help : helps) {
            if (missing.stream().noneMatch(had -> same(had, help))) {
                missing.add(help);
            }
        }
        int frames = 0;
        double gigabytes = 0;
        Map<Body, Integer> framesByBody = new IdentityHashMap<>();
        boolean sized = false;
        for (Use use : uses) {
            need(use.fit(), needed);
            int here = FRAMES_A_PICTURE * use.settings().bracketStops().size();
            Body body = use.fit().camera().body();
            frames += here;
            sized |= body.rawSizeMb() != null;
            gigabytes += body.rawSizeMb() == null ? 0 : here * body.rawSizeMb() / 1000;
            framesByBody.merge(body, here, Integer::sum);
        }
        List<Item> take = new ArrayList<>();
        List<Item> leave = new ArrayList<>();
        for (Item item : items(bag)) {
            Set<String> shots = needed.get(item.name());
            if (shots != null) {
                take.add(new Item(item.name(), List.copyOf(shots), item.weightG()));
            } else {
                leave.add(item);
            }
        }
        List<String> steady = new ArrayList<>();
        for (Use use : uses) {
            if (bag.remoteRelease() && use.fit().steady()) {
                steady.add(use.fit().intent().shot().name());
            }
        }
        if (!steady.isEmpty()) {
            take.add(new Item("Remote release", List.copyOf(steady), null));
        }
        for (Bag.Extra extra : bag.extras()) {
            take.add(new Item(extra.name(), List.of(), extra.weightG()));
        }
        return new Packing(List.copyOf(take), List.copyOf(leave), List.copyOf(missing),
                take.stream().mapToDouble(item -> item.weightG() == null ? 0 : item.weightG()).sum(),
                (int) take.stream().filter(item -> item.weightG() == null).count(), frames,
                sized ? Double.valueOf(gigabytes) : null, batteries(framesByBody));
    }

    /** Each body takes batteries of its own. */
    private static Integer batteries(Map<Body, Integer> frames) {
        int batteries = 0;
        boolean known = false;
        for (Map.Entry<Body, Integer> body : frames.entrySet()) {
            Integer lasts = body.getKey().batteryFrames();
            if (lasts != null) {
                known = true;
                batteries += (body.getValue() + lasts - 1) / lasts;
            }
        }
        return known ? Integer.valueOf(batteries) : null;
    }

    /** One support is enough, at whatever height it is wanted. */
    private static boolean same(Reason had, Reason help) {
        return had.equals(help) || had.kind() == FitReason.HELP_SUPPORT && help.kind() == FitReason.HELP_SUPPORT;
    }

    private static void need(LensFit fit, Map<String, Set<String>> needed) {
        List<String> names = new ArrayList<>();
        names.add(fit.camera().body().name());
        if (!fit.camera().lens().builtIn()) {
            names.add(fit.camera().lens().name());
        }
        if (fit.camera().attachment() != null) {
            names.add(fit.camera().attachment().name());
        }
        if (fit.support() != null) {
            names.add(fit.support().name());
        }
        fit.filters().forEach(filter -> names.add(filter.name()));
        for (String name : names) {
            needed.computeIfAbsent(name, any -> new LinkedHashSet<>()).add(fit.intent().shot().name());
        }
    }

    private static List<Item> items(Bag bag) {
        List<Item> items = new ArrayList<>();
        for (Body body : bag.bodies()) {
            items.add(new Item(body.name(), List.of(), body.weightG()));
        }
        for (Lens lens : bag.lenses()) {
            items.add(new Item(lens.name(), List.of(), lens.weightG()));
        }
        for (Support support : bag.supports()) {
            items.add(new Item(support.name(), List.of(), support.weightG()));
        }
        for (Filter filter : bag.filters()) {
            items.add(new Item(filter.name(), List.of(), filter.weightG()));
        }
        return items;
    }
}
