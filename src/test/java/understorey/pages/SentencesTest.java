package understorey.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import understorey.brief.Brief;
import understorey.brief.BriefReason;
import understorey.brief.TimedShot;
import understorey.exposure.ExposureReason;
import understorey.kit.FitReason;
import understorey.kit.LensFit;
import understorey.reason.Figure;
import understorey.reason.Reason;

class SentencesTest {

    private static final Path SOURCES = Path.of("src/main/java");
    private static final Pattern PLACE = Pattern.compile("\\{([^}]*)}");
    private final List<String> texts = List.of(read(Path.of("templates/sentences-pictures.txt")), read(Path.of("templates/sentences-day.txt")));

    @Test
    void everyKindHasExactlyOneLineAndNoLineIsLeftOver() {
        List<String> kinds = kinds().stream().map(Sentences::key).sorted().toList();
        List<String> lines = lines().stream().map(line -> line.substring(0, line.indexOf(" = "))).sorted().toList();
        assertTrue(kinds.size() > 60, kinds.toString());
        assertEquals(kinds, lines);
        Sentences sentences = Sentences.read(texts);
        kinds().forEach(kind -> assertTrue(sentences.knows(kind), kind.name()));
    }

    @Test
    void everyEnumOfReasonsIsFoundInTheSources() {
        assertTrue(kinds().contains(FitReason.FOCAL_REACHED));
        assertTrue(kinds().contains(ExposureReason.BRACKET));
        assertTrue(kinds().contains(BriefReason.SKY_UNKNOWN));
    }

    /** A word in braces that no code gives anywhere would stop the page on which it is first needed. */
    @Test
    void noLineAsksForAFigureThatNoCodeGives() {
        Set<String> given = new TreeSet<>();
        Matcher with = Pattern.compile("\\.with\\(\"([a-z]+)\"").matcher(sources());
        while (with.find()) {
            given.add(with.group(1));
        }
        for (String line : lines()) {
            Matcher place = PLACE.matcher(line);
            while (place.find()) {
                assertTrue(given.contains(place.group(1)), line);
            }
        }
    }

    /** What a statement of the source gives with a kind, where the kind stands in it by name. */
    @Test
    void everyLineAsksOnlyForFiguresThatItsOwnKindIsGiven() {
        Map<String, String> lines = new TreeMap<>();
        lines().forEach(line -> lines.put(line.substring(0, line.indexOf(" = ")), line.substring(line.indexOf(" = "))));
        int checked = 0;
        for (String statement : sources().split(";")) {
            Matcher kind = Pattern.compile("Reason\\.of\\([A-Za-z]+\\.([A-Z_]+)\\)").matcher(statement);
            if (!kind.find() || statement.contains("? Reason.of") || kind.find()) {
                continue;
            }
            kind.reset();
            kind.find();
            String key = kind.group(1).toLowerCase(java.util.Locale.ROOT).replace('_', '-');
            Matcher place = PLACE.matcher(lines.get(key));
            while (place.find()) {
                assertTrue(statement.contains(".with(\"" + place.group(1) + "\""), key + " {" + place.group(1) + "}");
                checked++;
            }
        }
        assertTrue(checked > 40, "checked " + checked);
    }

    @Test
    void noReasonOfAnyBriefShowsABraceOrBeginsSmall() {
        Sentences sentences = Sentences.read(texts);
        Map<Reason.Kind, Reason> seen = new HashMap<>();
        for (Brief brief : Briefs.all()) {
            for (Reason reason : reasons(brief)) {
                seen.put(reason.kind(), reason);
                String sentence = sentences.of(reason);
                assertFalse(sentence.contains("{") || sentence.contains("}"), sentence);
                assertTrue(sentence.startsWith("f/") || !Character.isLowerCase(sentence.codePointAt(0)), sentence);
                assertTrue(sentence.matches("(?s).*[.?!]”?$"), sentence);
                assertFalse(sentence.contains("..") || sentence.contains("null") || sentence.contains("  "), sentence);
            }
        }
        assertTrue(seen.size() > 35, seen.keySet().toString());
    }

