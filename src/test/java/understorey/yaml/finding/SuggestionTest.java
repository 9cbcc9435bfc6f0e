package understorey.yaml.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class SuggestionTest {

    @Test
    void countsLettersPutInTakenOutChangedAndSwapped() {
        assertEquals(1, Suggestion.distance("closest", "closset"));
        assertEquals(1, Suggestion.distance("focal", "focl"));
        assertEquals(1, Suggestion.distance("focal", "foccal"));
        assertEquals(1, Suggestion.distance("focal", "fokal"));
        assertEquals(0, Suggestion.distance("NbE", "nbe"));
        assertEquals(5, Suggestion.distance("", "focal"));
    }

    /** Levenshtein's example, and the case in which the restricted distance differs from the full one (3, not 2). */
    @Test
    void agreesWithTheTextbookCases() {
        assertEquals(3, Suggestion.distance("kitten", "sitting"));
        assertEquals(3, Suggestion.distance("CA", "ABC"));
    }

    @Test
    void knowsANameByItsBeginning() {
        List<String> known = List.of("focal_equivalent", "frame", "light", "lens");
        assertEquals("focal_equivalent", Suggestion.nearest(known, "focal"));
        assertNull(Suggestion.nearest(known, "foc"), "too little");
        assertNull(Suggestion.nearest(List.of("temperature", "temperature_850"), "temp"), "two of them");
    }

    @Test
    void keepsToAThirdOfWhatWasWritten() {
        List<String> known = List.of("closest", "focal", "mount");
        assertEquals("closest", Suggestion.nearest(known, "closset"));
        assertEquals("mount", Suggestion.nearest(known, "Monut"));
        assertNull(Suggestion.nearest(known, "weight"));
        assertNull(Suggestion.nearest(known, "mt"));
    }

    @Test
    void prefersANameOfTheSameLengthAmongEquals() {
        assertEquals("mm", Suggestion.nearest(List.of("m", "mm", "cm"), "mc"));
    }

    @Test
    void listsTheKnownNamesWhenNoneIsNear() {
        assertEquals("known keys: a, b, c", Suggestion.among(List.of("c", "a", "b"), "weight", "known keys"));
        assertNull(Suggestion.among(List.of(), "weight", "known keys"));
    }

    @Property(tries = 300)
    void isTheSameEitherWayAndNeverMoreThanTheLongerWord(@ForAll @AlphaChars @StringLength(max = 12) String a,
                                                         @ForAll @AlphaChars @StringLength(max = 12) String b) {
        int distance = Suggestion.distance(a, b);
        assertEquals(distance, Suggestion.distance(b, a));
        assertTrue(distance <= Math.max(a.length(), b.length()));
        assertTrue(distance >= Math.abs(a.length() - b.length()));
        assertEquals(a.equalsIgnoreCase(b), distance == 0);
    }
}
