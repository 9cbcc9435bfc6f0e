package understorey.kit;

import static understorey.reason.Figure.Measure.MILLIMETRES;

import java.util.List;
import understorey.plan.Bag;
import understorey.plan.Filter;
import understorey.plan.Lens;
import understorey.reason.Reason;

/**
 * The polariser that a picture asks for, found or not.
 *
 * @param filters   to put on, nearest the lens first; empty when none goes on
 * @param lossStops light that they take
 * @param reasons   empty when no polariser was asked for
 */
record Polarising(List<Filter> filters, double lossStops, List<Reason> reasons) {

    static Polarising of(Bag bag, Lens lens, boolean wanted) {
        if (!wanted) {
            return new Polarising(List.of(), 0, List.of());
        }
        if (lens.threadMm() == null) {
            return none(Reason.of(FitReason.POLARISER_NO_THREAD).with("lens", lens.name()));
        }
        List<Filter> polarisers = bag.filters().stream()
                .filter(filter -> filter.kind() == Filter.Kind.POLARISER && filter.threadMm() != null).toList();
        for (Filter filter : polarisers) {
            if (filter.threadMm().equals(lens.threadMm())) {
                return new Polarising(List.of(filter), filter.lossStops(),
                        List.of(Reason.of(FitReason.POLARISER_ON).with("filter", filter.name())));
            }
        }
        for (Filter filter : polarisers) {
            Filter ring = ring(bag, lens.threadMm(), filter.threadMm());
            if (ring != null) {
                return new Polarising(List.of(ring, filter), filter.lossStops(), List.of(
                        Reason.of(FitReason.POLARISER_BY_RING).with("filter", filter.name()).with("ring", ring.name())));
            }
        }
        for (Filter filter : polarisers) {
            if (filter.threadMm() > lens.threadMm()) {
                return none(Reason.of(FitReason.HELP_STEP_UP_RING).with("filter", filter.name())
                        .with("lens", lens.threadMm(), MILLIMETRES).with("thread", filter.threadMm(), MILLIMETRES));
            }
        }
        return none(Reason.of(FitReason.POLARISER_MISSING).with("thread", lens.threadMm(), MILLIMETRES));
    }

    boolean missing() {
        return filters.isEmpty() && !reasons.isEmpty();
    }

    private static Polarising none(Reason reason) {
        return new Polarising(List.of(), 0, List.of(reason));
    }

    private static Filter ring(Bag bag, double lensThreadMm, double filterThreadMm) {
        for (Filter filter : bag.filters()) {
            if (filter.kind() == Filter.Kind.STEP_UP_RING && filter.lensThreadMm() != null
                    && filter.filterThreadMm() != null && filter.lensThreadMm() == lensThreadMm
                    && filter.filterThreadMm() == filterThreadMm) {
                return filter;
            }
        }
        return null;
    }
}
