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

    /** A picture has 26.4 mm and five lines for that: 13.2 mm + 5 × 4.1 mm are 33.7 mm. */
    private static SheetRoom room(double mm) {
        return new SheetRoom(SheetRoom.Size.SMALL, mm);
    }

    @Test
    void showsAllAsPlainEscapedTextWhereThereIsRoom() {
        SheetText text = new SheetText("Go home.", NOTE, 0, PROSE);
        assertTrue(SheetText.fill(List.of(text), room(100)));
        assertTrue(text.whole());
        assertEquals("Lean out from the wall. Use f. stops &lt;b&gt;. Then wait.", text.note());
        assertEquals("Go home.", text.planB());
    }

    @Test
    void showsTheOtherPlanFirstAndMarksWhatIsLeftOut() {
        String longer = "Nothing but a sentence that takes more than a line of the sheet beside a sketch, and so has no room.";
        SheetText text = new SheetText("Go home. " + longer, longer, 3, PROSE);
        assertTrue(SheetText.fill(List.of(text), room(13.2 + 4 * 4.1 + 0.1)));
        assertEquals("Go home. …", text.planB());
        assertNull(text.note());
        assertFalse(text.whole());
    }

    @Test
    void sharesTheRoomAmongPictures() {
        String sentence = "This sentence is as long as a line, or very nearly so, at least.";
        List<SheetText> texts = List.of(new SheetText(null, sentence + " " + sentence, 3, PROSE), new SheetText(null, sentence, 3, PROSE));
        assertTrue(SheetText.fill(texts, room(2 * (13.2 + 4 * 4.1) + 0.1)));
        assertEquals(sentence + " …", texts.get(0).note());
        assertEquals(sentence, texts.get(1).note());
    }

    @Test
    void saysWhereEvenThePicturesDoNotFit() {
        assertFalse(SheetText.fill(List.of(new SheetText("Go home.", null, 2, PROSE)), room(20)));
    }
}