    @Test
    void tellsOneReasonWithinAnother() {
        Reason why = Reason.of(FitReason.NO_CAMERA);
        Reason reason = Reason.of(BriefReason.SHOT_COMPROMISE).with("shot", "The floor")
                .with("why", new Figure(why, Figure.Measure.REASON));
        assertEquals("“The floor” is a compromise: no body in the bag has a lens that fits.",
                Sentences.read(texts).of(reason));
    }

    @Test
    void beginsWithACapitalUnlessWithAnAperture() {
        Sentences sentences = Sentences.read(texts);
        assertEquals("No support in the bag suits this picture: hand-held.",
                sentences.of(Reason.of(FitReason.NO_SUPPORT)));
        assertEquals("f/8 gives the depth of field this picture needs.", sentences.of(Reason.of(ExposureReason.APERTURE_FOR_DEPTH)
                .with("aperture", 8, Figure.Measure.F_NUMBER)));
    }

    @Test
    void showsANameWithBracesOrDollarsAsItIs() {
        String sentence = Sentences.read(List.of("shot-compromise = “{shot}”: {why}\nno-camera = none."))
                .of(Reason.of(BriefReason.SHOT_COMPROMISE).with("shot", "{why} $1 \\ b")
                        .with("why", new Figure(Reason.of(FitReason.NO_CAMERA), Figure.Measure.REASON)));
        assertEquals("“{why} $1 \\ b”: none.", sentence);
    }

    @Test
    void pointsAtTheLineThatAsksForAnUnknownFigure() {
        Sentences sentences = Sentences.read(List.of("", "# own words\n\nno-camera = no {lens} at all."));
        TemplateFault fault = assertThrows(TemplateFault.class, () -> sentences.of(Reason.of(FitReason.NO_CAMERA)));
        assertEquals("templates/sentences-day.txt:3:1: error: 'no-camera' has no figure {lens}", fault.plain());
        TemplateFault missing = assertThrows(TemplateFault.class, () -> sentences.of(Reason.of(FitReason.NO_SUPPORT)));
        assertEquals("templates/sentences-pictures.txt:1:1: error: no line for 'no-support', nor in sentences-day.txt", missing.plain());
    }

    private List<String> lines() {
        return texts.stream().flatMap(String::lines).filter(line -> !line.isBlank() && !line.startsWith("#")).toList();
    }

    /** Constants of every enum in the sources that is a kind of reason. */
    private static List<Reason.Kind> kinds() {
        List<Reason.Kind> kinds = new ArrayList<>();
        for (Path path : files()) {
            if (read(path).contains(" implements Reason.Kind")) {
                String name = SOURCES.relativize(path).toString().replace(".java", "").replace('/', '.')
                        .replace('\\', '.');
                try {
                    for (Object constant : Class.forName(name).getEnumConstants()) {
                        kinds.add((Reason.Kind) constant);
                    }
                } catch (ClassNotFoundException fault) {
                    throw new IllegalStateException(fault);
                }
            }
        }
        return kinds;
    }

    private static List<Reason> reasons(Brief brief) {
        List<Reason> reasons = new ArrayList<>(brief.cautions());
        brief.findings().forEach(finding -> reasons.add(finding.reason()));
        reasons.addAll(brief.story().gaps());
        reasons.addAll(brief.order().remarks());
        reasons.addAll(brief.packing().missing());
        for (TimedShot shot : brief.timed()) {
            reasons.addAll(shot.fit().helps());
            for (LensFit fit : shot.fit().tried()) {
                reasons.addAll(fit.reasons());
                if (fit.objection() != null) {
                    reasons.add(fit.objection());
                }
            }
            if (shot.settings() != null) {
                reasons.addAll(shot.settings().reasons());
            }
            shot.otherSkies().forEach(in -> reasons.addAll(in.settings().reasons()));
        }
        return reasons;
    }

    private static String sources() {
        StringBuilder text = new StringBuilder();
        files().forEach(path -> text.append(read(path)));
        return text.toString();
    }

    private static List<Path> files() {
        try (Stream<Path> paths = Files.walk(SOURCES)) {
            return paths.filter(path -> path.toString().endsWith(".java")).sorted().toList();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    private static String read(Path path) {
        try {
            return Files.readString(path);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
