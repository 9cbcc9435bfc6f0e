package understorey.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import understorey.pages.ScoutingPage;
import understorey.pages.json.Json;
import understorey.plan.Bag;
import understorey.plan.Site;
import understorey.plan.Subject;
import understorey.reading.Plans;
import understorey.reading.PlansReader;
import understorey.reading.files.Slug;
import understorey.reading.trip.NextTrip;
import understorey.schema.PlanFiles;
import understorey.season.FloweringWindow;

/** Writes files to begin with. Never overwrites one. */
@Command(name = "new", description = "Write a commented file to start with, which builds as it is. Never overwrites a file.", footer = {"",
    "Examples:", "  understorey new plans", "  understorey new site \"Long Copse\"", "  understorey new trip \"Long Copse in May\"",
    "  understorey new trip \"Long Copse again\" --from plans/long-copse-in-may.yaml"})
final class NewCommand implements Callable<Integer> {

    private enum What { TRIP, SITE, BAG, PLANS }

    private static final String ENDING = ".yaml";

    private final Terminal terminal;
    private final LocalDate today;

    @Spec
    private CommandSpec spec;
    @Parameters(index = "0", paramLabel = "WHAT", description = "trip, site, bag, or plans for a folder with one of each")
    private What what;
    @Parameters(index = "1", arity = "0..1", paramLabel = "NAME", description = "name of the trip, the site or the bag")
    private @Nullable String name;
    @Option(names = "--plans", paramLabel = "FOLDER", defaultValue = "plans", converter = Folders.class,
            description = "folder of the plans (default: ${DEFAULT-VALUE})")
    private Path folder;
    @Option(names = "--from", paramLabel = "TRIP", converter = Folders.class,
            description = "start with an earlier trip: later dates, no forecast")
    private @Nullable Path earlier;

    /**
     * @param today from which the next flowering season is looked for
     */
    NewCommand(Terminal terminal, LocalDate today) {
        this.terminal = terminal;
        this.today = today;
    }

    @Override
    public Integer call() throws IOException {
        if (earlier != null && what != What.TRIP) {
            throw new ParameterException(spec.commandLine(), "--from begins a trip with an earlier one: new trip NAME --from FILE");
        }
        Map<Path, String> files = new LinkedHashMap<>();
        switch (what) {
            case TRIP -> trip(named("My first trip"), files);
            case SITE -> site(named("My wood"), files);
            case BAG -> bag(named("My bag"), files);
            case PLANS -> {
                site("My wood", files);
                bag("My bag", files);
                files.put(folder.resolve("my-first-trip" + ENDING), story(
                        trip("My first trip", "my-wood", "my-bag", PlansReader.read(folder), null)));
            }
        }
        Optional<Path> there = files.keySet().stream().filter(Files::exists).findFirst();
        if (there.isPresent()) {
            throw new ParameterException(spec.commandLine(), there.get() + " is there already; choose another name");
        }
        schemas(files);
        for (Map.Entry<Path, String> file : files.entrySet()) {
            Files.createDirectories(file.getKey().toAbsolutePath().getParent());
            Files.writeString(file.getKey(), file.getValue(), StandardOpenOption.CREATE_NEW);
            terminal.say("wrote " + file.getKey());
        }
        terminal.say("next: change what is yours, then run understorey build " + folder);
        return 0;
    }

    private String named(String usual) {
        return name == null ? usual : name;
    }

    private Path file(String kind, String title, String ending) {
        String slug = Slug.of(title);
        if (slug.isEmpty() || slug.length() > Slug.LONGEST) {
            throw new ParameterException(spec.commandLine(), "'" + title + "' makes no file name; use letters and digits, at most " + Slug.LONGEST);
        }
        return folder.resolve(kind).resolve(slug + ending);
    }

