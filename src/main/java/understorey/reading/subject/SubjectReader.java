package understorey.reading.subject;

import org.jspecify.annotations.Nullable;
import understorey.plan.Subject;
import understorey.reading.files.Slug;
import understorey.yaml.Fields;
import understorey.yaml.tree.Node;
import understorey.yaml.value.Dimension;

/** Reads a subject that the author describes, in a shot or in a site's list. */
final class SubjectReader {

    enum Hemisphere { NORTH, SOUTH }

    private SubjectReader() {
    }

    /** Null when the block has errors. */
    static @Nullable Subject read(Fields f) {
        int before = f.findings().errors();
        f.require("name");
        String name = f.text("name");
        String key = f.text("key");
        String scientific = f.text("scientific_name");
        Months months = months(f);
        Subject.Stems stems = f.in("stems", SubjectReader::stems);
        Heights height = f.in("height", SubjectReader::height);
        Double width = f.quantity("flower_width", Dimension.SMALL_LENGTH, 0.5, 1000);
        Integer open = f.whole("flowers_open", 1, 10_000);
        Subject.AreaIndex index = f.in("flower_area_index", SubjectReader::areaIndex);
        Subject.Reflectance reflectance = f.word("reflectance", Subject.Reflectance.values());
        String colour = f.text("colour");
        String habitat = f.prose("habitat");
        String care = f.prose("care");
        Hemisphere hemisphere = f.word("hemisphere", Hemisphere.values());
        f.done();
        if (f.findings().errors() > before || name == null) {
            return null;
        }
        return new Subject(key == null ? Slug.of(name) : key, name, scientific, null, hemisphere == Hemisphere.SOUTH,
                months.first(), months.last(), null, stems, height == null ? null : height.low(),
                height == null ? null : height.high(), width, open, index, reflectance, colour,
                habitat, care, null, null);
    }

    private record Months(@Nullable Integer first, @Nullable Integer last) {
    }

    private static Months months(Fields f) {
        Node node = f.take("months");
        if (node instanceof Node.Seq list && list.items().size() == 2) {
            return new Months(f.scalars().whole(list.items().get(0), "each entry of 'months'", 1, 12),
                    f.scalars().whole(list.items().get(1), "each entry of 'months'", 1, 12));
        }
        if (node instanceof Node.Mapping mapping) {
            Fields block = new Fields(mapping, "'months'", f.findings()).require("first", "last");
            Months months = new Months(block.whole("first", 1, 12), block.whole("last", 1, 12));
            block.done();
            return months;
        }
        if (node != null) {
            f.refuse("months", node instanceof Node.Seq ? "'months' needs the first and the last month"
                    : "'months' must be the first and the last month, not " + node.described(), "for example [4, 6]");
        }
        return new Months(null, null);
    }

    private static Subject.@Nullable Stems stems(Fields f) {
        f.require("sparse", "typical", "thick");
        Double sparse = f.quantity("sparse", Dimension.DENSITY, 0, 10_000);
        Double typical = f.quantity("typical", Dimension.DENSITY, 0, 10_000);
        Double thick = f.quantity("thick", Dimension.DENSITY, 0, 10_000);
        if (sparse == null || typical == null || thick == null) {
            return null;
        }
        if (sparse > typical || typical > thick) {
            f.refuse("typical", "stems must be sparse < typical < thick", "put the three numbers in this order");
        }
        return new Subject.Stems(sparse, typical, thick);
    }

    /** In metres. */
    private record Heights(@Nullable Double low, @Nullable Double high) {
    }

    private static Heights height(Fields f) {
        f.require("low", "high");
        Double low = f.quantity("low", Dimension.LENGTH, 0.005, 50);
        Double high = f.quantity("high", Dimension.LENGTH, 0.005, 50);
        if (low != null && high != null && low > high) {
            f.refuse("high", "'high' is below 'low'", "swap them");
        }
        return new Heights(low, high);
    }

    private static Subject.@Nullable AreaIndex areaIndex(Fields f) {
        f.require("typical", "thick");
        Double typical = f.number("typical", 0, 10);
        Double thick = f.number("thick", 0, 10);
        if (typical == null || thick == null) {
            return null;
        }
        if (typical > thick) {
            f.refuse("thick", "'thick' is below 'typical'", "swap them");
        }
        return new Subject.AreaIndex(typical, thick);
    }
}
