package understorey.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.ResourceLock;
import org.junit.jupiter.api.parallel.Resources;
import understorey.Tree;

/**
 * The demo site as it stands in version control is the one that is built today, byte for byte, wherever in the
 * world. It is rewritten with {@code -Dexpectations=write} only, and reviewed like code.
 */
@ResourceLock(Resources.LOCALE)
@ResourceLock(Resources.TIME_ZONE)
class GoldenSiteTest {

    private static final Path EXPECTED = Path.of("site-out");

    @TempDir
    private Path home;

    @Test
    void isWhatThePlansBuildInAnyZoneAndLocale() {
        if ("write".equals(System.getProperty("expectations"))) {
            assertEquals(0, Run.of("build", "plans", "--out", EXPECTED).exit());
        }
        SortedMap<String, String> expected = Tree.of(EXPECTED);
        // Dotless i and a comma for the decimal point; Arabic digits and three quarters of an hour.
        compare(expected, built("tr-TR", "America/St_Johns"));
        compare(expected, built("ar-EG-u-nu-arab", "Pacific/Chatham"));
        assertTrue(expected.containsKey(".understorey-files"), "the list that later runs go by belongs to the site");
    }

    private SortedMap<String, String> built(String locale, String zone) {
        Locale before = Locale.getDefault();
        TimeZone zoneBefore = TimeZone.getDefault();
        Path site = home.resolve(locale);
        try {
            Locale.setDefault(Locale.forLanguageTag(locale));
            TimeZone.setDefault(TimeZone.getTimeZone(zone));
            Run run = Run.of("build", "plans", "--out", site);
            assertEquals(0, run.exit(), run.err());
        } finally {
            Locale.setDefault(before);
            TimeZone.setDefault(zoneBefore);
        }
        return Tree.of(site);
    }

    private static void compare(SortedMap<String, String> expected, SortedMap<String, String> actual) {
        assertEquals("", Tree.firstDifference(expected, actual),
                "site-out is not what plans/ builds; after a look, -Dexpectations=write accepts it");
    }
}
