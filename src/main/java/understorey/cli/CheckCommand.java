package understorey.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.Locale;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import understorey.brief.Planner;
import understorey.pages.SitePages;
import understorey.plan.Trip;
import understorey.reading.Finding;
import understorey.reading.Plans;
import understorey.reading.PlansReader;

/** Reads a folder of plans and reports what is wrong with it. */
final class CheckCommand implements Command {

    static final String NAME = "check";

    private final Terminal terminal;

    CheckCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public CommandSpec spec() {
        return Command.spec(NAME, "Check the plans in a folder. Writes nothing.")
                .addPositional(Command.plansFolder())
                .addOption(OptionSpec.builder("--json").type(boolean.class).defaultValue("false")
                        .description("the findings as a JSON array on standard output").build());
    }

    @Override
    public int run(CommandSpec parsed) throws IOException {
        Path plansFolder = parsed.positionalParameters().get(0).getValue();
        boolean json = parsed.findOption("--json").getValue();
        Plans plans = PlansReader.read(plansFolder);
        if (json) {
            terminal.result(json(plans));
        } else {
            terminal.findings(plans.findings());
            int warnings = Terminal.count(plans.findings(), Finding.Level.WARNING);
            int notes = Terminal.count(plans.findings(), Finding.Level.NOTE);
            SitePages pages = SitePages.open(null);
            for (Trip trip : plans.trips()) {
                for (String line : pages.findings(Planner.brief(trip))) {
                    terminal.say(trip.slug() + ": " + line);
                    warnings += line.startsWith("warning") ? 1 : 0;
                    notes += line.startsWith("note") ? 1 : 0;
                }
            }
            int errors = Terminal.count(plans.findings(), Finding.Level.ERROR);
            int trips = plans.trips().size() + plans.faultyTrips().size();
            terminal.say(Terminal.count(trips, "trip") + ": " + (errors + warnings + notes == 0
                    ? "no problems found" : Terminal.count(errors, "error") + ", "
                            + Terminal.count(warnings, "warning") + ", " + Terminal.count(notes, "note")));
        }
        return plans.hasErrors() ? 1 : 0;
    }

    private static String json(Plans plans) throws IOException {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            DefaultIndenter lines = new DefaultIndenter("  ", "\n");
            DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
            printer.indentArraysWith(lines);
            printer.indentObjectsWith(lines);
            json.setPrettyPrinter(printer);
            json.writeStartArray();
            for (Finding finding : plans.findings()) {
                json.writeStartObject();
                json.writeStringField("level", finding.level().name().toLowerCase(Locale.ROOT));
                json.writeStringField("file", finding.file());
                json.writeNumberField("line", finding.line());
                json.writeNumberField("column", finding.column());
                json.writeNumberField("length", finding.length());
                json.writeStringField("text", finding.text());
                json.writeStringField("help", finding.help());
                json.writeEndObject();
            }
            json.writeEndArray();
        }
        return text.toString();
    }
}
