package understorey.pages;

import java.net.URI;
import java.net.URISyntaxException;
import org.jspecify.annotations.Nullable;
import understorey.pages.html.Published;

/**
 * Where a site is published.
 *
 * @param base with a slash at its end
 */
public record Address(String base) {

    /** Name of the picture in the folder of a trip. */
    static final String IMAGE = "preview.png";

    /** The address; null where the text is no web address of a folder. */
    public static @Nullable Address of(String text) {
        try {
            URI uri = new URI(text);
            boolean web = ("https".equalsIgnoreCase(uri.getScheme()) || "http".equalsIgnoreCase(uri.getScheme())) && uri.getHost() != null;
            return !web || uri.getQuery() != null || uri.getFragment() != null ? null : new Address(text.endsWith("/") ? text : text + "/");
        } catch (URISyntaxException fault) {
            return null;
        }
    }

    /** Of a trip's plan. */
    Published plan(TripLine.Card card) {
        String folder = base + encoded(card.slug()) + "/";
        return new Published(folder, card.title(), card.date() + ", " + card.hours() + ". " + card.site() + ": " + card.flowers() + ". "
                + card.pictures() + ".", folder + IMAGE);
    }

    /** Of the index, with the picture of its first trip. */
    Published index(String title, String lead, TripLine.Card first) {
        return new Published(base, title, lead, plan(first).image());
    }

    /** A file name in a path (RFC 3986, 3.3); a space is no plus there. */
    private static String encoded(String name) {
        try {
            return new URI(null, null, "/" + name, null).toASCIIString().substring(1);
        } catch (URISyntaxException fault) {
            throw new IllegalArgumentException(name, fault);
        }
    }
}
