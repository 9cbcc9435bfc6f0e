package understorey.pages.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.pages.markdown.Prose;

class SheetTextTest {

    private static final Prose PROSE = new Prose();
    private static final String NOTE = "Lean **out** from the wall. Use f. stops <b>. Then wait.";

    /** 1 mm for each line of 70 letters begun, and the rest of the picture. */
    private static SheetText text(String planB, String note, double restMm) {
        return new SheetText(planB, note, letters -> restMm + Math.ceil(letters / 70.0), PROSE);
    }

    @Test
    void showsAllAsPlainEscapedTextWhereThereIsRoom() {
        SheetText text = text("Go home.", NOTE, 0);
        assertTrue(SheetText.fill(List.of(text), 100));
        assertTrue(text.whole());
        assertEquals("Lean out from the wall. Use f. stops &lt;b&gt;. Then wait.", text.note());
        assertEquals("Go home.", text.planB());
    }

    @Test
    void showsTheOtherPlanFirstAndMarksWhatIsLeftOut() {
        String longer = "Nothing but a sentence that takes more than a line of the sheet beside a sketch, and so has no room.";
        SheetText text = text("Go home. " + longer, longer, 3);
        assertTrue(SheetText.fill(List.of(text), 4));
        assertEquals("Go home. …", text.planB());
        assertNull(text.note());
        assertFalse(text.whole());
    }

    @Test
    void sharesTheRoomAmongPictures() {
        String sentence = "This sentence is as long as a line, or very nearly so, at least.";
        List<SheetText> texts = List.of(text(null, sentence + " " + sentence + " " + sentence, 3), text(null, sentence, 3));
        assertTrue(SheetText.fill(texts, 9));
        assertEquals(sentence + " …", texts.get(0).note());
        assertEquals(sentence, texts.get(1).note());
    }

    /** The mark for what is left out takes a line too, so a short sentence in its place costs nothing. */
    @Test
    void showsWordsThatNeedNoMoreHeightEvenWhereThePicturesDoNotFit() {
        SheetText text = text("Go home.", "This note is far too long for the little room that is left beside the mark for what is not shown.", 20);
        assertFalse(SheetText.fill(List.of(text), 19));
        assertEquals("Go home.", text.planB());
        assertNull(text.note());
        assertFalse(text.whole());
    }
}
