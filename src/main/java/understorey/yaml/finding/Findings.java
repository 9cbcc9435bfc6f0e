package understorey.yaml.finding;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Findings of one file and of the files that it names. The same finding is kept once. Of very many, the first are kept
 * and the others counted.
 */
public final class Findings {

    private static final int MOST_KEPT = 1000;
    /** Of one sentence, such as the one about every alias of a file. */
    private static final int MOST_ALIKE = 10;

    private final Source source;
    private final Found found;

    public Findings(Source source) {
        this(source, new Found());
    }

    private Findings(Source source, Found found) {
        this.source = source;
        this.found = found;
    }

    /** For a file named by this one, whose findings count as this one's. */
    public Findings of(Source other) {
        return new Findings(other, found);
    }

    public Source source() {
        return source;
    }

    public void error(Pos pos, String text, @Nullable String help) {
        add(Finding.Level.ERROR, pos, text, help);
    }

    public void warning(Pos pos, String text, @Nullable String help) {
        add(Finding.Level.WARNING, pos, text, help);
    }

    public int errors() {
        return found.errors;
    }

    /** Those kept. */
    public Set<Finding> all() {
        return found.kept;
    }

    /** Those counted only. */
    public Passed passed() {
        return found.passed;
    }

    private void add(Finding.Level level, Pos pos, String text, @Nullable String help) {
        take(new Finding(level, source.file(), pos.line(), pos.column(), pos.length(), text, help,
                source.line(pos.line())));
    }

    public void take(Finding finding) {
        if (found.take(finding) && finding.level() == Finding.Level.ERROR) {
            found.errors++;
        }
    }

    /** Shared with the files beside one file. */
    private static final class Found {

        private final Set<Finding> kept = new LinkedHashSet<>();
        private final Map<String, Integer> alike = new HashMap<>();
        private final Passed passed = new Passed();
        /** Hashes of those passed over, so that each is counted once. */
        private final Set<Integer> seen = new HashSet<>();
        private int errors;

        /** False for one that is there already. */
        boolean take(Finding finding) {
            if (kept.contains(finding)) {
                return false;
            }
            int times = kept.size() < MOST_KEPT ? alike.merge(finding.file() + finding.text(), 1, Integer::sum) : MOST_ALIKE + 1;
            if (times <= MOST_ALIKE) {
                return kept.add(finding);
            }
            boolean first = seen.add(finding.hashCode());
            if (first) {
                passed.count(finding);
            }
            return first;
        }
    }
}
