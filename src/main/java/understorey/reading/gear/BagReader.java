package understorey.reading.gear;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import understorey.plan.Bag;
import understorey.plan.Body;
import understorey.plan.Filter;
import understorey.plan.Lens;
import understorey.plan.Support;
import understorey.yaml.Fields;
import understorey.yaml.Names;
import understorey.yaml.finding.Findings;
import understorey.yaml.tree.Node;
import understorey.yaml.value.Dimension;

/** A bag, from its own file or from inside a trip. */
public final class BagReader {

    private static final int MOST_THINGS = 100;
    private static final double HEAVIEST_G = 50_000;

    private final Findings findings;

    private BagReader(Findings findings) {
        this.findings = findings;
    }

    /**
     * Reads a bag; null when it has errors.
     *
     * @param slug null for a bag written inside a trip
     */
    public static @Nullable Bag read(Node.Mapping node, @Nullable String slug, Findings findings) {
        int before = findings.errors();
        Bag bag = new BagReader(findings).bag(new Fields(node, "this bag", findings), slug);
        return findings.errors() > before ? null : bag;
    }

    private @Nullable Bag bag(Fields f, @Nullable String slug) {
        f.require("gear", "bodies");
        f.atMost(MOST_THINGS, "bodies", "lenses", "supports", "filters", "extras", "cards");
        String name = f.text("gear");
        List<Body> bodies = bodies(f);
        List<Lens> lenses = lenses(f, bodies);
        List<Support> supports = supports(f);
        List<Filter> filters = FilterReader.all(f);
        Boolean remote = f.yesNo("remote_release");
        List<Double> cards = new ArrayList<>();
        for (Node item : f.items("cards")) {
            cards.add(f.scalars().quantity(item, "an entry of 'cards'", Dimension.CARD_SIZE, 0.1, 100_000));
        }
        Integer batteries = f.whole("batteries", 0, 100);
        List<Bag.Extra> extras = f.each("extras", "this extra", BagReader::extra);
        f.done();
        return findings.errors() > 0 || name == null ? null : new Bag(name, slug, bodies, List.copyOf(lenses),
                supports, filters, Boolean.TRUE.equals(remote), List.copyOf(cards),
                batteries == null ? 0 : batteries, extras);
    }

    private static Bag.@Nullable Extra extra(Fields f) {
        String name = f.require("name").text("name");
        Double weight = weight(f);
        f.done();
        return name == null ? null : new Bag.Extra(name, weight);
    }

    private List<Body> bodies(Fields f) {
        Names names = new Names("body");
        List<Fields> blocks = f.blocks("bodies", "this body");
        if (f.has("bodies") && f.take("bodies") instanceof Node.Seq && blocks.isEmpty()) {
            f.refuse("bodies", "a bag needs at least one body", "list a camera under 'bodies'");
        }
        return blocks.stream().map(block -> OpticsReader.body(block, names)).filter(Objects::nonNull).toList();
    }

    private List<Lens> lenses(Fields f, List<Body> bodies) {
        Names names = new Names("lens");
        List<Lens> lenses = new ArrayList<>();
        for (Fields block : f.blocks("lenses", "this lens")) {
            String mount = block.require("mount").text("mount");
            Lens lens = OpticsReader.lens(block, names, mount, null);
            if (lens == null || mount == null) {
                continue;
            }
            lenses.add(lens);
            if (findings.errors() == 0 && bodies.stream().noneMatch(body -> mount.equals(body.mount()))) {
                findings.warning(block.at("mount"), "no body in this bag has the mount " + Node.quote(mount),
                        "a lens fits only bodies with the same mount");
            }
        }
        return lenses;
    }

    private static List<Support> supports(Fields f) {
        Names names = new Names("support");
        return f.each("supports", "this support", block -> {
            block.require("name", "kind");
            String name = names.claim(block, "name");
            Support.Kind kind = block.word("kind", Support.Kind.values());
            Double lowest = block.quantity("lowest", Dimension.LENGTH, 0, 5);
            Double highest = block.quantity("highest", Dimension.LENGTH, 0.01, 10);
            if (lowest != null && highest != null && lowest > highest) {
                block.refuse("highest", "'highest' is below 'lowest'", "swap them");
            }
            Double carries = block.quantity("carries", Dimension.MASS, 50, 200_000);
            Double weight = weight(block);
            block.done();
            return name == null || kind == null ? null
                    : new Support(name, kind, lowest, highest, carries == null ? null : Double.valueOf(carries / 1000), weight);
        });
    }

    /** Grams; null when not given. */
    static @Nullable Double weight(Fields f) {
        return f.quantity("weight", Dimension.MASS, 1, HEAVIEST_G);
    }
}
