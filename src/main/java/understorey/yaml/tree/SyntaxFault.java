package understorey.yaml.tree;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import understorey.yaml.finding.Findings;
import understorey.yaml.finding.Pos;

/** Turns a fault of the YAML parser into a finding for the author. */
final class SyntaxFault {

    private final Findings findings;
    private final String problem;
    private final String context;
    private final Pos at;
    private final Pos opened;

    private SyntaxFault(MarkedYAMLException fault, Findings findings) {
        this.findings = findings;
        this.problem = text(fault.getProblem());
        this.context = text(fault.getContext());
        this.at = pos(fault.getProblemMark());
        this.opened = fault.getContextMark() == null ? at : pos(fault.getContextMark());
    }

    static void report(JsonProcessingException fault, Findings findings) {
        // The exception's own place is wrong for tabs; the marks of its cause are right.
        if (fault.getCause() instanceof MarkedYAMLException marked) {
            new SyntaxFault(marked, findings).report();
            return;
        }
        JsonLocation where = fault.getProcessor() instanceof JsonParser parser ? parser.currentTokenLocation()
                : fault.getLocation();
        Pos pos = where == null || where.getLineNr() < 1 ? Pos.FILE
                : new Pos(where.getLineNr(), Math.max(1, where.getColumnNr()), 1);
        findings.error(pos, "this cannot be read as YAML", "write a key as one word or text, followed by ': '");
    }

    private void report() {
        if (context.contains("flow mapping") && at.line() == opened.line() && isAt(':')) {
            say(at, "unexpected ': '", "put quotes around text that contains ': '");
        } else if (context.contains("flow sequence") && problem.startsWith("expected ',' or ']'")) {
            say(opened, "the list opened on line " + opened.line() + " is never closed with ']'",
                    "add ']' at the end of the list, and put commas between its entries");
        } else if (context.contains("flow mapping") && problem.startsWith("expected ',' or '}'")) {
            say(opened, "the '{' on line " + opened.line() + " is never closed with '}'",
                    "add '}' after the last value, and put commas between the values");
        } else if (context.contains("quoted scalar") && problem.contains("end of stream")) {
            say(opened, "the quote opened on line " + opened.line() + " is never closed",
                    "add the same quote mark at the end of the text");
        } else if (context.contains("flow node") && problem.contains("stream end")) {
            say(at, "a list or block is not closed", "close it with ']' or '}'");
        } else if (context.contains("double-quoted")) {
            say(at, "YAML does not know this backslash sequence",
                    "use single quotes, or write the backslash twice");
        } else if (problem.contains("TAB") || problem.contains("tab character")) {
            say(at, "this line is indented with a tab", "use spaces");
        } else if (problem.startsWith("mapping values are not allowed")) {
            say(at, "unexpected ': '",
                    "put quotes around text that contains ': ', or check the indentation of this line");
        } else if (problem.startsWith("sequence entries are not allowed")) {
            say(at, "unexpected '- '", "begin the list on a new line below its key");
        } else if (problem.startsWith("could not find expected ':'")) {
            say(opened, "there is no ': ' after this key", "write 'key: value', with a space after the colon");
        } else if (problem.startsWith("expected <block end>")) {
            say(at, "the indentation of this line does not match the lines above",
                    "keys that belong together begin in the same column; so do the dashes of a list");
        } else if (problem.contains("cannot start any token")) {
            say(at, "text cannot begin with this character", "put quotes around the text");
        } else if (problem.contains("<document start>")) {
            say(at, "this line does not belong to the plan above", "check its indentation");
        } else {
            say(at, "this cannot be read as YAML", "check indentation, quotes and brackets in this line");
        }
    }

    private boolean isAt(char sign) {
        String line = findings.source().line(at.line());
        return line != null && line.codePoints().skip(Math.max(0, at.column() - 1)).findFirst().orElse(-1) == sign;
    }

    private void say(Pos pos, String text, String help) {
        findings.error(pos, text, help);
    }

    /** Place of a mark, which counts from 0; a mark after the end of the file moves to its last line. */
    private Pos pos(Mark mark) {
        if (mark == null) {
            return Pos.FILE;
        }
        int line = mark.getLine() + 1;
        if (findings.source().line(line) == null && findings.source().line(line - 1) != null) {
            int end = findings.source().lengthToEnd(line - 1, 1);
            return new Pos(line - 1, end, 1);
        }
        return new Pos(line, mark.getColumn() + 1, 1);
    }

    private static String text(String said) {
        return said == null ? "" : said;
    }
}
