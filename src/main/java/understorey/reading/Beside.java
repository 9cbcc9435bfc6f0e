package understorey.reading;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The folder that a file lies in, for the tables that it names.
 *
 * @param folder where they lie
 * @param shown  the folder as findings show it, with a slash at its end
 */
record Beside(Path folder, String shown) {

    /** The path of the table named under a key; null, with a finding, when there is no such file. */
    Path find(Fields f, String key) {
        String name = f.text(key);
        if (name == null) {
            return null;
        }
        if (!plain(name)) {
            f.refuse(key, "'" + key + "' must be the name of a CSV file beside this one, not " + Node.quote(name),
                    "such as hours.csv, without a folder");
            return null;
        }
        Path path;
        try {
            path = folder.resolve(name);
        } catch (InvalidPathException foreign) {
            f.refuse(key, "the language settings of this computer have no letters for the file " + Node.quote(name),
                    "rename it with plain letters, or set LC_ALL=C.UTF-8");
            return null;
        }
        if (!Files.isRegularFile(path)) {
            f.refuse(key, Files.exists(path) ? shown + name + " is not an ordinary file, so it is not read"
                    : "there is no file " + shown + name, Suggestion.among(tables(), name, "CSV files there"));
            return null;
        }
        return path;
    }

    private static boolean plain(String name) {
        if (!name.endsWith(".csv") || name.startsWith(".")) {
            return false;
        }
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            if (c == '/' || c == '\\' || c == ':' || c < ' ') {
                return false;
            }
        }
        return true;
    }

    private List<String> tables() {
        List<String> names = new ArrayList<>();
        try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, "*.csv")) {
            for (Path path : found) {
                names.add(path.getFileName().toString());
            }
        } catch (IOException e) {
            return List.of();
        }
        Collections.sort(names);
        return names;
    }
}
