package understorey.yaml.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Findings that are counted and not shown, since there are very many of them in their file. */
public final class Passed {

    private static final int SHOWN = 100;

    private final Map<String, Integer> byFile = new TreeMap<>();
    private int errors;
    private int warnings;

    public void count(Finding finding) {
        byFile.merge(finding.file(), 1, Integer::sum);
        errors += finding.level() == Finding.Level.ERROR ? 1 : 0;
        warnings += finding.level() == Finding.Level.WARNING ? 1 : 0;
    }

    public void addAll(Passed other) {
        other.byFile.forEach((file, times) -> byFile.merge(file, times, Integer::sum));
        errors += other.errors;
        warnings += other.warnings;
    }

    public int errors() {
        return errors;
    }

    public int warnings() {
        return warnings;
    }

    /**
     * The first hundred findings of each file; behind them, where there are more, a note of how many.
     *
     * @param sorted by file
     */
    public List<Finding> shown(List<Finding> sorted) {
        List<Finding> shown = new ArrayList<>();
        for (int i = 0; i < sorted.size();) {
            String file = sorted.get(i).file();
            int end = i;
            while (end < sorted.size() && sorted.get(end).file().equals(file)) {
                end++;
            }
            int last = Math.min(end, i + SHOWN);
            shown.addAll(sorted.subList(i, last));
            int more = end - last + byFile.getOrDefault(file, 0);
            if (more > 0) {
                shown.add(new Finding(Finding.Level.NOTE, file, 0, 0, 0, "and " + more + " more in this file",
                        "start with these: many of the others may be the same", null));
            }
            i = end;
        }
        return List.copyOf(shown);
    }
}
