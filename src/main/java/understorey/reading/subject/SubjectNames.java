package understorey.reading.subject;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import understorey.plan.Subject;
import understorey.yaml.tree.Spelling;

/**
 * The names under which a subject is found: its key, its common names and its scientific name. Case, hyphens, apostrophes and the
 * plural make no difference.
 */
final class SubjectNames {

    /** A name with another one in brackets: ramsons (wild garlic), tall (Austral) bluebell. */
    private static final Pattern TWO_NAMES = Pattern.compile("([^(]*)\\(([^)]*)\\)(.*)");
    /** What a name in brackets says of the kind of thing. */
    private static final Set<String> KINDS = Set.of("fungus");

    private SubjectNames() {
    }

    /** Subjects of that name. */
    static List<Subject> called(Collection<Subject> subjects, String name) {
        List<String> words = words(name);
        return subjects.stream().filter(subject -> names(subject).anyMatch(words::equals)).toList();
    }

    /** Subjects with all these words in one of their names. */
    static List<Subject> with(Collection<Subject> subjects, String name) {
        List<String> words = words(name);
        return words.isEmpty() ? List.of()
                : subjects.stream().filter(subject -> names(subject).anyMatch(other -> other.containsAll(words))).toList();
    }

    private static Stream<List<String>> names(Subject subject) {
        String scientific = subject.scientificName();
        return Stream.concat(Stream.of(subject.key(), scientific == null ? subject.key() : scientific), common(subject.name()))
                .map(SubjectNames::words);
    }

    private static Stream<String> common(String name) {
        Matcher two = TWO_NAMES.matcher(name);
        if (!two.matches()) {
            return Stream.of(name);
        }
        String other = two.group(2) + two.group(3);
        return Stream.of(two.group(1) + two.group(3), KINDS.contains(other) ? name : other, name);
    }

    private static List<String> words(String name) {
        String plain = name.toLowerCase(Locale.ROOT).replaceAll("['\u2019]", "");
        return Arrays.stream(plain.split("[\\s_-]+")).filter(word -> !word.isEmpty()).map(SubjectNames::singular)
                .collect(Collectors.toList());
    }

    /** One form for the singular and the plural of a word, not always a word itself. */
    private static String singular(String word) {
        String one = Spelling.british(word).replaceFirst("ies$", "y").replaceFirst("leaves$", "leaf").replaceFirst("(s|x|z|ch|sh)es$", "$1");
        while (one.length() > 3 && one.endsWith("s") && !one.endsWith("ss")) {
            one = one.substring(0, one.length() - 1);
        }
        return one;
    }
}
