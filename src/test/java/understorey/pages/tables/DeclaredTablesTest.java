package understorey.pages.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import understorey.advice.Measure;
import understorey.brief.Brief;
import understorey.brief.TimedShot;
import understorey.kit.camera.CameraFigures;
import understorey.pages.Briefs;
import understorey.pages.html.PlaceView;
import understorey.pages.html.PlanView;
import understorey.pages.html.SheetPage;
import understorey.pages.json.Json;
import understorey.pages.markdown.Prose;
import understorey.pages.templates.Templates;
import understorey.pages.words.Sentences;
import understorey.plan.Share;

/** Head and cell of a column come from one declaration, whichever dress it wears. */
class DeclaredTablesTest {

    private static final Sentences WORDING = Sentences.builtIn();
    private static final Pattern HEAD = Pattern.compile("<th[^>]* scope=\"col\"");
    private static final Pattern CELL = Pattern.compile("<t[hd]");
    private static final Pattern BAR = Pattern.compile("(?<!\\\\)\\|");

    /** For the template of this test. */
    public record Shown(TableView table) {
    }

    @TempDir
    private Path folder;

    @Test
    void everyTableHasACellUnderEachOfItsHeadsInHtmlAndMarkdown() throws IOException {
        Templates templates = templates();
        int rows = 0;
        for (Brief brief : Briefs.all()) {
            for (TableView table : views(brief)) {
                int columns = table.flat().size();
                assertTrue(columns > 0 || table.lines().isEmpty());
                assertEquals(columns, (table.groups().isEmpty() ? table.heads() : table.groups()).stream()
                        .mapToInt(head -> Math.max(1, head.span())).sum());
                String html = templates.fill("table.ftlh", new Shown(table));
                assertEquals(table.lines().isEmpty(), html.isBlank());
                if (!table.lines().isEmpty()) {
                    String head = html.substring(html.indexOf("<thead>"), html.indexOf("</thead>"));
                    assertEquals(columns, count(HEAD.matcher(head)), head);
                }
                for (String row : html.replaceFirst("(?s)^.*<tbody>", "").lines().filter(line -> line.startsWith("<tr")).toList()) {
                    assertEquals(columns, count(CELL.matcher(row)), row);
                    rows++;
                }
                for (String line : templates.fill("markdown-table.ftl", new Shown(table)).lines().filter(line -> line.startsWith("|")).toList()) {
                    assertEquals(columns + 1, count(BAR.matcher(line)), line);
                }
            }
        }
        assertTrue(rows > 1000, rows + " rows");
    }

    @Test
    void everyColumnForProgramsHasAValueForEachRow() throws IOException {
        for (Brief brief : Briefs.all()) {
            for (Table<?> table : tables(brief).values()) {
                JsonNode json = new ObjectMapper().readTree(Json.document(table));
                List<JsonNode> columns = new ArrayList<>();
                leaves(json, columns);
                assertEquals(table.columns().stream().filter(column -> column.key() != null).count(), columns.size());
                columns.forEach(column -> assertEquals(table.rows().size(), column.size()));
            }
        }
    }

    @Test
    void aNewColumnIsOneLine() throws IOException {
        Brief brief = Briefs.all().get(0);
        Column<TimedShot> number = Column.of("number", "Picture", Measure.COUNT, TimedShot::number);
        Column<TimedShot> height = Column.of("lens_height_m", "Lens height", Measure.METRES, shot -> shot.fit().best().heightM());
        Table<TimedShot> before = new Table<>(List.of(number), brief.timed());
        Table<TimedShot> after = new Table<>(List.of(number, height), brief.timed());
        String html = templates().fill("table.ftlh", new Shown(after.view("Pictures", WORDING)));
        String markdown = templates().fill("markdown-table.ftl", new Shown(after.view("Pictures", WORDING)));
        assertTrue(html.contains("<th scope=\"col\">Lens height</th></tr>") && html.contains("<td>1.5\u00a0m</td>"), html);
        assertTrue(markdown.contains("| Picture | Lens height |\n|--:|--:|\n| 1 | 1.5\u00a0m |"), markdown);
        assertTrue(Json.document(after).contains("\"lens_height_m\": [1.5,"));
        for (String without : List.of(templates().fill("table.ftlh", new Shown(before.view("Pictures", WORDING))), Json.document(before))) {
            assertFalse(without.contains("1.5"), without);
        }
    }

