package understorey.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import understorey.brief.Brief;
import understorey.brief.Planner;
import understorey.pages.json.Json;
import understorey.plan.Display;
import understorey.plan.Share;
import understorey.plan.Trip;
import understorey.reading.Plans;
import understorey.reading.PlansReader;
import understorey.yaml.finding.Finding;

/** Reads a folder of plans and reports what is wrong with it. */
@Command(name = "check", description = "Check the plans in a folder, or one plan. Writes nothing.",
        footer = {"", "Examples:",
            "  understorey check plans",
            "  understorey check plans/first-look.yaml --json"})
final class CheckCommand implements Callable<Integer> {

    private final Terminal terminal;
    private final Function<Trip, Brief> planner;

    @Parameters(arity = "0..1", paramLabel = "PLANS", defaultValue = "plans", converter = Folders.class,
            description = "folder of trips, with sites/ and gear/ in it, or the file of one trip (default: ${DEFAULT-VALUE})")
    private Path plansFolder;
    @Mixin
    private final Talk talk = new Talk();
    @Option(names = "--units", paramLabel = "SYSTEM", converter = UnitSystems.class, description = UnitSystems.HELP)
    private Display.@Nullable UnitSystem units;
    @Option(names = "--json", description = "the findings as a JSON array on standard output")
    private boolean json;

    CheckCommand(Terminal terminal) {
        this(terminal, Planner::brief);
    }

    CheckCommand(Terminal terminal, Function<Trip, Brief> planner) {
        this.terminal = terminal;
        this.planner = planner;
    }

    @Override
    public Integer call() throws IOException {
        Progress progress = talk.begin(terminal);
        progress.stage("reading");
        Plans plans = PlaceLeaks.stopped(PlansReader.read(plansFolder), Recall.NOTHING);
        SiteBuild.Made made = new SiteBuild(progress, planner, Recall.NOTHING).make(plans, Share.Audience.PRIVATE, null, null, units, (turn, pages) -> true);
        progress.end();
        List<Finding> findings = new ArrayList<>(plans.findings());
        findings.addAll(made.findings());
        findings.addAll(PlanRemarks.of(plans, made.trips(), said -> true));
        if (json) {
            terminal.result(json(findings));
        } else {
            terminal.findings(findings);
            List<Finding> beside = findings.subList(plans.findings().size(), findings.size());
            int errors = plans.errors() + Terminal.count(beside, Finding.Level.ERROR);
            int warnings = plans.warnings() + Terminal.count(beside, Finding.Level.WARNING);
            int notes = Terminal.count(findings, Finding.Level.NOTE);
            int trips = plans.trips().size() + plans.faultyTrips().size();
            progress.say(Terminal.count(trips, "trip") + ": " + (errors + warnings + notes == 0
                    ? "no problems found" : Terminal.count(errors, "error") + ", "
                            + Terminal.count(warnings, "warning") + ", " + Terminal.count(notes, "note")) + Terminal.shown(plans));
        }
        return plans.hasErrors() || made.hasErrors() ? 1 : 0;
    }

    private static String json(List<Finding> findings) {
        List<Map<String, @Nullable Object>> all = new ArrayList<>();
        for (Finding finding : findings) {
            Map<String, @Nullable Object> members = new LinkedHashMap<>();
            members.put("level", finding.level());
            members.put("file", finding.file());
            members.put("line", finding.line());
            members.put("column", finding.column());
            members.put("length", finding.length());
            members.put("text", finding.text());
            members.put("help", finding.help());
            all.add(members);
        }
        return Json.document(all);
    }
}
