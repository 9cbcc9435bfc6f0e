package understorey.pages;

/** Fault in a template that cannot be read or filled in, with its place. */
public final class TemplateFault extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final String template;
    private final int line;
    private final int column;

    TemplateFault(String template, int line, int column, String says) {
        super(says);
        this.template = template;
        this.line = line;
        this.column = column;
    }

    /** One line with a place that editors link: {@code templates/plan.ftlh:12:5: error: …}. */
    public String plain() {
        return "templates/" + template + ":" + line + ":" + column + ": error: " + getMessage();
    }
}
