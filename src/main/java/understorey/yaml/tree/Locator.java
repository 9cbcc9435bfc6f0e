package understorey.yaml.tree;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import understorey.yaml.finding.Finding;
import understorey.yaml.finding.Findings;
import understorey.yaml.finding.Pos;
import understorey.yaml.finding.Source;

/**
 * Places of values in a file by key path, such as {@code shots[2].notes}, for findings of later rooms. A path runs on
 * through {@code site} and {@code gear} into the file that is named there; one that leads nowhere ends at the last
 * place that is known. Files are read again for it, because it is seldom asked and their trees are large.
 */
public final class Locator {

    private final Supplier<Findings> file;
    private final Map<String, Supplier<Findings>> sites;
    private final Map<String, Supplier<Findings>> bags;
    private final Map<Supplier<Findings>, Written> read = new HashMap<>();

    /** A file as read. */
    private record Written(Source source, @Nullable Node root) {

        static Written of(Supplier<Findings> file) {
            Findings found = file.get();
            return new Written(found.source(), TreeReader.read(found));
        }
    }

    private record Spot(Written file, Pos pos) {
    }

    /**
     * For the values of one file.
     *
     * @param file  opened when it is asked for
     * @param sites by name, for what the file says of its site
     * @param bags  by name
     */
    public Locator(Supplier<Findings> file, Map<String, Supplier<Findings>> sites, Map<String, Supplier<Findings>> bags) {
        this.file = file;
        this.sites = sites;
        this.bags = bags;
    }

    /** A finding at the value under a path; at the file as a whole for an empty path. */
    public Finding finding(Finding.Level level, String path, String text, @Nullable String help) {
        Spot spot = path.isEmpty() ? new Spot(written(file), Pos.FILE) : spot(path.split("\\.|(?=\\[)"));
        Source source = spot.file().source();
        Pos pos = spot.pos();
        return new Finding(level, source.file(), pos.line(), pos.column(), pos.length(), text, help,
                source.line(pos.line()));
    }

    private Spot spot(String[] steps) {
        Written in = written(file);
        Node at = in.root();
        Pos pos = Pos.FILE;
        for (int i = 0; i < steps.length; i++) {
            String step = steps[i];
            Node next = step.startsWith("[") ? item(at, step) : value(at, step);
            if (next == null) {
                return new Spot(in, pos);
            }
            at = next;
            pos = at.pos();
            Written named = at instanceof Node.Scalar name ? named(step, name.text()) : null;
            if (named != null && i < steps.length - 1) {
                in = named;
                at = named.root();
                pos = Pos.FILE;
            }
        }
        return new Spot(in, pos);
    }

    private @Nullable Written named(String key, String name) {
        Supplier<Findings> named = key.equals("site") ? sites.get(name) : key.equals("gear") ? bags.get(name) : null;
        return named == null ? null : written(named);
    }

    private Written written(Supplier<Findings> entry) {
        return read.computeIfAbsent(entry, Written::of);
    }

    private static @Nullable Node value(@Nullable Node at, String key) {
        Node.Entry entry = at instanceof Node.Mapping mapping ? mapping.entry(key) : null;
        return entry == null ? null : entry.value();
    }

    private static @Nullable Node item(@Nullable Node at, String step) {
        int index = Integer.parseInt(step.substring(1, step.length() - 1));
        List<Node> items = at instanceof Node.Seq list ? list.items() : List.of();
        return index < items.size() ? items.get(index) : null;
    }
}
