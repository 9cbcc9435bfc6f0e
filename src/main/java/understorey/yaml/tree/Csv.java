package understorey.yaml.tree;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import understorey.yaml.finding.Findings;
import understorey.yaml.finding.Pos;

/**
 * Reads comma-separated values (RFC 4180): a header line, quotes around cells that contain commas, line ends or
 * quotes, and each quote inside a cell written twice. Lines end in \r\n or \n; empty lines are skipped.
 */
public final class Csv {

    private final Findings findings;
    private final String text;
    private final List<Node.Scalar> row = new ArrayList<>();
    private final List<Node.Mapping> rows = new ArrayList<>();
    private @Nullable List<Node.Scalar> header;
    private int at;
    private int line = 1;
    private int column = 1;
    /** Index up to which the column has been counted. */
    private int counted;

    private Csv(Findings findings) {
        this.findings = findings;
        this.text = findings.source().text();
    }

    /** Each row as keys and values: the column names and the cells; empty cells are left out. */
    public static List<Node.Mapping> rows(Findings findings) {
        Csv csv = new Csv(findings);
        while (csv.at < csv.text.length()) {
            if (!csv.cell()) {
                break;
            }
        }
        return csv.rows;
    }

    /** Reads one cell and its end; false if the rest cannot be read. */
    private boolean cell() {
        Pos start = here();
        StringBuilder cell = new StringBuilder();
        if (text.charAt(at) == '"') {
            if (!quoted(cell)) {
                findings.error(start, "this quote is never closed", "add the closing quote");
                return false;
            }
        } else {
            while (at < text.length() && !ends(text.charAt(at))) {
                cell.append(text.charAt(at++));
            }
        }
        if (at < text.length() && !ends(text.charAt(at))) {
            findings.error(here(), "after the closing quote there must be a comma or the end of the line",
                    "write each quote inside a cell twice");
            return false;
        }
        String value = cell.toString();
        row.add(new Node.Scalar(value, value.isBlank(), new Pos(start.line(), start.column(), length(value))));
        if (at < text.length() && text.charAt(at) == ',') {
            at++;
            if (at < text.length()) {
                return true;
            }
            row.add(new Node.Scalar("", true, here()));
        }
        lineEnd();
        return true;
    }

    private boolean quoted(StringBuilder cell) {
        at++;
        while (at < text.length()) {
            char c = text.charAt(at++);
            if (c == '"') {
                if (at >= text.length() || text.charAt(at) != '"') {
                    return true;
                }
                at++;
            } else if (c == '\n') {
                newLine();
            }
            cell.append(c);
        }
        return false;
    }

    private void lineEnd() {
        boolean blank = row.size() == 1 && row.get(0).empty();
        List<Node.Scalar> names = header;
        if (!blank && names == null) {
            header = List.copyOf(row);
        } else if (!blank && names != null) {
            row(names);
        }
        row.clear();
        if (at < text.length() && text.charAt(at) == '\r') {
            at++;
        }
        if (at < text.length() && text.charAt(at) == '\n') {
            at++;
        }
        newLine();
    }

    private void newLine() {
        line++;
        column = 1;
        counted = at;
    }

    private void row(List<Node.Scalar> names) {
        Pos start = row.get(0).pos();
        if (row.size() != names.size()) {
            findings.error(start, "this row has " + row.size() + " cells, but the header line has " + names.size(),
                    "put quotes around a cell that contains a comma");
            return;
        }
        Map<String, Node.Entry> entries = new LinkedHashMap<>();
        for (int i = 0; i < row.size(); i++) {
            if (!row.get(i).empty()) {
                Node.Scalar name = names.get(i);
                if (entries.putIfAbsent(name.text().strip(), new Node.Entry(name.pos(), row.get(i))) != null) {
                    findings.error(name.pos(), "the column '" + name.text().strip() + "' is given twice",
                            "delete or rename one of them");
                }
            }
        }
        rows.add(new Node.Mapping(entries, start));
    }

    private boolean ends(char c) {
        return c == ',' || c == '\n' || c == '\r';
    }

    private Pos here() {
        column += text.codePointCount(counted, at);
        counted = at;
        return new Pos(line, column, 1);
    }

    private static int length(String value) {
        int end = value.indexOf('\n');
        return value.codePointCount(0, end < 0 ? value.length() : end);
    }
}
