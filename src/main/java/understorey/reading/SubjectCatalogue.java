package understorey.reading;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import understorey.plan.Subject;

/**
 * The built-in subjects: woodland flowers of both hemispheres and one fungus, with the floras and pages that the figures
 * come from.
 *
 * <p>The table has heights in centimetres, the records in metres. The width of a flower is the first size in the table: the
 * diameter of a flat or star-shaped flower, and the length of a bell seen from the side. Open flowers are those of a
 * typical stem at the peak. Densities are the least certain figures: a factor of two either way is normal.
 */
public final class SubjectCatalogue {

    private static final String TABLE = "subjects.csv";

    private final Map<String, Subject> byKey;

    private SubjectCatalogue(Map<String, Subject> byKey) {
        this.byKey = byKey;
    }

    /** The catalogue that comes with the tool. */
    public static SubjectCatalogue builtIn() {
        Map<String, Subject> byKey = new LinkedHashMap<>();
        Findings findings = resource(TABLE);
        for (Node.Mapping row : Csv.rows(findings)) {
            Subject subject = subject(new Row(row));
            byKey.put(subject.key(), subject);
        }
        if (findings.errors() > 0) {
            throw new IllegalStateException(findings.all().iterator().next().plain());
        }
        return new SubjectCatalogue(byKey);
    }

    /** Subject of that key; null if there is none. */
    public Subject find(String key) {
        return byKey.get(key);
    }

    /** Every subject, in the table's order. */
    public List<Subject> all() {
        return new ArrayList<>(byKey.values());
    }

    Set<String> keys() {
        return byKey.keySet();
    }

    /** A text that comes with the tool. */
    static Findings resource(String name) {
        try (InputStream in = SubjectCatalogue.class.getResourceAsStream(name)) {
            return TextFile.decode(in.readAllBytes(), name);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Subject subject(Row r) {
        return new Subject(r.text("key"), r.text("common_name"), r.text("scientific_name"), r.text("region"),
                "S".equals(r.text("hemisphere")), r.whole("month_first"), r.whole("month_last"),
                r.text("months_reference"),
                new Subject.Stems(r.number("stems_low_per_m2"), r.number("stems_typical_per_m2"),
                        r.number("stems_thick_per_m2")),
                r.number("height_low_cm") / 100, r.number("height_high_cm") / 100, r.number("size_a_mm"),
                r.whole("flowers_open_typical"),
                new Subject.AreaIndex(r.number("flower_area_index_typical"), r.number("flower_area_index_thick")),
                Words.find(Subject.Reflectance.values(), r.text("reflectance_class")), r.text("colour"),
                r.text("habitat"), r.text("care"),
                new Subject.Marks(r.text("months_mark"), r.text("stems_mark"), r.text("height_mark"),
                        r.text("flowers_mark"), r.text("size_mark")),
                r.text("sources"), r.number("months_latitude"));
    }

    /** A row of the table, by column name. */
    private record Row(Node.Mapping cells) {

        String text(String column) {
            Node.Entry cell = cells.entries().get(column);
            return cell == null ? null : ((Node.Scalar) cell.value()).text();
        }

        double number(String column) {
            return Double.parseDouble(text(column));
        }

        int whole(String column) {
            return Integer.parseInt(text(column));
        }
    }
}
