package understorey.yaml.tree;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.yaml.snakeyaml.reader.StreamReader;
import understorey.yaml.finding.Findings;
import understorey.yaml.finding.Pos;
import understorey.yaml.finding.Source;

/** Reads one of the author's files as text: an ordinary file, UTF-8, at most 1 MB, no control characters. */
public final class TextFile {

    private static final int LARGEST = 1_000_000;

    private TextFile() {
    }

    /** Text of a file with its findings; none of it if it cannot be read. */
    public static Findings open(Path path, String shown) {
        // A pipe has no end, and opening one waits for its writer.
        if (Files.exists(path) && !Files.isRegularFile(path)) {
            return fault(shown, "this is not an ordinary file, so it is ignored", "move it away, or put a text file in its place");
        }
        try (InputStream in = Files.newInputStream(path)) {
            byte[] bytes = in.readNBytes(LARGEST + 1);
            if (bytes.length > LARGEST) {
                return fault(shown, "this file is larger than 1 MB", "check that it is a plan; a plan has only a few kB");
            }
            return decode(bytes, shown);
        } catch (IOException e) {
            return fault(shown, "this file cannot be read", Files.isSymbolicLink(path) ? "check where this link leads" : "check its permissions");
        }
    }

    /** Like {@link #open}, from bytes. */
    public static Findings decode(byte[] bytes, String shown) {
        String text;
        try {
            text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
        } catch (CharacterCodingException e) {
            return fault(shown, "this file is not UTF-8 text", "save it as UTF-8 in your editor");
        }
        if (text.startsWith("\uFEFF")) {
            text = text.substring(1);
        }
        Source source = new Source(shown, text);
        int control = control(text);
        if (control < 0) {
            return new Findings(source);
        }
        Findings findings = new Findings(Source.unread(shown));
        findings.of(source).error(source.at(control),
                "this line contains a control character (U+" + hex(text.codePointAt(control)) + ")", "delete it");
        return findings;
    }

    /** Index of the first character that YAML does not allow; -1 if there is none. */
    private static int control(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c >= ' ' && c <= '~' || c == '\n') {
                continue;
            }
            int whole = text.codePointAt(i);
            if (!StreamReader.isPrintable(whole)) {
                return i;
            }
            i += Character.charCount(whole) - 1;
        }
        return -1;
    }

    private static Findings fault(String shown, String text, String help) {
        Findings findings = new Findings(Source.unread(shown));
        findings.error(Pos.FILE, text, help);
        return findings;
    }

    private static String hex(int c) {
        String digits = Integer.toHexString(c).toUpperCase(java.util.Locale.ROOT);
        return "0".repeat(Math.max(0, 4 - digits.length())) + digits;
    }
}
