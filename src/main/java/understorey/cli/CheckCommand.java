package understorey.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import understorey.brief.Brief;
import understorey.brief.Planner;
import understorey.pages.SitePages;
import understorey.plan.Share;
import understorey.plan.Trip;
import understorey.reading.Finding;
import understorey.reading.Plans;
import understorey.reading.PlansReader;

/** Reads a folder of plans and says what is wrong with it. */
final class CheckCommand implements Command {

    static final String NAME = "check";

    private final Terminal terminal;
    private final Function<Trip, Brief> planner;

    CheckCommand(Terminal terminal) {
        this(terminal, Planner::brief);
    }

    CheckCommand(Terminal terminal, Function<Trip, Brief> planner) {
        this.terminal = terminal;
        this.planner = planner;
    }

    @Override
    public CommandSpec spec() {
        return Command.spec(NAME, "Say what is wrong with the plans in a folder, or with one plan. Writes nothing.")
                .addPositional(Command.plansFolder())
                .addOption(OptionSpec.builder("--json").type(boolean.class).defaultValue("false")
                        .description("the findings as a JSON array on standard output").build());
    }

    @Override
    public int run(CommandSpec parsed) throws IOException {
        Path plansFolder = parsed.positionalParameters().get(0).getValue();
        boolean json = parsed.findOption("--json").getValue();
        Plans plans = PlansReader.read(plansFolder);
        SiteBuild.Made made = new SiteBuild(terminal, planner).make(plans, Share.Audience.PRIVATE, null);
        List<Finding> findings = new ArrayList<>(plans.findings());
        findings.addAll(made.findings());
        if (json) {
            terminal.out().println(json(findings));
        } else {
            terminal.findings(findings);
            for (SitePages.TripPages trip : made.trips()) {
                trip.findings().forEach(line -> terminal.err().println(trip.card().slug() + ": " + line));
            }
            if (findings.isEmpty()) {
                terminal.err().println(Terminal.count(plans.trips().size(), "trip") + ", nothing to find fault with");
            }
        }
        return plans.hasErrors() || made.hasErrors() ? 1 : 0;
    }

    private static String json(List<Finding> findings) throws IOException {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            DefaultIndenter lines = new DefaultIndenter("  ", "\n");
            DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
            printer.indentArraysWith(lines);
            printer.indentObjectsWith(lines);
            json.setPrettyPrinter(printer);
            json.writeStartArray();
            for (Finding finding : findings) {
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
