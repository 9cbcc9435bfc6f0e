package understorey.reading;

import java.util.LinkedHashSet;
import java.util.Set;

/**
 * Findings of one file and of the files that it names. The same finding is kept once.
 */
final class Findings {

    private final Source source;
    private final Set<Finding> found;
    /** One cell, shared with the files that this one names. */
    private final int[] errors;

    Findings(Source source) {
        this(source, new LinkedHashSet<>(), new int[1]);
    }

    private Findings(Source source, Set<Finding> found, int[] errors) {
        this.source = source;
        this.found = found;
        this.errors = errors;
    }

    /** For a file named by this one, whose findings count as this one's. */
    Findings of(Source other) {
        return new Findings(other, found, errors);
    }

    Source source() {
        return source;
    }

    void error(Pos pos, String text, String help) {
        add(Finding.Level.ERROR, pos, text, help);
    }

    void warning(Pos pos, String text, String help) {
        add(Finding.Level.WARNING, pos, text, help);
    }

    int errors() {
        return errors[0];
    }

    Set<Finding> all() {
        return found;
    }

    private void add(Finding.Level level, Pos pos, String text, String help) {
        take(new Finding(level, source.file(), pos.line(), pos.column(), pos.length(), text, help,
                source.line(pos.line())));
    }

    void take(Finding finding) {
        if (found.add(finding) && finding.level() == Finding.Level.ERROR) {
            errors[0]++;
        }
    }
}
