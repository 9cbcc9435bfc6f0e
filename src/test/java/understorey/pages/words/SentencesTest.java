package understorey.pages.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import understorey.Sources;
import understorey.advice.Advice;
import understorey.advice.ApertureAdvice;
import understorey.advice.HelpAdvice;
import understorey.advice.SupportAdvice;
import understorey.advice.TripAdvice;
import understorey.brief.Brief;
import understorey.brief.TimedShot;
import understorey.kit.LensFit;
import understorey.pages.Briefs;
import understorey.plan.Display;

class SentencesTest {

    private final List<String> texts = List.of(Sources.read(Path.of("templates/sentences-pictures.txt")),
            Sources.read(Path.of("templates/sentences-day.txt")));

    @Test
    void noReasonOfAnyBriefShowsABraceOrBeginsSmall() {
        Sentences sentences = Sentences.read(texts, Display.USUAL);
        Set<Class<?>> seen = new HashSet<>();
        for (Brief brief : Briefs.all()) {
            for (Advice reason : reasons(brief)) {
                seen.add(reason.getClass());
                String sentence = sentences.of(reason);
                assertFalse(sentence.contains("{") || sentence.contains("}"), sentence);
                assertTrue(sentence.startsWith("f/") || !Character.isLowerCase(sentence.codePointAt(0)), sentence);
                assertTrue(sentence.matches("(?s).*[.?!]”?$"), sentence);
                assertFalse(sentence.contains("..") || sentence.contains("null") || sentence.contains("  "), sentence);
            }
        }
        assertTrue(seen.size() > 35, seen.toString());
    }

    @Test
    void noFindingIsAnObjectionToAPicture() {
        for (Brief brief : Briefs.all()) {
            assertEquals(List.of(), brief.findings().stream()
                    .filter(finding -> finding.severity() == Advice.Severity.OBJECTION).toList());
        }
    }

    @Test
    void tellsOneReasonWithinAnother() {
        Advice reason = new TripAdvice.ShotCompromise("The floor", new HelpAdvice.NoCamera());
        assertEquals("“The floor” is a compromise: no body in the bag has a lens that fits.",
                Sentences.read(texts, Display.USUAL).of(reason));
    }

    @Test
    void beginsWithACapitalUnlessWithAnAperture() {
        Sentences sentences = Sentences.read(texts, Display.USUAL);
        assertEquals("No support in the bag suits this picture: hand-held.",
                sentences.of(new SupportAdvice.NoSupport()));
        assertEquals("f/8 gives the depth of field this picture needs.", sentences.of(new ApertureAdvice.ApertureForDepth(8)));
    }

    @Test
    void showsANameWithBracesOrDollarsAsItIs() {
        String sentence = Sentences.read(List.of("shot-compromise = “{shot}”: {why}\nno-camera = none."), Display.USUAL)
                .of(new TripAdvice.ShotCompromise("{why} $1 \\ b", new HelpAdvice.NoCamera()));
        assertEquals("“{why} $1 \\ b”: none.", sentence);
    }

    @Test
    void pointsAtTheLineThatAsksForAnUnknownFigure() {
        Sentences sentences = Sentences.read(List.of("", "# own words\n\nno-camera = no {lens} at all."), Display.USUAL);
        TemplateFault fault = assertThrows(TemplateFault.class, () -> sentences.of(new HelpAdvice.NoCamera()));
        assertEquals("templates/sentences-day.txt:3:1: error: 'no-camera' has no figure {lens}", fault.plain());
        TemplateFault missing = assertThrows(TemplateFault.class, () -> sentences.of(new SupportAdvice.NoSupport()));
        assertEquals("templates/sentences-pictures.txt:1:1: error: no line for 'no-support', nor in sentences-day.txt", missing.plain());
    }

    private static List<Advice> reasons(Brief brief) {
        List<Advice> reasons = new ArrayList<>(brief.cautions());
        reasons.addAll(brief.findings());
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
}
