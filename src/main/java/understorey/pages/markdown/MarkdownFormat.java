package understorey.pages.markdown;

import freemarker.core.CommonMarkupOutputFormat;
import freemarker.core.CommonTemplateMarkupOutputModel;
import java.io.IOException;
import java.io.Writer;
import java.util.regex.Pattern;

/**
 * Markdown (CommonMark 0.31, and its tables) as an output format of templates: every value is text, on one line, and
 * no character of it marks anything. What is Markdown already enters as {@link Markup}.
 */
public final class MarkdownFormat extends CommonMarkupOutputFormat<MarkdownFormat.Markup> {

    public static final MarkdownFormat INSTANCE = new MarkdownFormat();

    private static final Pattern BLANKS = Pattern.compile("\\s*[\\p{Cc}\u2028\u2029]+\\s*");
    private static final Pattern ENDS = Pattern.compile("^[\\s\u00a0]+|[\\s\u00a0]+$");
    private static final Pattern MARKS = Pattern.compile("[\\\\`*_\\[\\]<|~]|&(?=[a-zA-Z#])|^[-+=#>]");
    private static final Pattern NUMBERED = Pattern.compile("^(\\d{1,9})([.)])(?=\\s|$)");

    private MarkdownFormat() {
    }

    /** Text that is Markdown already. */
    static final class Markup extends CommonTemplateMarkupOutputModel<Markup> {

        Markup(String plain, String markup) {
            super(plain, markup);
        }

        @Override
        public MarkdownFormat getOutputFormat() {
            return INSTANCE;
        }
    }

    /** The text of a value. */
    static String escape(String text) {
        String line = ENDS.matcher(BLANKS.matcher(text).replaceAll(" ")).replaceAll("");
        return NUMBERED.matcher(MARKS.matcher(line).replaceAll("\\\\$0")).replaceAll("$1\\\\$2");
    }

    @Override
    public String getName() {
        return "Markdown";
    }

    @Override
    public String getMimeType() {
        return "text/markdown";
    }

    @Override
    public void output(String text, Writer out) throws IOException {
        out.write(escape(text));
    }

    @Override
    public String escapePlainText(String text) {
        return escape(text);
    }

    @Override
    public boolean isLegacyBuiltInBypassed(String name) {
        return false;
    }

    @Override
    protected Markup newTemplateMarkupOutputModel(String plain, String markup) {
        return new Markup(plain, markup);
    }
}
