package understorey.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Holds the text of pages and drawings to short sentences in plain words. */
class PlainWordsTest {

    private static final int MOST_WORDS = 22;
    private static final Path TEMPLATES = Path.of("templates");
    private static final Pattern OLD = Pattern.compile("(?i)\\b(nobody|anybody|somebody|reckon\\w*|foret\\w+|naught|nought|whoever|whatever|told|tells"
            + "|stands|bears|wants|lamps?|pin|pinned|land|(?<!forest )floor|flecks?|thicken\\w*|smears?|sheen|since|beside|common practice"
            + "|back light|side light|as the crow flies|some(?= \\d)|(?<!turn )round|neutral density)\\b|\\ba m²");
    private static final Pattern PLACEHOLDER = Pattern.compile("\\$?\\{[^{}]*}");
    private static final Pattern TEXT = Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"");

    @Test
    void everySentenceIsShort() throws IOException {
        List<String> sentences = sentences();
        assertTrue(sentences.size() > 400, "sentences found: " + sentences.size());
        assertEquals(List.of(), sentences.stream().filter(PlainWordsTest::tooLong).toList());
    }

    @Test
    void noSentenceHasAnOldFashionedWord() throws IOException {
        assertEquals(List.of(), sentences().stream().filter(PlainWordsTest::old).toList());
    }

    @Test
    void noTextInTheCodeOfPagesAndDrawingsHasAnOldFashionedWord() throws IOException {
        List<String> texts = new ArrayList<>();
        for (String room : List.of("pages", "scene")) {
            for (Path file : below(Path.of("src", "main", "java", "understorey", room))) {
                String code = Files.readString(file).replaceAll("(?s)/\\*.*?\\*/", "").replaceAll("(?s)throw new .*?;", "");
                TEXT.matcher(code).results().map(text -> text.group(1)).filter(text -> text.strip().contains(" ")).forEach(texts::add);
            }
        }
        assertTrue(texts.size() > 150, "texts found: " + texts.size());
        assertEquals(List.of(), texts.stream().filter(PlainWordsTest::old).toList());
    }

    @Test
    void findsLongSentencesAndOldWords() {
        String words = "one two three four five six seven eight nine ten ";
        assertTrue(tooLong(words + words + "one {two} three."));
        assertTrue(!tooLong(words + words + "one {two of more}."));
        assertTrue(!tooLong(words + words + ": " + words + "end."));
        assertTrue(tooLong(words + ": " + words + "; one two three."));
        for (String old : List.of("Nobody told the wind.", "walk in by lamp", "some 6 m apart", "some {minutes}",
                "the floor", "10 stems a m²", "round it")) {
            assertTrue(old(old), old);
        }
        for (String plain : List.of("Forest floor", "turn round for one", "about 6 m", "standing", "some surroundings", "landscape")) {
            assertTrue(!old(plain), plain);
        }
        assertEquals(List.of("Leave by {place.at}.", "Next"), split(prose("<p>Leave by <#if (a > 1)><b>${place.at}</b></#if>.</p><td>Next</td>")));
    }

    /** A colon or a semicolon parts a sentence where it has no other: a chain of them counts whole. */
    private static boolean tooLong(String sentence) {
        String[] parts = PLACEHOLDER.matcher(sentence).replaceAll("x").split("[:;] ");
        for (String part : parts.length > 2 ? new String[] {String.join(" ", parts)} : parts) {
            if (Pattern.compile("[\\p{L}\\d]\\S*").matcher(part).results().count() > MOST_WORDS) {
                return true;
            }
        }
        return false;
    }

    private static boolean old(String text) {
        return OLD.matcher(PLACEHOLDER.matcher(text).replaceAll("1")).find();
    }

    private static List<String> sentences() throws IOException {
        List<String> sentences = new ArrayList<>();
        for (Path file : below(TEMPLATES)) {
            String text = Files.readString(file);
            if (file.toString().endsWith(".txt")) {
                text.lines().filter(line -> line.contains(" = ") && !line.startsWith("#"))
                        .forEach(line -> sentences.addAll(split(line.substring(line.indexOf(" = ") + 3))));
            } else if (!file.toString().endsWith(".css")) {
                sentences.addAll(split(prose(text)));
            }
        }
        return sentences;
    }

    /** What a template says: without directives and tags; a tag that begins a block ends a line, and so does a table's bar. */
    private static String prose(String template) {
        return template.replaceAll("(?s)<#--.*?-->", "").replaceAll("(?s)<#function.*?</#function>", "")
                .replaceAll("</?[#@](?:\\([^()]*\\)|\"[^\"]*\"|[^>()\"])*>", "")
                .replaceAll("</?(?:b|strong|em|a|span|code)(?: [^>]*)?>", "").replaceAll("<[^>]*>", "\n")
                .replace("${", "{").replace("|", "\n").replace('\u00a0', ' ');
    }

    /** A full stop before a small letter is an abbreviation's. */
    private static List<String> split(String text) {
        List<String> sentences = new ArrayList<>();
        for (String line : text.split("\n")) {
            Matcher sentence = Pattern.compile(".+?(?:[.!?](?= [\\p{Lu}“{])|$)").matcher(line.strip());
            sentence.results().map(found -> found.group().strip()).filter(found -> found.matches(".*\\p{L}.*")).forEach(sentences::add);
        }
        return sentences;
    }

    private static List<Path> below(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile).sorted().toList();
        }
    }
}
