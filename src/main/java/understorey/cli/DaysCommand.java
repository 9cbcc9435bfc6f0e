package understorey.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import understorey.pages.DaysList;
import understorey.plan.ForecastHour;
import understorey.plan.Trip;
import understorey.plan.When;
import understorey.reading.Plans;
import understorey.reading.PlansReader;
import understorey.season.DayRanking;

/** Ranks the days that a trip could go. */
final class DaysCommand implements Command {

    static final String NAME = "days";

    /** To either side of the one day of a trip that has no choice of its own. */
    private static final int AROUND_D = 14;
    private static final int MOST_DAYS = 366;

    private final Terminal terminal;

    DaysCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public CommandSpec spec() {
        return Command.spec(NAME, "Rank the days of a trip by flowers, light, hours, weather and your wishes, the best "
                        + "first. A trip with one date is compared with two weeks before and after it. Writes nothing.")
                .addPositional(PositionalParamSpec.builder().arity("1").required(true).paramLabel("TRIP").type(Path.class)
                        .description("file of the trip, or its name in the folder plans").build())
                .addOption(OptionSpec.builder("--from").paramLabel("DATE").type(String.class)
                        .description("first day, such as 2027-04-20, instead of the trip's own days").build())
                .addOption(OptionSpec.builder("--to").paramLabel("DATE").type(String.class)
                        .description("last day").build())
                .addOption(OptionSpec.builder("--json").type(boolean.class).defaultValue("false")
                        .description("the days as JSON").build())
                .addOption(OptionSpec.builder("--csv").type(boolean.class).defaultValue("false")
                        .description("the days as a table of comma-separated values").build());
    }

    @Override
    public int run(CommandSpec parsed) throws IOException {
        boolean json = parsed.findOption("--json").getValue();
        boolean csv = parsed.findOption("--csv").getValue();
        if (json && csv) {
            return wrong("--json or --csv, not both");
        }
        Path asked = parsed.positionalParameters().get(0).getValue();
        Path file = asked.toString().endsWith(".yaml") ? asked
                : Path.of(PLANS).resolve(asked + ".yaml");
        if (!Files.isRegularFile(file)) {
            return wrong("there is no trip " + file);
        }
        LocalDate from = date(parsed, "--from");
        LocalDate to = date(parsed, "--to");
        if (given(parsed, "--from") != (from != null) || given(parsed, "--to") != (to != null)) {
            return wrong("a date is written year, month, day: 2027-05-08");
        }
        if ((from == null) != (to == null) || from != null && (to.isBefore(from)
                || to.toEpochDay() - from.toEpochDay() >= MOST_DAYS)) {
            return wrong("--from and --to go together, the first before the last and within a year of it");
        }
        Path folder = file.toAbsolutePath().getParent();
        Plans plans = PlansReader.read(file.getParent() == null ? folder : file.getParent());
        terminal.findings(plans);
        String slug = slug(file);
        for (Trip trip : plans.trips()) {
            if (trip.slug().equals(slug)) {
                List<LocalDate> days = existing(trip, from == null ? days(trip) : new When.Between(from, to).days());
                if (days.isEmpty()) {
                    return wrong("there is no " + from + " in " + trip.site().zone().getId());
                }
                tell(trip, days, json, csv);
                return 0;
            }
        }
        terminal.err().println("not ranked: " + file);
        return 1;
    }

    private int wrong(String text) {
        terminal.err().println(text);
        return 2;
    }

    private void tell(Trip trip, List<LocalDate> days, boolean json, boolean csv) {
        DayRanking ranking = DayRanking.of(dated(trip), days);
        DaysList list = DaysList.open();
        list.warnings(ranking).forEach(terminal.err()::println);
        terminal.out().print(json ? list.json(ranking, trip.site()) : csv ? list.csv(ranking)
                : list.table(ranking, trip.site()));
        terminal.out().flush();
    }

    private static List<LocalDate> days(Trip trip) {
        return trip.when() instanceof When.On on
                ? new When.Between(on.date().minusDays(AROUND_D), on.date().plusDays(AROUND_D)).days() : trip.when().days();
    }

    /** Without the days that the site's calendar left out. */
    private static List<LocalDate> existing(Trip trip, List<LocalDate> days) {
        List<LocalDate> existing = new ArrayList<>();
        for (LocalDate day : days) {
            if (trip.site().has(day)) {
                existing.add(day);
            }
        }
        return existing;
    }

    /** A forecast for the one day of a trip says nothing of the days around it. */
    private static Trip dated(Trip trip) {
        if (!(trip.when() instanceof When.On on) || trip.forecast().isEmpty()) {
            return trip;
        }
        List<ForecastHour> forecast = new ArrayList<>();
        for (ForecastHour hour : trip.forecast()) {
            forecast.add(new ForecastHour(on.date(), hour.time(), hour.temperatureC(), hour.dewPointC(), hour.humidity(),
                    hour.windMs(), hour.gustMs(), hour.okta(), hour.rainMm(), hour.rainChance(), hour.temperature850C(),
                    hour.wind850Ms()));
        }
        return new Trip(trip.title(), trip.slug(), trip.series(), trip.site(), trip.when(), trip.arrive(), trip.leave(),
                trip.gear(), trip.companions(), trip.contact(), trip.sky(), forecast, trip.story(), trip.shots(),
                trip.share(), trip.wishes());
    }

    private static String slug(Path file) {
        String name = file.getFileName().toString();
        return name.substring(0, name.lastIndexOf('.'));
    }

    private static boolean given(CommandSpec parsed, String option) {
        return parsed.findOption(option).getValue() != null;
    }

    private static LocalDate date(CommandSpec parsed, String option) {
        String text = parsed.findOption(option).getValue();
        try {
            return text == null || text.length() > "2027-05-08".length() ? null : LocalDate.parse(text);
        } catch (DateTimeParseException fault) {
            return null;
        }
    }
}
