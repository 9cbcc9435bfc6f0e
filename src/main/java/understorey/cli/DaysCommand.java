package understorey.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import understorey.pages.DaysList;
import understorey.plan.Display;
import understorey.plan.ForecastHour;
import understorey.plan.Trip;
import understorey.plan.When;
import understorey.reading.Plans;
import understorey.reading.PlansReader;
import understorey.season.DayRanking;

/** Ranks the days that a trip could go. */
@Command(name = "days", description = "Rank the days of a trip by flowers, light, hours, weather and your wishes, the best "
        + "first. For a trip with one date, it ranks the two weeks before and after. Writes nothing.",
        footer = {"", "Examples:",
            "  understorey days first-look",
            "  understorey days first-look --from 2027-04-20 --to 2027-05-20 --csv"})
final class DaysCommand implements Callable<Integer> {

    /** Days before and after the date of a trip with one date. */
    private static final int AROUND_D = 14;
    private static final int MOST_DAYS = 366;
    /** Folder in which a trip is looked for by its name. */
    private static final String PLANS = "plans";

    private final Terminal terminal;

    @Parameters(paramLabel = "TRIP", description = "trip file, or its name in plans/")
    private Path asked;
    @Option(names = "--from", paramLabel = "DATE",
            description = "first day, for example 2027-04-20, instead of the trip's own days")
    private @Nullable String first;
    @Option(names = "--to", paramLabel = "DATE", description = "last day")
    private @Nullable String last;
    @Option(names = "--units", paramLabel = "SYSTEM", converter = UnitSystems.class, description = UnitSystems.HELP)
    private Display.@Nullable UnitSystem units;
    @Option(names = "--json", description = "the days as JSON")
    private boolean json;
    @Option(names = "--csv", description = "the days as CSV")
    private boolean csv;

    DaysCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        if (json && csv) {
            return wrong("give --json or --csv, not both");
        }
        Path file = asked.toString().endsWith(".yaml") ? asked : Path.of(PLANS).resolve(asked + ".yaml");
        if (!Files.isRegularFile(file)) {
            return wrong("no such trip: " + file + "; give a trip file, or its name in " + PLANS);
        }
        LocalDate from = date(first);
        LocalDate to = date(last);
        if ((first == null) != (from == null) || (last == null) != (to == null)) {
            return wrong("write dates as 2027-05-08");
        }
        if ((from == null) != (to == null) || from != null && to != null && (to.isBefore(from)
                || to.toEpochDay() - from.toEpochDay() >= MOST_DAYS)) {
            return wrong("give both --from and --to, in this order and within one year");
        }
        Plans plans = PlansReader.read(file);
        terminal.findingsWithTheirCount(plans, List.of());
        String slug = slug(file);
        for (Trip trip : plans.trips()) {
            if (trip.slug().equals(slug)) {
                List<LocalDate> days = existing(trip, from == null || to == null ? days(trip) : new When.Between(from, to).days());
                if (days.isEmpty()) {
                    return wrong("there is no " + from + " in " + trip.site().zone().getId());
                }
                rank(trip, days);
                return 0;
            }
        }
        terminal.say("not ranked: " + file);
        return 1;
    }

    private int wrong(String text) {
        terminal.say(text);
        return 2;
    }

    private void rank(Trip trip, List<LocalDate> days) {
        DayRanking ranking = DayRanking.of(dated(trip), days);
        DaysList list = DaysList.open(json || csv ? Display.USUAL : trip.display().in(units));
        list.warnings(ranking).forEach(terminal::say);
        terminal.result(json ? list.json(ranking, trip.site()) : csv ? list.csv(ranking)
                : list.table(ranking, trip.site()));
    }

    private static List<LocalDate> days(Trip trip) {
        return trip.when() instanceof When.On on
                ? new When.Between(on.date().minusDays(AROUND_D), on.date().plusDays(AROUND_D)).days() : trip.when().days();
    }

    /** Without the days that the site's calendar left out. */
    private static List<LocalDate> existing(Trip trip, List<LocalDate> days) {
        return days.stream().filter(trip.site()::has).toList();
    }

    /** The trip with its forecast limited to its own date, so that it does not count for the days around it. */
    private static Trip dated(Trip trip) {
        if (!(trip.when() instanceof When.On on) || trip.forecast().isEmpty()) {
            return trip;
        }
        List<ForecastHour> forecast = new ArrayList<>();
        for (ForecastHour hour : trip.forecast()) {
            forecast.add(new ForecastHour(hour.begins(on.date()).toLocalDate(), hour.time(), hour.temperatureC(), hour.dewPointC(), hour.humidity(),
                    hour.windMs(), hour.gustMs(), hour.okta(), hour.rainMm(), hour.rainChance(), hour.temperature850C(),
                    hour.wind850Ms()));
        }
        return trip.with(forecast);
    }

    private static String slug(Path file) {
        String name = file.getFileName().toString();
        return name.substring(0, name.lastIndexOf('.'));
    }

    private static @Nullable LocalDate date(@Nullable String text) {
        try {
            return text == null || text.length() > "2027-05-08".length() ? null : LocalDate.parse(text);
        } catch (DateTimeParseException fault) {
            return null;
        }
    }
}
