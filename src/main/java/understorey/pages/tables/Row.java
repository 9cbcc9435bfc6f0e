package understorey.pages.tables;

/** A word and what it means, as one line of a list or a table. */
public record Row(String name, String text) {
}
