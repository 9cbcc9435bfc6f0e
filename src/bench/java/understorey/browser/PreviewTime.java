package understorey.browser;

import com.microsoft.playwright.Page;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import understorey.Corpus;

/**
 * Time from a save to the load event of the page in the browser, among 200 trips. The browser and the writer use the clock of
 * one machine. The save changes the notes of one picture, the story or the hour of arrival, in turn. Run it with
 * {@code mvn -q -Pbench -DskipTests verify -Dbench.main=understorey.browser.PreviewTime}.
 */
public final class PreviewTime {

    private static final int WARM = 30;
    private static final int MEASURED = 60;
    private static final String LOADED = "performance.timeOrigin + performance.getEntriesByType('navigation')[0].loadEventStart";

    private PreviewTime() {
    }

    /** A folder to write the plans into, and how many trips; both have defaults. */
    public static void main(String[] arguments) throws IOException {
        Path plans = Path.of(arguments.length > 0 ? arguments[0] : "target/preview-plans");
        String trips = arguments.length > 1 ? arguments[1] : "200";
        Corpus.main(new String[] {trips, plans.toString()});
        Process preview = new ProcessBuilder("target/understorey/bin/understorey", "preview", plans.toString(), "--port", "0")
                .redirectError(ProcessBuilder.Redirect.INHERIT).start();
        try (Chromium chromium = Chromium.start(); BufferedReader out = preview.inputReader(StandardCharsets.UTF_8)) {
            Page page = chromium.page(1280, 900);
            page.navigate(out.readLine() + "trip-0100/");
            List<Double> times = new ArrayList<>();
            List<Double> inBrowser = new ArrayList<>();
            for (int i = 0; i < WARM + MEASURED; i++) {
                times.add(save(plans.resolve("trip-0100.yaml"), i, page));
                inBrowser.add(((Number) page.evaluate("performance.getEntriesByType('navigation')[0].loadEventStart")).doubleValue());
            }
            report("save to load event", times.subList(WARM, times.size()));
            report("of this, in the browser", inBrowser.subList(WARM, inBrowser.size()));
        } finally {
            preview.destroy();
        }
    }

    private static double save(Path plan, int turn, Page page) throws IOException {
        String text = Files.readString(plan).replaceAll("(?m)^(story|arrive): .*\n", "");
        String changed = text + (turn % 2 == 0 ? "story: Draft " + turn + "\n" : "arrive: \"05:" + (10 + turn % 50) + "\"\n");
        double before = loaded(page);
        Instant saved = Instant.now();
        Files.writeString(plan, changed);
        page.waitForCondition(() -> loaded(page) > before);
        return loaded(page) - (saved.getEpochSecond() * 1e3 + saved.getNano() / 1e6);
    }

    /** Milliseconds at the load event of the page that is shown; 0 before it. */
    private static double loaded(Page page) {
        try {
            return page.evaluate("performance.getEntriesByType('navigation')[0].loadEventStart > 0 ? " + LOADED + " : 0") instanceof Number at
                    ? at.doubleValue() : 0;
        } catch (com.microsoft.playwright.PlaywrightException between) {
            return 0;
        }
    }

    private static void report(String what, List<Double> times) {
        List<Double> sorted = new ArrayList<>(times);
        Collections.sort(sorted);
        System.out.printf(Locale.ROOT, "%s, %d saves: shortest %.0f ms, median %.0f ms, 9 of 10 under %.0f ms, longest %.0f ms%n", what,
                sorted.size(), sorted.get(0), sorted.get(sorted.size() / 2), sorted.get(sorted.size() * 9 / 10), sorted.get(sorted.size() - 1));
    }
}
