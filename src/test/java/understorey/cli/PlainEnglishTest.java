package understorey.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Findings, help and documents are plain English: no old-fashioned words, no long sentences. */
class PlainEnglishTest {

    private static final Path BROKEN = Path.of("src", "test", "resources", "broken");
    private static final Pattern FINDING = Pattern.compile("\\S.*?: (?:error|warning|note): (.*)|    fix: (.*)");
    private static final Pattern OLD = Pattern.compile("(?i)\\b(nobody|reckon(s|ed)?|foretold|foretells?|told|lamps?"
            + "|naught|stands|such as|whose|owed?|block of keys|way out)\\b");
    /** Names that a fix lists, code and quoted words are data, not sentences. */
    private static final Pattern DATA = Pattern.compile("(?<=(keys|subjects|names|folder|of|unit): ).*|\"[^\"]*\"|'[^']*'");
    private static final int MOST_WORDS = 22;

    private static List<String> findings() throws IOException {
        List<String> texts = new ArrayList<>();
        try (Stream<Path> folders = Files.list(BROKEN)) {
            for (Path folder : folders.sorted().toList()) {
                for (String line : Files.readAllLines(folder.resolve("expected.txt"), StandardCharsets.UTF_8)) {
                    var finding = FINDING.matcher(line);
                    if (finding.matches()) {
                        texts.add(finding.group(1) == null ? finding.group(2) : finding.group(1));
                    }
                }
            }
        }
        return texts;
    }

    private static List<String> help() {
        return Stream.of("--help", "build --help", "check --help", "days --help", "new --help", "schema --help", "preview --help")
                .map(line -> Run.of((Object[]) line.split(" ")).out().replaceFirst("Usage: .*(\n +.*)*", "")).toList();
    }

    private static List<String> documents() throws IOException {
        List<String> texts = new ArrayList<>(manual());
        for (String file : List.of("DEVELOPERS.md", "src/main/resources/understorey/reading/SUBJECTS.md",
                "src/main/resources/understorey/reading/subjects.csv")) {
            texts.add(Files.readString(Path.of(file)));
        }
        return texts;
    }

    private static List<String> manual() throws IOException {
        List<String> texts = new ArrayList<>(List.of(Files.readString(Path.of("README.md"))));
        try (Stream<Path> files = Files.list(Path.of("src", "docs"))) {
            for (Path file : files.filter(file -> file.toString().endsWith(".md")).sorted().toList()) {
                texts.add(Files.readString(file));
            }
        }
        return texts;
    }

    private static List<String> oldWords(List<String> texts) {
        return texts.stream().flatMap(text -> text.lines())
                .filter(line -> OLD.matcher(DATA.matcher(line).replaceAll("_")).find()).toList();
    }

    private static List<String> longSentences(List<String> texts) {
        return texts.stream().map(text -> DATA.matcher(text).replaceAll("_"))
                .flatMap(text -> Stream.of(text.split("[.!?;:](\\s+|$)|\\n\\s*\\n|\\n +(?:-|\\[?[A-Z]+\\]? )")))
                .filter(sentence -> sentence.strip().split("\\s+").length > MOST_WORDS).toList();
    }

    @Test
    void keepsFindingsPlainAndShort() throws IOException {
        List<String> texts = findings();
        assertTrue(texts.size() > 300, "the texts of all findings");
        assertEquals(List.of(), oldWords(texts));
        assertEquals(List.of(), longSentences(texts));
    }

    @Test
    void keepsHelpPlainAndShort() {
        assertEquals(List.of(), oldWords(help()));
        assertEquals(List.of(), longSentences(help()));
    }

    @Test
    void keepsOldWordsOutOfTheDocuments() throws IOException {
        assertEquals(List.of(), oldWords(documents()));
    }

    @Test
    void keepsTheSentencesOfTheManualShort() throws IOException {
        List<String> prose = manual().stream().map(text -> text.replaceAll("(?s)```.*?```", "").replaceAll("\\]\\([^)]*\\)", "")
                .replaceAll("`[^`]*`", "_").replaceAll("[|*]+|(?m)^(?:- |#|\\d\\. )", ". ")).toList();
        assertTrue(prose.size() > 10);
        assertEquals(List.of(), longSentences(prose));
    }

    @Test
    void wouldCatchOldWordsAndLongSentences() {
        assertEquals(1, oldWords(List.of("nobody told the wind")).size());
        assertEquals(0, oldWords(List.of("there is no spot \"Where it stands\"")).size());
        assertEquals(0, longSentences(List.of("one two. ".repeat(30))).size());
        assertEquals(1, longSentences(List.of("word ".repeat(23))).size());
    }
}
