package understorey;

import java.util.ArrayList;
import java.util.List;
import understorey.RandomValues.Block;

/** A bag whose values lie at the limits that the readers allow. */
final class RandomBag {

    private final RandomValues r;

    RandomBag(RandomValues values) {
        r = values;
    }

    Block bag() {
        boolean builtIn = r.chance(3);
        List<Block> bodies = new ArrayList<>();
        bodies.add(builtIn ? phone() : body());
        List<Block> lenses = new ArrayList<>();
        for (int i = builtIn ? 0 : 1 + r.upTo(2); i > 0; i--) {
            lenses.add(lens("Lens " + i).put("mount", "A"));
        }
        return r.block().put("gear", "Any bag").put("bodies", bodies).put("lenses", lenses).maybe("supports", supports())
                .maybe("filters", filters()).maybe("remote_release", r.any("yes", "no"))
                .maybe("cards", List.of(r.of(0.1, 100_000, "GB"))).maybe("batteries", r.whole(0, 100))
                .maybe("extras", List.of(r.block().put("name", "Mat").maybe("weight", weight())));
    }

    private String weight() {
        return r.of(1, 50_000, "g");
    }

    private Block anyBody(String name) {
        int base = r.chance(2) ? 100 : r.whole(1, 1_000_000);
        return r.block().put("name", name).put("pixels", r.of(0.1, 1000, "Mpx")).maybe("base_iso", base)
                .maybe("top_iso", r.whole(Math.max(base, 100), 10_000_000)).maybe("stabilised", r.of(0, 12, "stops"))
                .maybe("raw_size", r.of(0.1, 10_000, "MB")).maybe("battery", r.of(1, 100_000, "frames"))
                .maybe("weight", weight());
    }

    private Block body() {
        return anyBody("Body").put("mount", "A").put("sensor", r.chance(2) ? "full-frame" : sensor());
    }

    private Block phone() {
        List<Block> fixed = new ArrayList<>();
        for (int i = r.upTo(1); i >= 0; i--) {
            fixed.add(lens("Fixed " + i).put("sensor", sensor()));
        }
        return anyBody("Pocket").put("fixed_lenses", fixed);
    }

    private Object sensor() {
        if (r.chance(2)) {
            return r.any("aps-c", "four-thirds", "one-inch");
        }
        double height = r.number(0.5, 500);
        return r.block().put("width", r.of(height, 500, "mm")).put("height", RandomValues.written(height) + " mm");
    }

    private Block lens(String name) {
        double focal = r.number(0.5, 3000);
        double widest = r.number(0.5, 45);
        boolean zoom = r.chance(3);
        return r.block().put("name", name)
                .put("focal", zoom ? RandomValues.written(focal) + "-" + r.of(focal, 3000, "mm")
                        : RandomValues.written(focal) + " mm")
                .put("aperture", "f/" + RandomValues.written(widest)
                        + (zoom && r.chance(2) ? "-" + RandomValues.written(r.number(widest, 45)) : ""))
                .maybe("smallest_aperture", "f/" + RandomValues.written(r.number(r.chance(8) ? widest : Math.max(widest, 45), 128)))
                .put("closest", r.of(Math.max(focal / 1000 + 0.0001, 0.001), 100, "m")).maybe("magnification", r.number(0.0001, 20))
                .maybe("thread", r.of(10, 300, "mm")).maybe("stabilised", r.of(0, 12, "stops"))
                .maybe("weight", weight());
    }

    private List<Block> supports() {
        List<Block> supports = new ArrayList<>();
        for (int i = r.upTo(2); i > 0; i--) {
            double lowest = r.number(0, 5);
            supports.add(r.block().put("name", "Support " + i)
                    .put("kind", r.any("tripod", "monopod", "beanbag", "ground plate"))
                    .maybe("lowest", RandomValues.written(lowest) + " m").maybe("highest", r.of(Math.max(lowest, 0.01), 10, "m"))
                    .maybe("carries", r.of(50, 200_000, "g")).maybe("weight", weight()));
        }
        return supports;
    }

    private List<Block> filters() {
        List<Block> filters = new ArrayList<>();
        double thread = r.number(10, 299);
        filters.add(r.block().put("name", "Polariser").put("kind", "polariser").put("thread", r.of(10, 300, "mm"))
                .put("loss", r.of(0, 30, "stops")));
        filters.add(r.block().put("name", "Grey").put("kind", "neutral density").put("thread", r.of(10, 300, "mm"))
                .put("loss", r.of(0, 30, "stops")));
        filters.add(r.block().put("name", "Ring").put("kind", "step-up ring")
                .put("lens_thread", RandomValues.written(thread) + " mm").put("filter_thread", r.of(thread + 1, 300, "mm")));
        filters.add(r.block().put("name", "Close-up").put("kind", "close-up lens").put("thread", r.of(10, 300, "mm"))
                .put("dioptres", r.of(0.1, 50, "dpt")));
        filters.add(r.block().put("name", "Tube").put("kind", "extension tube").put("length", r.of(1, 500, "mm")));
        return filters.subList(r.upTo(4), 5);
    }
}
