package understorey.publish;

import java.util.Collection;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What stands in the publisher's list: whom the files are for, and their names.
 *
 * @param audience of the run that wrote them; empty while a run for another audience is under way
 * @param names    below the folder, with forward slashes
 */
record FileList(String audience, SortedSet<String> names) {

    private static final String HEAD = "# for ";

    /** Reads a list; a name that could lead out of the folder is passed over. */
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

    /** The names of both; the audience only where both have it. */
    FileList and(FileList other) {
        SortedSet<String> both = new TreeSet<>(names);
        both.addAll(other.names);
        boolean same = names.isEmpty() || audience.equals(other.audience);
        return new FileList(same ? other.audience : "", both);
    }

    String text() {
        StringBuilder text = new StringBuilder(audience.isEmpty() ? "" : HEAD + audience + "\n");
        for (String name : names) {
            text.append(name).append('\n');
        }
        return text.toString();
    }

    static FileList of(String audience, Collection<String> names) {
        return new FileList(audience, new TreeSet<>(names));
    }

    /**
     * True for a plain relative name. The list is a file like any other, so it may say anything: a name with
     * {@code ..}, a drive letter or a backslash would reach another folder, and a dot in front is the publisher's own.
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
