package understorey.yaml;

import java.util.List;
import java.util.Map;

/**
 * Places of values in a file by key path, such as {@code shots[2].notes}, for findings of later rooms. A path runs on
 * through {@code site} and {@code gear} into the file that is named there; one that leads nowhere ends at the last
 * place that is known.
 */
public final class Locator {

    private final Written file;
    private final Map<String, Written> sites;
    private final Map<String, Written> bags;

    /** A file as read. */
    public record Written(Source source, Node root) {
    }

    private record Spot(Written file, Pos pos) {
    }

    public Locator(Written file, Map<String, Written> sites, Map<String, Written> bags) {
        this.file = file;
        this.sites = sites;
        this.bags = bags;
    }

    /** An error at the value under a path; at the file as a whole for an empty path. */
    public Finding error(String path, String text, String help) {
        Spot spot = path.isEmpty() ? new Spot(file, Pos.FILE) : spot(path.split("\\.|(?=\\[)"));
        Source source = spot.file().source();
        Pos pos = spot.pos();
        return new Finding(Finding.Level.ERROR, source.file(), pos.line(), pos.column(), pos.length(), text, help,
                source.line(pos.line()));
    }

    private Spot spot(String[] steps) {
        Written in = file;
        Node at = file.root();
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

    private Written named(String key, String name) {
        return key.equals("site") ? sites.get(name) : key.equals("gear") ? bags.get(name) : null;
    }

    private static Node value(Node at, String key) {
        Node.Entry entry = at instanceof Node.Mapping mapping ? mapping.entries().get(key) : null;
        return entry == null ? null : entry.value();
    }

    private static Node item(Node at, String step) {
        int index = Integer.parseInt(step.substring(1, step.length() - 1));
        List<Node> items = at instanceof Node.Seq list ? list.items() : List.of();
        return index < items.size() ? items.get(index) : null;
    }
}
