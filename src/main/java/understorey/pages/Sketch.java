package understorey.pages;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** A sketch that is drawn only where a page shows it. */
@FunctionalInterface
public interface Sketch {

    /**
     * The element; empty where no camera can take the picture.
     *
     * @param id unique on its page
     */
    String svg(String id);

    /** The same sketch, which keeps what it drew. */
    default Sketch kept() {
        Map<String, String> drawn = new ConcurrentHashMap<>();
        return id -> drawn.computeIfAbsent(id, this::svg);
    }
}
