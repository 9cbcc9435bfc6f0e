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

/** Reads a folder of plans and says what is wrong with it. */
final class CheckCommand implements Command {

    static final String NAME = "check";

    private final Terminal terminal;

    CheckCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public CommandSpec spec() {
        return Command.spec(NAME, "Say what is wrong with the plans in a folder. Writes nothing.")
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
            terminal.out().println(json(plans));
        } else {
            terminal.findings(plans);
            SitePages pages = SitePages.open(null);
            for (Trip trip : plans.trips()) {
                pages.findings(Planner.brief(trip))
                        .forEach(line -> terminal.err().println(trip.slug() + ": " + line));
            }
            if (plans.findings().isEmpty()) {
                terminal.err().println(Terminal.count(plans.trips().size(), "trip") + ", nothing to find fault with");
            }
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
