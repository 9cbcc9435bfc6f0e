package understorey.pages.words;

/** Fault in a template that cannot be read or filled in, with its place. */
public final class TemplateFault extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final String template;
    private final int line;
    private final int column;
    private final boolean endless;

    public TemplateFault(String template, int line, int column, String says) {
        this(template, line, column, says, false);
    }

    public TemplateFault(String template, int line, int column, String says, boolean endless) {
        super(says.lines().findFirst().orElse(says));
        this.endless = endless;
        this.template = template;
        this.line = line;
        this.column = column;
    }

    /** The template as its author knows it. */
    public String file() {
        return "templates/" + template;
    }

    public int line() {
        return line;
    }

    public int column() {
        return column;
    }

    /** True if the template never ended, as it would on every page. */
    public boolean endless() {
        return endless;
    }

    /** One line with a place that editors link: {@code templates/plan.ftlh:12:5: error: …}. */
    public String plain() {
        return file() + (line > 0 ? ":" + line + ":" + column : "") + ": error: " + getMessage();
    }
}