    private void trip(String title, Map<Path, String> files) throws IOException {
        Path file = file("", title, ENDING);
        if (earlier != null) {
            files.put(file, NextTrip.of(Files.readString(earlier), title, today));
            return;
        }
        Plans plans = PlansReader.read(folder);
        Site site = plans.sites().stream().findFirst().orElse(null);
        String bag = plans.bags().stream().map(Bag::slug).filter(Objects::nonNull).findFirst().orElse("phone");
        files.put(file, story(trip(title, site == null ? "{site: My wood, latitude: 52.337, longitude: -3.548, time_zone: Europe/London}"
                : site.slug(), bag, plans, site)));
    }

    private Map<String, String> trip(String title, String site, String bag, Plans plans, @Nullable Site known) {
        Subject subject = subject(plans, known);
        Map<String, String> given = new HashMap<>(Map.of("trip.trip", PlanFiles.quoted(title), "trip.site", site, "trip.gear", bag,
                "trip.date", season(subject, known).toString(), "shot.name", "The carpet", "shot.subject", subject.key(), "shot.light", "[soft]"));
        if (known != null && !known.spots().isEmpty()) {
            given.put("shot.spot", PlanFiles.quoted(known.spots().get(0).name()));
        }
        return given;
    }

    /** The flower of the site, or a common one of its half of the earth. */
    private static Subject subject(Plans plans, @Nullable Site site) {
        boolean south = site != null && site.position().latitude() < 0;
        List<String> known = site == null ? List.of() : site.seasons().stream().map(season -> season.subject()).toList();
        return plans.subjects().stream().filter(subject -> known.contains(subject.key())).findFirst()
                .orElseGet(() -> plans.subjects().stream().filter(subject -> south ? subject.southern() : subject.key().equals("ramsons"))
                        .findFirst().orElseThrow());
    }

    /** The day that comes next on which the flower is likeliest to be out; without a site, the middle of its months. */
    private LocalDate season(Subject subject, @Nullable Site site) {
        LocalDate best = best(subject, site, today);
        return best.isAfter(today) ? best : best(subject, site, today.plusYears(1));
    }

    private static LocalDate best(Subject subject, @Nullable Site site, LocalDate near) {
        FloweringWindow window = site == null ? null : FloweringWindow.of(site, subject, near, null);
        int first = Objects.requireNonNullElse(subject.monthFirst(), 5);
        int last = Objects.requireNonNullElse(subject.monthLast(), first);
        return window != null ? window.best() : LocalDate.of(near.getYear(), (first + (last - first + 12) % 12 / 2 - 1) % 12 + 1, 15);
    }

    private void site(String title, Map<Path, String> files) {
        files.put(file("sites", title, ENDING), starter(PlanFiles.Kind.SITE,
                Map.of("site.site", PlanFiles.quoted(title), "site.latitude", "52.337", "site.longitude", "-3.548", "spot.name", "Gate")));
        files.put(file("sites", title, "-scouting.html"), ScoutingPage.of(title));
    }

    private void bag(String title, Map<Path, String> files) {
        files.put(file("gear", title, ENDING), starter(PlanFiles.Kind.BAG, Map.of("bag.gear", PlanFiles.quoted(title))));
    }

    /** The opening picture with its keys, then one picture of each other part of the story. */
    private static String story(Map<String, String> given) {
        String subject = given.get("shot.subject");
        return starter(PlanFiles.Kind.TRIP, given) + "  - {name: Low among the flowers, role: approach, subject: " + subject + ", viewpoint: ground}\n"
                + "  - {name: One flower, role: closing, subject: " + subject + "}\n";
    }

    private static String starter(PlanFiles.Kind kind, Map<String, String> given) {
        return "# yaml-language-server: $schema=" + (kind == PlanFiles.Kind.TRIP ? "" : "../") + "schema/" + kind.word() + ".schema.json\n"
                + PlanFiles.builtIn().starter(kind, given);
    }

    /** The schemas that the first line of each file names, where they are not there yet. */
    private void schemas(Map<Path, String> files) {
        for (PlanFiles.Kind kind : PlanFiles.Kind.values()) {
            Path file = folder.resolve("schema").resolve(kind.word() + ".schema.json");
            if (!Files.exists(file)) {
                files.put(file, Json.document(PlanFiles.builtIn().schema(kind)));
            }
        }
    }
}