    @Test
    void templatesHaveNoTableButTheMacros() throws IOException {
        List<String> tables = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("templates"))) {
            for (Path file : files.filter(file -> !file.toString().endsWith(".css")).sorted().toList()) {
                Files.readAllLines(file).stream().filter(line -> line.contains("<table") || line.startsWith("|"))
                        .forEach(line -> tables.add(file.getFileName() + " " + line.strip()));
            }
        }
        assertEquals(List.of("html.ftlh", "markdown.ftl", "markdown.ftl", "markdown.ftl"), tables.stream()
                .map(line -> line.split(" ")[0]).toList(), tables.toString());
    }

    @Test
    void templatesHaveNoListOfFactsButTheMacros() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("templates"))) {
            assertEquals(List.of(Path.of("templates", "html.ftlh")), files.filter(file -> {
                try {
                    return Files.readString(file).contains("<dl");
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            }).toList());
        }
    }

    @Test
    void rowsThatStandOutAreBoldInBothDresses() throws IOException {
        List<Column<String>> columns = List.of(Column.of("name", "Name", Measure.WORD, name -> name),
                Column.<String>text("Chance", Measure.WORD, (name, wording) -> "88 %\nbest").strongIf("b"::equals));
        TableView table = new Table<>(columns, List.of("a", "b")).view("", WORDING);
        assertTrue(templates().fill("table.ftlh", new Shown(table))
                .contains("<td class=\"t\">88 %<br>best</td></tr>\n<tr><th scope=\"row\">b</th><td class=\"t\"><b>88 %<br>best</b></td>"));
        assertTrue(templates().fill("markdown-table.ftl", new Shown(table)).contains("| a | 88 %, best |\n| b | **88 %, best** |"));
    }

    @Test
    void aColumnWithoutWordsInAnyRowIsNotShown() {
        List<Column<String>> columns = List.of(Column.of("name", "Name", Measure.WORD, name -> name),
                Column.text("Remark", Measure.WORD, (name, wording) -> name.equals("b") ? "late" : ""));
        assertEquals(List.of(Map.of("Name", "a")), Tables.rows(new Table<>(columns, List.of("a")).view("", WORDING)));
        assertEquals(2, new Table<>(columns, List.of("a", "b")).view("", WORDING).flat().size());
    }

    @Test
    void headsOfOneGroupShareAHead() {
        List<Column<String>> columns = Column.all(List.of(Column.of("name", "Name", Measure.WORD, name -> name)),
                Column.under("Size", List.of(Column.of("width_m", "width", Measure.METRES, name -> 1.0),
                Column.of("height_m", "height", Measure.METRES, name -> 2.0))));
        TableView table = new Table<>(columns, List.of("a")).view("", WORDING);
        assertEquals(List.of(0, 2), table.groups().stream().map(TableView.Head::span).toList());
        assertEquals(List.of("width", "height"), table.heads().stream().map(TableView.Head::text).toList());
        assertEquals(List.of("Name", "Size: width", "height"), table.flat().stream().map(TableView.Head::text).toList());
    }

    private static Map<String, Table<?>> tables(Brief brief) {
        Map<String, Table<?>> tables = new LinkedHashMap<>();
        tables.put("light", new Table<>(LightColumns.day("skyline"), brief.day().light()));
        tables.put("floor", new Table<>(LightColumns.FLOOR, brief.day().places().get(0).light()));
        tables.put("forecast", new Table<>(LightColumns.FORECAST, brief.weather()));
        tables.put("steps", new Table<>(VisitColumns.steps(brief), brief.order().legs()));
        tables.put("take", new Table<>(VisitColumns.take(brief), brief.packing().take()));
        tables.put("leave", new Table<>(VisitColumns.LEAVE, brief.packing().leave()));
        tables.put("calendar", SeasonColumns.calendar(brief.season().ranking() == null ? List.of() : brief.season().ranking().days()));
        tables.put("records", new Table<>(SeasonColumns.RECORDS, SeasonColumns.Year.of(brief.trip().site())));
        tables.put("cameras", new Table<>(BagColumns.CAMERAS, CameraFigures.of(brief.trip().gear())));
        tables.put("others", new Table<>(BagColumns.OTHERS, BagColumns.Other.of(brief.trip().gear())));
        tables.put("days", new Table<>(SeasonColumns.DAYS, brief.season().ranking() == null ? List.of() : brief.season().ranking().days()));
        for (TimedShot shot : brief.timed()) {
            tables.put("other light " + shot.number(), SettingsColumns.ifTheLightDiffers(shot));
            tables.put("tried " + shot.number(), LensColumns.tried(shot));
            tables.put("cover " + shot.number(), new Table<>(LensColumns.COVER, shot.cover() == null ? List.of() : shot.cover().choices()));
        }
        return tables;
    }

    private static List<TableView> views(Brief brief) {
        List<TableView> views = new ArrayList<>();
        tables(brief).entrySet().stream().filter(entry -> entry.getValue().columns().stream().anyMatch(column -> column.head() != null))
                .forEach(entry -> views.add(entry.getValue().view(entry.getKey(), WORDING)));
        PlaceView place = PlaceView.of(brief.trip().site(), Share.Precision.EXACT, false, new Prose(), Sentences.builtIn());
        views.add(place.spots());
        views.add(place.walks());
        views.add(SheetPage.of(brief, PlanView.of(brief, Templates.html(""), WORDING, new Prose(), new PlanView.Around(null, null, null)),
                Templates.html(""), WORDING, new Prose()).days());
        return views;
    }

    private Templates templates() throws IOException {
        Files.writeString(folder.resolve("table.ftlh"), "<#import \"html.ftlh\" as d><@d.table of=page.table label=\"Table\" />");
        Files.writeString(folder.resolve("markdown-table.ftl"),
                "<#ftl output_format=\"Markdown\">\n<#import \"markdown.ftl\" as d>\n<@d.table of=page.table />\n");
        return new Templates(folder);
    }

    private static long count(Matcher matcher) {
        return matcher.results().count();
    }

    private static void leaves(JsonNode json, List<JsonNode> leaves) {
        json.forEach(column -> {
            if (column.isObject()) {
                leaves(column, leaves);
            } else {
                leaves.add(column);
            }
        });
    }
}
