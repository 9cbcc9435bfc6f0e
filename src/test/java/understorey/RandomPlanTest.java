package understorey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import understorey.brief.Brief;
import understorey.brief.Planner;
import understorey.pages.Briefs;
import understorey.pages.Page;
import understorey.pages.SitePages;
import understorey.pages.json.PlanSchema;
import understorey.plan.Display;
import understorey.plan.Trip;
import understorey.reading.Plans;
import understorey.reading.PlansReader;
import understorey.share.Sharing;
import understorey.yaml.finding.Finding;

/**
 * Every plan whose values are allowed builds, with finite numbers on every page, or has findings. Run more of them
 * with {@code -Dplans.tries=2500}, and others with {@code -Dplans.seed=7}.
 */
class RandomPlanTest {

    private static final int TRIES = Integer.getInteger("plans.tries", 200);
    private static final long SEED = Long.getLong("plans.seed", 20_270_508L);
    /** Plans that are built together, since opening the templates costs as much as a plan. */
    private static final int TOGETHER = 25;
    private static final Pattern NO_NUMBER = Pattern.compile("\\b(NaN|Infinity)\\b");

    @TempDir
    private Path folder;

    @Test
    void buildsOrHasFindings() throws IOException {
        int built = 0;
        StringBuilder failures = new StringBuilder();
        for (long seed = SEED; seed < SEED + TRIES; seed += TOGETHER) {
            try {
                built += build(seed, (int) Math.min(TOGETHER, SEED + TRIES - seed));
            } catch (RuntimeException | StackOverflowError | AssertionError together) {
                for (long one = seed; one < seed + TOGETHER; one++) {
                    failures.append(failure(one));
                }
            }
        }
        assertTrue(failures.isEmpty(), () -> failures.toString());
        assertTrue(built > TRIES / 2, built + " of " + TRIES + " plans build; more should, for this test to mean much");
    }

    /** How many build; the others have errors. */
    private int build(long first, int count) throws IOException {
        for (int i = 0; i < TOGETHER; i++) {
            Path file = folder.resolve("trip-" + i + ".yaml");
            Files.deleteIfExists(file);
            if (i < count) {
                Files.writeString(file, RandomPlan.yaml(first + i));
            }
        }
        Plans plans = PlansReader.read(folder);
        assertEquals(count, plans.trips().size() + plans.faultyTrips().size());
        assertEquals(plans.hasErrors(), !plans.faultyTrips().isEmpty(), "a faulty trip has an error");
        for (Finding finding : plans.findings()) {
            assertFalse(finding.text().contains(" must be from "), () -> "the limits here are not the reader's: " + finding.plain());
        }
        List<Brief> briefs = new ArrayList<>();
        for (Trip trip : plans.trips()) {
            Display.UnitSystem units = briefs.size() % 2 == 0 ? Display.UnitSystem.METRIC : Display.UnitSystem.IMPERIAL;
            briefs.add(Planner.brief(Sharing.forAudience(trip.shown(new Display(units, Display.Clock.HOURS_12)))));
        }
        List<Page> pages = Briefs.pages(SitePages.open(null, null, Display.USUAL), briefs, List.of(), List.of(), List.of());
        for (Page page : pages) {
            Matcher match = NO_NUMBER.matcher(page.content());
            assertTrue(!match.find(), () -> page.path() + ": …" + page.content().substring(
                    Math.max(0, match.start() - 60), Math.min(page.content().length(), match.end() + 60)));
            if (page.path().endsWith("/plan.json")) {
                assertEquals(List.of(), PlanSchema.faults(page.content()), page.path());
            }
        }
        return briefs.size();
    }

    /** Of one plan: what went wrong, and its YAML; empty for nothing. */
    private String failure(long seed) throws IOException {
        try {
            build(seed, 1);
            return "";
        } catch (RuntimeException | StackOverflowError | AssertionError fault) {
            Throwable cause = fault;
            while (cause.getCause() != null) {
                cause = cause.getCause();
            }
            StringBuilder out = new StringBuilder("\n\n# plans.seed=" + seed + ": " + cause);
            for (StackTraceElement at : cause.getStackTrace()) {
                out.append(at.getClassName().startsWith("understorey.") ? "\n#   " + at : "");
            }
            return out.append('\n').append(RandomPlan.yaml(seed)).toString();
        }
    }
}
