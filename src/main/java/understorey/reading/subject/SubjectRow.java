package understorey.reading.subject;

import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.plan.Subject;
import understorey.yaml.Fields;

/** A row of the catalogue as a subject: its measures. */
final class SubjectRow {

    /** Columns that explain the others and that nothing is worked out from. */
    private static final List<String> EXPLAINING = List.of("family", "flowers_per_stem_low", "flowers_per_stem_high",
            "flowers_open_thick", "flower_form", "size_b_mm", "fill_factor", "size_low_mm", "size_high_mm", "flower_area_cm2",
            "leaf_index_typical", "leaf_index_thick");
    private static final double TALLEST_CM = 5000;
    private static final int DENSEST = 10_000;

    private final Row row;

    private SubjectRow(Row row) {
        this.row = row;
    }

    /** Null, with findings, when the row is faulty. */
    static @Nullable Subject read(Fields f) {
        int before = f.findings().errors();
        Row row = new Row(f);
        Subject subject = new SubjectRow(row).subject();
        EXPLAINING.forEach(f::ignore);
        f.done();
        return f.findings().errors() > before ? null : subject;
    }

    private Subject subject() {
        double low = row.number("height_low_cm", 0.5, TALLEST_CM);
        double high = row.number("height_high_cm", 0.5, TALLEST_CM);
        row.rising("height_low_cm", low, "height_high_cm", high);
        return new Subject(row.text("key"), row.text("common_name"), row.text("scientific_name"), row.text("region"),
                row.word("hemisphere", SubjectReader.Hemisphere.values()) == SubjectReader.Hemisphere.SOUTH, row.whole("month_first", 1, 12),
                row.whole("month_last", 1, 12), row.text("months_reference"), stems(), low / 100, high / 100,
                row.number("size_a_mm", 0.5, 1000), row.whole("flowers_open_typical", 1, DENSEST), areaIndex(),
                row.word("reflectance_class", Subject.Reflectance.values()), row.text("colour"), row.text("habitat"),
                row.text("care"), new Subject.Marks(row.mark("months_mark"), row.mark("stems_mark"), row.mark("height_mark"),
                        row.mark("flowers_mark"), row.mark("size_mark")),
                row.text("sources"), row.number("months_latitude", 0, 90), new GuideRow(row).guide());
    }

    private Subject.Stems stems() {
        double sparse = row.number("stems_low_per_m2", 0, DENSEST);
        double typical = row.number("stems_typical_per_m2", 0, DENSEST);
        double thick = row.number("stems_thick_per_m2", 0, DENSEST);
        row.rising("stems_low_per_m2", sparse, "stems_typical_per_m2", typical);
        row.rising("stems_typical_per_m2", typical, "stems_thick_per_m2", thick);
        return new Subject.Stems(sparse, typical, thick);
    }

    private Subject.AreaIndex areaIndex() {
        double typical = row.number("flower_area_index_typical", 0, 10);
        double thick = row.number("flower_area_index_thick", 0, 10);
        row.rising("flower_area_index_typical", typical, "flower_area_index_thick", thick);
        return new Subject.AreaIndex(typical, thick);
    }
}
