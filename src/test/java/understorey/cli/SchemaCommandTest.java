package understorey.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SchemaCommandTest {

    @TempDir
    private Path home;

    @Test
    void printsTheSchemaOfOneKindOfFile() throws IOException {
        Run run = Run.of("schema", Path.of("bag"));
        assertEquals(0, run.exit(), run.err());
        JsonNode schema = new ObjectMapper().readTree(run.out());
        assertEquals("https://json-schema.org/draft/2020-12/schema", schema.path("$schema").asText());
        assertEquals("#/$defs/bag", schema.path("$ref").asText());
        assertTrue(schema.at("/$defs/lens/properties/focal").isObject());
        assertTrue(schema.at("/$defs/shot").isMissingNode(), "what a bag does not need is left out");
        assertTrue(run.out().indexOf("\"x-") < 0, "our own keywords are replaced");
    }

    @Test
    void writesAllThreeBesideThePlans() throws IOException {
        Path folder = home.resolve("plans/schema");
        Run run = Run.of("schema", "--out", folder);
        assertEquals(0, run.exit(), run.err());
        for (String kind : new String[] {"trip", "site", "bag"}) {
            assertEquals("#/$defs/" + kind, new ObjectMapper().readTree(folder.resolve(kind + ".schema.json").toFile()).path("$ref").asText());
        }
        assertTrue(run.err().contains("# yaml-language-server: $schema=schema/trip.schema.json"), run.err());
        assertEquals(2, Run.of("schema", Path.of("tripp")).exit());
        assertTrue(Files.exists(folder));
    }
}
