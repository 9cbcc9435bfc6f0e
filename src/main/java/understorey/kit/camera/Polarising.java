package understorey.kit.camera;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.FitAdvice;
import understorey.advice.HelpAdvice;
import understorey.plan.Bag;
import understorey.plan.Filter;
import understorey.plan.Lens;

/**
 * The polariser that a picture asks for, found or not.
 *
 * @param filters    to put on, nearest the lens first; empty when none goes on
 * @param lossStops  light that they take
 * @param reasons    empty when no polariser was asked for
 * @param shortfalls that something in the bag or the shop makes good; none for a lens without thread
 */
public record Polarising(List<Filter> filters, double lossStops, List<Advice> reasons, List<Shortfall> shortfalls) {

    public static Polarising of(Bag bag, Lens lens, boolean wanted) {
        if (!wanted) {
            return new Polarising(List.of(), 0, List.of(), List.of());
        }
        Double threadMm = lens.threadMm();
        if (threadMm == null) {
            return none(new FitAdvice.PolariserNoThread(lens.name()), List.of());
        }
        List<List<Filter>> ways = ways(bag, lens);
        if (!ways.isEmpty()) {
            List<Filter> first = ways.get(0);
            Filter polariser = first.get(first.size() - 1);
            return new Polarising(first, polariser.lossStops(), List.of(first.size() == 1
                    ? new FitAdvice.PolariserOn(polariser.name())
                    : new FitAdvice.PolariserByRing(polariser.name(), first.get(0).name())), List.of());
        }
        for (Filter filter : threaded(bag, Filter.Kind.POLARISER)) {
            if (filter.threadMm() != null && filter.threadMm() > threadMm) {
                return none(new HelpAdvice.HelpStepUpRing(threadMm, filter.threadMm(), filter.name()),
                        List.of(new Shortfall.NoRing(filter, threadMm)));
            }
        }
        return none(new FitAdvice.PolariserMissing(threadMm), List.of(new Shortfall.NoPolariser(threadMm)));
    }

    public boolean missing() {
        return filters.isEmpty() && !reasons.isEmpty();
    }

    private static Polarising none(Advice reason, List<Shortfall> shortfalls) {
        return new Polarising(List.of(), 0, List.of(reason), shortfalls);
    }

    /** Filters to put on, nearest the lens first: each polariser that fits directly, then each one with each ring. */
    public static List<List<Filter>> ways(Bag bag, Lens lens) {
        return ways(bag, Filter.Kind.POLARISER, lens.threadMm());
    }

    /** The ways for filters of any kind, on a thread; null for a lens without thread. */
    public static List<List<Filter>> ways(Bag bag, Filter.Kind kind, @Nullable Double threadMm) {
        List<List<Filter>> ways = new ArrayList<>();
        List<Filter> filters = threaded(bag, kind);
        for (Filter filter : filters) {
            if (threadMm != null && threadMm.equals(filter.threadMm())) {
                ways.add(List.of(filter));
            }
        }
        for (Filter filter : filters) {
            for (Filter ring : bag.filters()) {
                if (joins(ring, threadMm, filter.threadMm())) {
                    ways.add(List.of(ring, filter));
                }
            }
        }
        return ways;
    }

    /** Whether it is a ring that puts a filter of one thread on a lens of another; null for a lens without thread. */
    static boolean joins(Filter ring, @Nullable Double lensThreadMm, @Nullable Double filterThreadMm) {
        return ring.kind() == Filter.Kind.STEP_UP_RING && ring.lensThreadMm() != null
                && ring.lensThreadMm().equals(lensThreadMm) && Objects.equals(filterThreadMm, ring.filterThreadMm());
    }

    private static List<Filter> threaded(Bag bag, Filter.Kind kind) {
        return bag.filters().stream().filter(filter -> filter.kind() == kind && filter.threadMm() != null).toList();
    }
}
