package understorey.pages.tables;

/** A word and what it stands for, as one line of a list or a table. */
public record Row(String name, String text) {
}
