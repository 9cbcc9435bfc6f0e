package understorey.reading.subject;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import understorey.plan.Subject;
import understorey.yaml.Fields;
import understorey.yaml.Names;
import understorey.yaml.finding.Findings;
import understorey.yaml.tree.Csv;
import understorey.yaml.tree.Node;
import understorey.yaml.tree.TextFile;

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

    /** The subjects of a table; a row that is faulty or comes twice is a finding at its place. */
    static SubjectCatalogue read(Findings findings) {
        Map<String, Subject> byKey = new LinkedHashMap<>();
        Names keys = new Names("subject");
        for (Node.Mapping cells : Csv.rows(findings)) {
            Fields row = new Fields(cells, "this subject", findings);
            keys.claim(row, "key");
            Subject subject = SubjectRow.read(row);
            if (subject != null) {
                byKey.putIfAbsent(subject.key(), subject);
            }
        }
        return new SubjectCatalogue(byKey);
    }

    /** Subject of that key; null if there is none. */
    public @Nullable Subject find(String key) {
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
    public static Findings resource(String name) {
        try (InputStream in = SubjectCatalogue.class.getResourceAsStream("/understorey/reading/" + name)) {
            return TextFile.decode(in.readAllBytes(), name);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
