package understorey.reading.files;

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
import org.jspecify.annotations.Nullable;
import understorey.yaml.finding.Finding;
import understorey.yaml.finding.Findings;
import understorey.yaml.finding.Pos;
import understorey.yaml.tree.TextFile;

/** Folder of the author's files, and the names that they can have. */
public final class PlanFolder {

    private static final String ENDING = ".yaml";
    /** Names that the pages need. */
    private static final Set<String> KEPT = Set.of("index", "sites", "gear");
    private static final String INDEX = "index";

    private final Path asked;
    private final Path folder;
    private final String shown;
    /** Name of the one trip's file that is asked for; null for the whole folder. */
    private final @Nullable String only;

    /**
     * A folder, or the one around a trip's file.
     *
     * @param asked of the one or the other
     */
    public PlanFolder(Path asked) {
        this.asked = asked;
        boolean file = Files.exists(asked) && !Files.isDirectory(asked);
        this.folder = !file ? asked : asked.getParent() == null ? Path.of("") : asked.getParent();
        this.only = !file ? null : asked.getFileName().toString();
        Path name = folder.getFileName();
        this.shown = name == null || name.toString().isEmpty() ? "" : name + "/";
    }

    /**
     * One file.
     *
     * @param fault of its name; null if there is none
     */
    public record Entry(Path path, String slug, Beside beside, @Nullable String fault, @Nullable String help) {

        /** Text of the file, with the finding about its name. */
        public Findings open() {
            Findings findings = TextFile.open(path, beside.shown() + path.getFileName());
            if (fault != null) {
                findings.error(Pos.FILE, fault, help);
            }
            return findings;
        }
    }

    /** Files of a kind by name; "" for the trips. Ignored files are reported. */
    public List<Entry> list(String kind, Set<Finding> findings) {
        Path in = folder.resolve(kind);
        Beside beside = new Beside(in, kind.isEmpty() ? shown : shown + kind + "/");
        TreeMap<String, Path> found = new TreeMap<>();
        try (DirectoryStream<Path> paths = Files.isDirectory(in) ? Files.newDirectoryStream(in) : null) {
            for (Path path : paths == null ? List.<Path>of() : paths) {
                String name = path.getFileName().toString();
                if (name.startsWith(".") || Files.isDirectory(path) && !name.endsWith(ENDING)) {
                    continue;
                }
                String small = name.toLowerCase(Locale.ROOT);
                if (name.endsWith(ENDING)) {
                    found.put(name, path);
                } else if (small.endsWith(ENDING) || small.endsWith(".yml")) {
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
                // Where the locale cannot read a name, the letters that are left suggest no better one.
                String better = slug.indexOf('\uFFFD') >= 0 ? "" : Slug.latin(slug);
                fault = "use only letters from a to z, digits and hyphens in this file name";
                help = better.isEmpty() ? "rename it" : "rename it to '" + better + ENDING + "'";
            } else if (slug.length() > Slug.LONGEST) {
                fault = "this file name has " + slug.length() + " characters; at most " + Slug.LONGEST + " are allowed";
                help = "give it a shorter name";
            }
            entries.add(new Entry(file.getValue(), slug, new Beside(beside.folder(), beside.shown()), fault, help));
        }
        return entries;
    }

    /** The folder of the files. */
    public Path path() {
        return folder;
    }

    /** Name of the only trip to build, without the ending; null for all of the folder. */
    public @Nullable String only() {
        return only == null ? null : only.endsWith(ENDING) ? only.substring(0, only.length() - ENDING.length()) : only;
    }

    /** Reports why there is no trip to read. */
    public void complain(Set<Finding> findings) {
        if (only != null) {
            boolean plan = only.toLowerCase(Locale.ROOT).endsWith(ENDING) || only.toLowerCase(Locale.ROOT).endsWith(".yml");
            findings.add(whole(Finding.Level.ERROR, shown + only, "this file is not a trip",
                    plan ? "rename it to end in .yaml" : "give a trip file, for example my-first-trip" + ENDING));
            return;
        }
        String name = shown.isEmpty() ? folder.toString() : shown.substring(0, shown.length() - 1);
        if (!Files.isDirectory(asked)) {
            findings.add(whole(Finding.Level.ERROR, asked.toString(), "there is no such file or folder",
                    "give a trip file, or the folder that contains your plans"));
        } else {
            findings.add(whole(Finding.Level.WARNING, name, "there is no trip in this folder",
                    "add a trip, for example " + shown + "my-first-trip" + ENDING));
        }
    }

    private static Finding whole(Finding.Level level, String file, String text, String help) {
        return new Finding(level, file, 0, 0, 0, text, help, null);
    }
}
