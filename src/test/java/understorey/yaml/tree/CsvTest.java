package understorey.yaml.tree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.yaml.finding.Findings;
import understorey.yaml.finding.Pos;
import understorey.yaml.finding.Source;

/** The rules are those of RFC 4180 (2005), section 2, by number where one is tested. */
class CsvTest {

    private final Findings[] used = new Findings[1];

    private List<Node.Mapping> rows(String text) {
        used[0] = new Findings(new Source("table.csv", text));
        return Csv.rows(used[0]);
    }

    private static String cell(Node.Mapping row, String column) {
        return ((Node.Scalar) row.entries().get(column).value()).text();
    }

    @Test
    void readsLinesWithAndWithoutAnEndAfterTheLast() {
        for (String text : List.of("a,b\r\n1,2\r\n3,4\r\n", "a,b\r\n1,2\r\n3,4", "a,b\n1,2\n\n3,4\n")) {
            List<Node.Mapping> rows = rows(text);
            assertEquals(2, rows.size(), text);
            assertEquals("2", cell(rows.get(0), "b"));
            assertEquals("3", cell(rows.get(1), "a"));
            assertEquals(0, used[0].errors());
        }
    }

    /** Rules 5, 6 and 7: quotes around a cell, line ends and commas inside, a quote written twice. */
    @Test
    void readsQuotedCells() {
        List<Node.Mapping> rows = rows("a,b\n\"1, one\",\"say \"\"two\"\"\"\n\"over\r\ntwo lines\",\"\"\n");
        assertEquals("1, one", cell(rows.get(0), "a"));
        assertEquals("say \"two\"", cell(rows.get(0), "b"));
        assertEquals("over\r\ntwo lines", cell(rows.get(1), "a"));
        assertEquals(0, used[0].errors());
    }

    @Test
    void leavesEmptyCellsOut() {
        List<Node.Mapping> rows = rows("a,b,c\n,2,\n");
        assertEquals(List.of("b"), List.copyOf(rows.get(0).entries().keySet()));
    }

    @Test
    void keepsThePlaceOfEveryCell() {
        Node.Mapping row = rows("a,b\n\"x\ny\",z\n1,µ2\n").get(1);
        assertEquals(new Pos(4, 3, 2), row.entries().get("b").value().pos());
        assertEquals(new Pos(1, 3, 1), row.entries().get("b").key());
    }

    @Test
    void keepsBlanksInCells() {
        assertEquals(" 2 ", cell(rows("a,b\n1, 2 \n").get(0), "b"));
    }

    @Test
    void countsTheCellsOfARow() {
        assertTrue(rows("a,b\n1\n1,2,3\n").isEmpty());
        assertEquals(2, used[0].errors());
    }

    @Test
    void readsNothingFromNothing() {
        assertTrue(rows("").isEmpty());
        assertTrue(rows("a,b").isEmpty());
        assertEquals(0, used[0].errors());
    }
}
