package understorey.reading.subject;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import understorey.plan.Subject;
import understorey.yaml.Fields;
import understorey.yaml.finding.Suggestion;
import understorey.yaml.tree.Node;

/** Subjects that a shot at one site can name: first the site's own, then those of the catalogue. */
public final class Subjects {

    private final SubjectCatalogue catalogue;
    private final Map<String, Subject> own = new LinkedHashMap<>();
    private boolean complete;

    /**
     * @param complete false if the site's own are not known; then an unknown key is not reported
     */
    public Subjects(SubjectCatalogue catalogue, boolean complete) {
        this.catalogue = catalogue;
        this.complete = complete;
    }

    /** Reads the list of a site. */
    public void describe(Fields site) {
        for (Fields block : site.blocks("subjects", "this subject")) {
            Subject subject = SubjectReader.read(block);
            if (subject == null) {
                complete = false;
            } else if (own.putIfAbsent(subject.key(), subject) != null) {
                block.refuse(block.has("key") ? "key" : "name",
                        "the subject " + Node.quote(subject.key()) + " is already described in this site", "use another key");
            }
        }
    }

    public Map<String, Subject> own() {
        return own;
    }

    /** Subject under a key, by name or described in place; null, with a finding, if it is neither. */
    public @Nullable Subject read(Fields f, String key) {
        Node node = f.take(key);
        if (node instanceof Node.Mapping mapping) {
            return SubjectReader.read(new Fields(mapping, "this subject", f.findings()));
        }
        return known(f, key, f.scalars().pointer(node, "'" + key + "'"));
    }

    /** Subject whose name is given under a key; null, with a finding, if there is none. */
    public @Nullable Subject named(Fields f, String key) {
        return known(f, key, f.text(key));
    }

    private @Nullable Subject known(Fields f, String key, @Nullable String name) {
        if (name == null) {
            return null;
        }
        Subject subject = own.getOrDefault(name, catalogue.find(name));
        if (subject != null) {
            return subject;
        }
        List<Subject> meant = SubjectNames.called(own.values(), name);
        if (meant.isEmpty() && complete) {
            meant = SubjectNames.called(catalogue.all(), name);
        }
        if (meant.size() == 1) {
            return meant.get(0);
        }
        if (meant.size() > 1) {
            f.refuse(key, "several subjects are called " + Node.quote(name), "use one of: " + keys(meant));
        } else if (complete) {
            unknown(f, key, name);
        }
        return null;
    }

    private void unknown(Fields f, String key, String name) {
        TreeSet<String> known = new TreeSet<>(catalogue.keys());
        known.addAll(own.keySet());
        List<Subject> near = SubjectNames.with(Stream.concat(own.values().stream(), catalogue.all().stream()).toList(), name);
        f.refuse(key, "there is no subject " + Node.quote(name), near.size() == 1 ? "did you mean '" + near.get(0).key() + "'?"
                : near.isEmpty() ? Suggestion.among(known, name, "known subjects") : "which of these: " + keys(near));
    }

    private static String keys(List<Subject> subjects) {
        return subjects.stream().map(Subject::key).sorted().collect(Collectors.joining(", "));
    }
}
