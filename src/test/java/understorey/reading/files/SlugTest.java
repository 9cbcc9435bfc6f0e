package understorey.reading.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SlugTest {

    @Test
    void joinsWordsWithHyphens() {
        assertEquals("gorsewell-dingle", Slug.of("Gorsewell Dingle"));
        assertEquals("one-head-one-drop", Slug.of("  One head, one drop! "));
        assertEquals("millers-wood", Slug.of("Miller's Wood"));
        assertEquals("bogeskov-2", Slug.of("Bøgeskov (2)"));
        assertEquals("", Slug.of("…"));
    }

    @ParameterizedTest
    @CsvSource({"Mörkö, morko", "Łęg Straße, leg-strasse", "Æðey Þing, aedey-thing", "İstanbul ILICA, istanbul-ilica",
        "Đồng cỏ, dong-co", "Ｗｏｏｄ ２, wood-2", "森 wood, wood", "O’Brien’s, obriens"})
    void writesLettersOfOtherAlphabetsInAscii(String name, String slug) {
        assertEquals(slug, Slug.of(name));
    }

    @Test
    void givesANameInAnotherScriptOneOfItsOwnThatStays() {
        assertEquals("name-68ee", Slug.of("森"), "the number is the hash that the language defines for the text");
        assertNotEquals(Slug.of("森"), Slug.of("林"));
        assertTrue(Slug.isOne(Slug.of("Лес")));
    }

    @Test
    void knowsWhatCanStandInAnAddress() {
        assertTrue(Slug.isOne("first-light_2"));
        assertFalse(Slug.isOne("first light"));
        assertFalse(Slug.isOne("a.b"));
        assertFalse(Slug.isOne("bøgeskov"));
        assertFalse(Slug.isOne(""));
    }
}
