package understorey.publish;

import java.util.Collection;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The publisher's list: the audience of the files, and their names.
 *
 * @param audience of the run that wrote them; empty while a run for another audience is in progress
 * @param names    below the folder, with forward slashes
 */
record FileList(String audience, SortedSet<String> names) {

    private static final String HEAD = "# for ";

    /** Reads a list; names that lead out of the folder are skipped. */
    static FileList of(String text) {
        String audience = "";
        SortedSet<String> names = new TreeSet<>();
        for (String line : text.lines().toList()) {
            if (line.startsWith(HEAD)) {
                audience = line.substring(HEAD.length());
            } else if (staysInside(line)) {
                names.add(line);
            }
        }
        return new FileList(audience, names);
    }

    /** The names of both lists; the audience only if both have it. */
    FileList and(FileList other) {
        SortedSet<String> both = new TreeSet<>(names);
        both.addAll(other.names);
        boolean same = names.isEmpty() || audience.equals(other.audience);
        return new FileList(same ? other.audience : "", both);
    }

    String text() {
        String head = audience.isEmpty() ? "" : HEAD + audience + "\n";
        return head + names.stream().map(name -> name + "\n").collect(Collectors.joining());
    }

    static FileList of(String audience, Collection<String> names) {
        return new FileList(audience, new TreeSet<>(names));
    }

    /**
     * True for a plain relative name. Anyone can edit the list: a name with {@code ..}, a drive letter or a backslash would
     * reach another folder. Names that start with a dot belong to the publisher.
     */
    static boolean staysInside(String name) {
        for (String part : name.split("/", -1)) {
            if (part.isBlank() || part.startsWith(".")) {
                return false;
            }
        }
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            if (c < ' ' || c == '\\' || c == ':') {
                return false;
            }
        }
        return true;
    }
}
