package understorey.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import understorey.yaml.finding.Finding;

/** Names are a few words, and free text is a few pages: longer ones are findings at their place. */
class LongTextsTest {

    private static final String PLAN = """
            trip: %trip
            series: %series
            date: 2027-05-08
            story: %story
            contact: {tell: %tell}
            site:
              site: %site
              public_name: %public_name
              latitude: 52.337
              longitude: -3.548
              time_zone: Europe/London
              parking: {fee: %fee}
              access: %access
              cautions: [%cautions]
              spots: [{name: %spot}]
            gear:
              gear: %gear
              bodies: [{name: %body, pixels: 24 Mpx, sensor: full-frame, mount: %mount}]
              extras: [{name: %extra}]
            shots:
              - {name: %shot, subject: {name: %subject, colour: %colour, care: %care}, notes: %notes, otherwise: %otherwise}
            """;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"trip", "series", "tell", "fee", "spot", "gear", "body", "mount", "extra",
        "shot", "subject", "colour"})
    void takesNamesOfTwoHundredCharacters(String key) throws IOException {
        assertEquals(List.of(), read(key, "n".repeat(200)).findings());
        refused(key, "n".repeat(201), " is longer than 200 characters");
        refused(key, "n".repeat(40_000), " is longer than 200 characters");
    }

    @ParameterizedTest
    @ValueSource(strings = {"story", "access", "cautions", "care", "notes", "otherwise"})
    void takesFreeTextOfTwentyThousandCharacters(String key) throws IOException {
        assertEquals(List.of(), read(key, "n".repeat(20_000)).findings());
        refused(key, "n".repeat(20_001), " is longer than 20 000 characters");
        refused(key, "'[a]: /" + "u".repeat(450) + " [a]" .repeat(2000) + "'", " uses long link references so often");
    }

    @Test
    void refusesAnAddressOfMoreThanTwoThousandCharacters() throws IOException {
        Files.writeString(folder.resolve("trip.yaml"), PLAN.replaceAll("%(\\w+)", "A name")
                .replace("  access:", "  reports: https://example.org/" + "a".repeat(2000) + "\n  access:"));
        assertEquals("'reports' is longer than 2000 characters", PlansReader.read(folder).findings().get(0).text());
    }

    private void refused(String key, String value, String fault) throws IOException {
        List<Finding> findings = read(key, value).findings();
        assertEquals(1, findings.size());
        Finding finding = findings.get(0);
        assertTrue(finding.text().contains(fault), finding.text());
        assertTrue(finding.line() > 0 && finding.column() > 0 && finding.help() != null);
        assertTrue(finding.plain().length() < 1000);
    }

    private Plans read(String key, String value) throws IOException {
        String plan = PLAN.replace("%" + key + "\n", value + "\n").replace("%" + key + "]", value + "]")
                .replace("%" + key + "}", value + "}").replace("%" + key + ",", value + ",");
        assertFalse(plan.equals(PLAN));
        Files.writeString(folder.resolve("trip.yaml"), plan.replaceAll("%(\\w+)", "A name"));
        return PlansReader.read(folder);
    }
}
