package understorey.reading;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/** What the parser says against a file, in words for its author. */
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
        findings.error(pos, "this cannot be read as YAML", "a key is one word or text, followed by ': '");
    }

    private void report() {
        if (context.contains("flow sequence") && problem.startsWith("expected ',' or ']'")) {
            say(opened, "the list opened on line " + opened.line() + " is never closed with ']'",
                    "put ']' where the list ends, and a comma between its entries");
        } else if (context.contains("flow mapping") && problem.startsWith("expected ',' or '}'")) {
            say(opened, "the block opened on line " + opened.line() + " is never closed with '}'",
                    "put '}' where the block ends, and a comma between its keys");
        } else if (context.contains("quoted scalar") && problem.contains("end of stream")) {
            say(opened, "the quote opened on line " + opened.line() + " is never closed",
                    "put the same quote mark where the text ends");
        } else if (context.contains("flow node") && problem.contains("stream end")) {
            say(at, "the file ends in a list or block that is never closed", "close it with ']' or '}'");
        } else if (context.contains("double-quoted")) {
            say(at, "a backslash in double quotes must be followed by a letter that YAML knows",
                    "use single quotes, or write the backslash twice");
        } else if (problem.contains("TAB") || problem.contains("tab character")) {
            say(at, "there is a tab where the line is indented", "indent with spaces");
        } else if (problem.startsWith("mapping values are not allowed")) {
            say(at, "a ': ' cannot stand here",
                    "put quotes around text that contains ': '; or check the indent of this line");
        } else if (problem.startsWith("sequence entries are not allowed")) {
            say(at, "a '- ' cannot stand here", "begin the list on a line of its own below its key");
        } else if (problem.startsWith("could not find expected ':'")) {
            say(opened, "there is no ': ' after this key", "write 'key: value', with a space after the colon");
        } else if (problem.startsWith("expected <block end>")) {
            say(at, "the indent of this line does not fit the lines above",
                    "keys of one block begin in the same column; so do the dashes of one list");
        } else if (problem.contains("cannot start any token")) {
            say(at, "text cannot begin with this character", "put quotes around the text");
        } else if (problem.contains("<document start>")) {
            say(at, "the plan ends before this line", "check the indent of this line");
        } else {
            say(at, "this cannot be read as YAML", "check indents, quotes and brackets near this place");
        }
    }

    private void say(Pos pos, String text, String help) {
        findings.error(pos, text, help);
    }

    /** Marks count from 0; one past the end of the file is put onto its last line. */
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
