package understorey.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class SlugTest {

    @Test
    void joinsWordsWithHyphens() {
        assertEquals("gorsewell-dingle", Slug.of("Gorsewell Dingle"));
        assertEquals("one-head-one-drop", Slug.of("  One head, one drop! "));
        assertEquals("millers-wood", Slug.of("Miller's Wood"));
        assertEquals("bøgeskov-2", Slug.of("Bøgeskov (2)"));
        assertEquals("", Slug.of("…"));
    }

    @Test
    void knowsWhatCanStandInAnAddress() {
        assertTrue(Slug.isOne("first-light_2"));
        assertFalse(Slug.isOne("first light"));
        assertFalse(Slug.isOne("a.b"));
        assertFalse(Slug.isOne(""));
    }
}
