package understorey.pages.markdown;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.vladsch.flexmark.ext.tables.TableBlock;
import com.vladsch.flexmark.ext.tables.TableCell;
import com.vladsch.flexmark.ext.tables.TableRow;
import com.vladsch.flexmark.ext.tables.TablesExtension;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.data.MutableDataSet;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import understorey.Places;
import understorey.brief.Brief;
import understorey.pages.Briefs;
import understorey.pages.Page;
import understorey.pages.SitePages;
import understorey.pages.SitePagesTest;
import understorey.pages.Trips;
import understorey.plan.Bag;
import understorey.plan.Display;
import understorey.plan.Shot;
import understorey.plan.Trip;

class MarkdownTwinTest {

    @Test
    void everyRowHasAsManyCellsAsItsHead() {
        int rows = 0;
        for (Page page : twins()) {
            for (TableBlock table : tables(page.content())) {
                Set<Integer> widths = new HashSet<>();
                for (List<String> row : rows(table)) {
                    widths.add(row.size());
                    rows++;
                }
                assertEquals(1, widths.size(), page.path() + " " + table.getChars());
            }
        }
        assertTrue(rows > 1000, "only " + rows);
    }

    /** A line that looks like a row and is read as text belongs to a table that fell apart. */
    @Test
    void everyRowBelongsToATable() {
        for (Page page : twins()) {
            long lines = page.content().lines().filter(line -> line.startsWith("|")).count();
            long read = tables(page.content()).stream().mapToLong(table -> table.getChars().toString().strip().lines().count()).sum();
            assertEquals(lines, read, page.path());
        }
    }

    @Test
    void namesEveryPicture() {
        for (Brief brief : Briefs.all()) {
            String text = SitePagesTest.page(Briefs.pages(SitePages.open(null, null, Display.USUAL), List.of(brief), List.of(), List.of(), List.of()),
                    brief.trip().slug() + "/plan.md");
            brief.timed().forEach(shot -> assertTrue(text.contains("## " + shot.number() + " " + shot.intent().shot().name() + "\n"),
                    shot.intent().shot().name()));
            assertTrue(text.startsWith("# " + MarkdownFormat.escape(brief.trip().title()) + "\n"), text.substring(0, 80));
            assertFalse(text.contains("\u00a0") || text.contains("\n\n\n") || text.contains("<#"), text);
        }
    }

    @Test
    void namesWithPipesAndBackslashesStayInTheirCells() {
        Trip full = Trips.full(Places.MID_LATITUDE, Trips.EXACT);
        Bag bag = Trips.dayBag();
        String name = "Mat | blue \\| \\";
        Bag odd = new Bag("Bag | odd", null, bag.bodies(), bag.lenses(), bag.supports(), bag.filters(), true, bag.cardsGb(), 2,
                List.of(new Bag.Extra(name, 200.0)));
        List<Shot> shots = new ArrayList<>(Trips.pictures());
        Shot first = shots.get(0);
        shots.set(0, Trips.shot("Floor | left \\", first.role(), first.spot(), first.viewpoint(), first.sharp(), 50.0, null, 67.5,
                List.of(), true));
        Trip trip = new Trip(full.title(), full.slug(), null, full.site(), full.when(), full.arrive(), full.leave(), odd,
                List.of(), null, null, List.of(), null, shots, full.share());
        String text = SitePagesTest.page(Briefs.pages(List.of(trip), List.of()), "first-light/plan.md");
        List<String> cells = new ArrayList<>();
        for (TableBlock table : tables(text)) {
            Set<Integer> widths = new HashSet<>();
            rows(table).forEach(row -> {
                widths.add(row.size());
                cells.addAll(row);
            });
            assertEquals(1, widths.size(), table.getChars().toString());
        }
        assertTrue(cells.contains("Mat \\| blue \\\\\\| \\\\"), cells.toString());
        assertTrue(text.contains("**1 Floor \\| left \\\\**"), text);
    }

    private static List<Page> twins() {
        return SitePagesTest.pages().stream().filter(page -> page.path().endsWith("plan.md")).toList();
    }

    private static List<TableBlock> tables(String markdown) {
        MutableDataSet options = new MutableDataSet();
        options.set(Parser.EXTENSIONS, List.of(TablesExtension.create()));
        options.set(TablesExtension.APPEND_MISSING_COLUMNS, false);
        options.set(TablesExtension.DISCARD_EXTRA_COLUMNS, false);
        List<TableBlock> tables = new ArrayList<>();
        for (Node node : Parser.builder(options).build().parse(markdown).getDescendants()) {
            if (node instanceof TableBlock table) {
                tables.add(table);
            }
        }
        return tables;
    }

    private static List<List<String>> rows(TableBlock table) {
        List<List<String>> rows = new ArrayList<>();
        for (Node node : table.getDescendants()) {
            if (node instanceof TableRow row) {
                List<String> cells = new ArrayList<>();
                for (Node cell : row.getChildren()) {
                    cells.add(((TableCell) cell).getText().toString().strip());
                }
                rows.add(cells);
            }
        }
        return rows;
    }
}
