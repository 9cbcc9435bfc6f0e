package understorey.reading.gear;

import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.plan.Filter;
import understorey.yaml.Fields;
import understorey.yaml.Names;
import understorey.yaml.value.Dimension;

/** Reads the filters, rings and tubes of a bag; each kind has its own required keys. */
final class FilterReader {

    private FilterReader() {
    }

    static List<Filter> all(Fields bag) {
        Names names = new Names("filter");
        List<Filter> filters = bag.each("filters", "this filter", block -> filter(block, names));
        return bag.findings().errors() > 0 ? List.of() : filters;
    }

    private static @Nullable Filter filter(Fields f, Names names) {
        f.require("name", "kind");
        String name = names.claim(f, "name");
        Filter.Kind kind = f.word("kind", Filter.Kind.values());
        if (kind != null) {
            f.require(owed(kind));
        }
        Double thread = thread(f, "thread");
        Double loss = f.quantity("loss", Dimension.STOPS, 0, 30);
        Double lensThread = thread(f, "lens_thread");
        Double filterThread = thread(f, "filter_thread");
        if (lensThread != null && filterThread != null && filterThread <= lensThread) {
            f.refuse("filter_thread", "a step-up ring must have the larger thread on the filter side",
                    "swap 'lens_thread' and 'filter_thread'");
        }
        Double dioptres = f.quantity("dioptres", Dimension.DIOPTRES, 0.1, 50);
        Double length = f.quantity("length", Dimension.SMALL_LENGTH, 1, 500);
        Double weight = BagReader.weight(f);
        f.done();
        return name == null || kind == null ? null
                : new Filter(name, kind, thread, loss == null ? 0 : loss, lensThread, filterThread, dioptres, length,
                weight);
    }

    private static String[] owed(Filter.Kind kind) {
        return switch (kind) {
            case STEP_UP_RING -> new String[] {"lens_thread", "filter_thread"};
            case CLOSE_UP_LENS -> new String[] {"thread", "dioptres"};
            case EXTENSION_TUBE -> new String[] {"length"};
            default -> new String[] {"thread", "loss"};
        };
    }

    private static @Nullable Double thread(Fields f, String key) {
        return f.quantity(key, Dimension.SMALL_LENGTH, 10, 300);
    }
}
