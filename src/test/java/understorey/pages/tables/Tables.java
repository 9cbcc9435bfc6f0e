package understorey.pages.tables;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Tables read row by row. */
public final class Tables {

    private Tables() {
    }

    /** The words of each row by their heads, as the Markdown twin names them. */
    public static List<Map<String, String>> rows(TableView table) {
        return table.lines().stream().map(line -> {
            Map<String, String> row = new LinkedHashMap<>();
            for (int i = 0; i < line.cells().size(); i++) {
                row.put(table.flat().get(i).text(), line.cells().get(i).text());
            }
            return row;
        }).toList();
    }

    /** An object of columns as a list of objects. */
    public static ArrayNode rows(JsonNode columns) {
        ArrayNode rows = JsonNodeFactory.instance.arrayNode();
        columns.properties().forEach(column -> {
            ArrayNode values = column.getValue().isObject() ? rows(column.getValue()) : (ArrayNode) column.getValue();
            for (int i = 0; i < values.size(); i++) {
                ObjectNode row = i < rows.size() ? (ObjectNode) rows.get(i) : rows.addObject();
                row.set(column.getKey(), values.get(i));
            }
        });
        return rows;
    }
}
