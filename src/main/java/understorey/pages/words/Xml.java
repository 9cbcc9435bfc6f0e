package understorey.pages.words;

/** Text in XML and HTML. */
public final class Xml {

    private Xml() {
    }

    /** With entities for the characters that mark something. */
    public static String escape(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }
}
