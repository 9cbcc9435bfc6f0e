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
import understorey.yaml.Csv;
import understorey.yaml.Findings;
import understorey.yaml.Node;
import understorey.yaml.TextFile;
import understorey.yaml.Words;

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
        Findings findings = resource(TABLE);
        SubjectCatalogue catalogue = read(findings);
        if (findings.errors() > 0) {
            throw new IllegalStateException(findings.all().iterator().next().plain());
        }
        return catalogue;
    }

    /** The subjects of a table; a row that is faulty or comes twice is a finding at its line. */
    static SubjectCatalogue read(Findings findings) {
        Map<String, Subject> byKey = new LinkedHashMap<>();
        Map<String, Integer> lines = new LinkedHashMap<>();
        for (Node.Mapping cells : Csv.rows(findings)) {
            Row row = new Row(cells, findings);
            String key = row.needed("key");
            Integer first = key == null ? null : lines.putIfAbsent(key, cells.pos().line());
            if (first != null) {
                findings.error(cells.pos(), "the subject " + Node.quote(key) + " is given twice, first on line " + first, null);
            } else if (key != null) {
                byKey.put(key, subject(row));
            }
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
    private record Row(Node.Mapping cells, Findings findings) {

        String text(String column) {
            Node.Entry cell = cells.entries().get(column);
            return cell == null ? null : ((Node.Scalar) cell.value()).text();
        }

        /** The text of a cell; null, with a finding, where it is blank. */
        String needed(String column) {
            String text = text(column);
            if (text == null) {
                findings.error(cells.pos(), "this row has nothing under " + Node.quote(column), null);
            }
            return text;
        }

        double number(String column) {
            String text = needed(column);
            try {
                return text == null ? 0 : Double.parseDouble(text);
            } catch (NumberFormatException e) {
                findings.error(cells.entries().get(column).value().pos(), Node.quote(column) + " must be a number, not "
                        + Node.quote(text), null);
                return 0;
            }
        }

        int whole(String column) {
            double number = number(column);
            if (number != Math.rint(number)) {
                findings.error(cells.entries().get(column).value().pos(), Node.quote(column) + " must be a whole number, not "
                        + Node.quote(text(column)), null);
            }
            return (int) number;
        }
    }
}
