package understorey.preview;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Objects;

/**
 * The script that the preview adds at the end of a page. A page that forbids scripts and connections gets a permit for this one
 * (Content Security Policy Level 3: of two directives with one name the first counts, and a script is named by its SHA-256 sum).
 */
final class ReloadScript {

    private static final String POLICY = "<meta http-equiv=\"Content-Security-Policy\" content=\"";
    private static final String SCRIPT = read();
    private static final String PERMIT = "script-src 'sha256-" + sum(SCRIPT) + "'; connect-src 'self'; ";

    private ReloadScript() {
    }

    /** A page with the script. */
    static byte[] in(byte[] page, String tag) {
        String html = new String(page, StandardCharsets.UTF_8).replace(POLICY, POLICY + PERMIT)
                + "<script data-tag=\"" + tag + "\">" + SCRIPT + "</script>\n";
        return html.getBytes(StandardCharsets.UTF_8);
    }

    private static String read() {
        try (InputStream in = Objects.requireNonNull(ReloadScript.class.getResourceAsStream("/understorey/preview/reload.js"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private static String sum(String script) {
        try {
            return Base64.getEncoder().encodeToString(MessageDigest.getInstance("SHA-256").digest(script.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
