package understorey.pages;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * One file of the site.
 *
 * @param path  below the folder that is published, with forward slashes
 * @param bytes the whole file
 */
public record Page(String path, byte[] bytes) {

    /** A file of text, in UTF-8. */
    public Page(String path, String content) {
        this(path, content.getBytes(StandardCharsets.UTF_8));
    }

    /** The file as text. */
    public String content() {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Page page && path.equals(page.path) && Arrays.equals(bytes, page.bytes);
    }

    @Override
    public int hashCode() {
        return 31 * path.hashCode() + Arrays.hashCode(bytes);
    }
}
