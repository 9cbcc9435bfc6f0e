package understorey.pages;

/** A sketch that is drawn only where a page shows it. */
@FunctionalInterface
public interface Sketch {

    /**
     * The element; empty where no camera can take the picture.
     *
     * @param id unique on its page
     */
    String svg(String id);
}
