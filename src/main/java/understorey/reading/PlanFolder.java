package understorey.reading;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Folder of the author's files, and the names that they can have. */
final class PlanFolder {

    private static final String ENDING = ".yaml";
    /** Names that the pages need. */
    private static final Set<String> KEPT = Set.of("index", "sites", "gear");
    private static final String INDEX = "index";

    private final Path folder;
    private final String shown;

    PlanFolder(Path folder) {
        this.folder = folder;
        Path name = folder.getFileName();
        this.shown = name == null || name.toString().isEmpty() ? "" : name + "/";
    }

    /**
     * One file.
     *
     * @param fault of its name; null if there is none
     */
    record Entry(Path path, String slug, Beside beside, String fault, String help) {

        /** Text of the file, with the finding about its name. */
        Findings open() {
            Findings findings = TextFile.open(path, beside.shown() + path.getFileName());
            if (fault != null) {
                findings.error(Pos.FILE, fault, help);
            }
            return findings;
        }
    }

    /** Files of a kind by name; "" for the trips. Ignored files are reported. */
    List<Entry> list(String kind, Set<Finding> findings) {
        Path in = folder.resolve(kind);
        Beside beside = new Beside(in, kind.isEmpty() ? shown : shown + kind + "/");
        TreeMap<String, Path> found = new TreeMap<>();
        try (DirectoryStream<Path> paths = Files.isDirectory(in) ? Files.newDirectoryStream(in) : null) {
            for (Path path : paths == null ? List.<Path>of() : paths) {
                String name = path.getFileName().toString();
                if (name.endsWith(ENDING) && !name.startsWith(".") && !Files.isDirectory(path)) {
                    found.put(name, path);
                } else if (name.endsWith(".yml")) {
                    findings.add(whole(Finding.Level.WARNING, beside.shown() + name, "this file is ignored",
                            "rename it to end in .yaml"));
                }
            }
        } catch (IOException e) {
            findings.add(whole(Finding.Level.ERROR, beside.shown(), "this folder cannot be read", "check its permissions"));
        }
        return entries(found, beside, kind.isEmpty());
    }

    private static List<Entry> entries(TreeMap<String, Path> found, Beside beside, boolean trips) {
        List<Entry> entries = new ArrayList<>();
        Map<String, String> taken = new HashMap<>();
        for (Map.Entry<String, Path> file : found.entrySet()) {
            String name = file.getKey();
            String slug = name.substring(0, name.length() - ENDING.length());
            String small = slug.toLowerCase(Locale.ROOT);
            String earlier = taken.putIfAbsent(small, name);
            String fault = null;
            String help = null;
            if (earlier != null) {
                fault = "this name differs from '" + earlier + "' only in capitals, so both would be the same page";
                help = "rename one of them";
            } else if (trips ? KEPT.contains(small) : small.equals(INDEX)) {
                fault = "'" + slug + "' is a reserved name";
                help = "rename this file";
            } else if (!Slug.isOne(slug)) {
                String better = Slug.of(slug);
                fault = "use only letters, digits and hyphens in this file name";
                help = better.isEmpty() ? "rename it" : "rename it to '" + better + ENDING + "'";
            }
            entries.add(new Entry(file.getValue(), slug, beside, fault, help));
        }
        return entries;
    }

    /** Reports why there is no trip to read. */
    void complain(Set<Finding> findings) {
        String name = shown.isEmpty() ? folder.toString() : shown.substring(0, shown.length() - 1);
        if (!Files.isDirectory(folder)) {
            findings.add(whole(Finding.Level.ERROR, name, "there is no such folder",
                    "give the folder that contains your plans"));
        } else {
            findings.add(whole(Finding.Level.WARNING, name, "there is no trip in this folder",
                    "add a trip, for example " + shown + "my-first-trip" + ENDING));
        }
    }

    private static Finding whole(Finding.Level level, String file, String text, String help) {
        return new Finding(level, file, 0, 0, 0, text, help, null);
    }
}
