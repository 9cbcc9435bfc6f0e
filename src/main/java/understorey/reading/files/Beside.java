package understorey.reading.files;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import understorey.yaml.Fields;
import understorey.yaml.finding.Findings;
import understorey.yaml.finding.Suggestion;
import understorey.yaml.tree.Node;
import understorey.yaml.tree.TextFile;

/**
 * Folder of a file, for the CSV files that it names.
 *
 * @param folder folder of the file
 * @param shown  the folder as findings show it, with a slash at its end
 * @param opened the files that were opened so far
 */
public record Beside(Path folder, String shown, Set<Path> opened) {

    /** None was opened yet. */
    public Beside(Path folder, String shown) {
        this(folder, shown, new TreeSet<>());
    }

    /** Path of the CSV file named under a key; null, with a finding, if there is no such file. */
    public @Nullable Path find(Fields f, String key) {
        String name = f.text(key);
        if (name == null) {
            return null;
        }
        if (!plain(name)) {
            f.refuse(key, "'" + key + "' must be the name of a CSV file in the same folder, not " + Node.quote(name),
                    "for example hours.csv, without a folder");
            return null;
        }
        Path path;
        try {
            path = folder.resolve(name);
        } catch (InvalidPathException foreign) {
            f.refuse(key, "this computer’s language settings cannot show the file name " + Node.quote(name),
                    "rename it with plain letters, or set LC_ALL=C.UTF-8");
            return null;
        }
        if (!Files.isRegularFile(path)) {
            if (Files.exists(path)) {
                f.refuse(key, shown + name + " is not an ordinary file, so it is ignored", "put a text file in its place");
            } else {
                f.refuse(key, "there is no file " + shown + name, Suggestion.among(tables(), name, "CSV files in that folder"));
            }
            return null;
        }
        return path;
    }

    /** Text of a CSV file, with findings that count as those of the file that names it; null if it cannot be read. */
    public @Nullable Findings open(Fields f, Path path) {
        opened.add(path);
        Findings read = TextFile.open(path, shown + path.getFileName());
        Findings findings = f.findings().of(read.source());
        read.all().forEach(findings::take);
        return read.source().isRead() ? findings : null;
    }

    private static boolean plain(String name) {
        return name.endsWith(".csv") && !name.startsWith(".")
                && name.chars().noneMatch(c -> c == '/' || c == '\\' || c == ':' || c < ' ');
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
