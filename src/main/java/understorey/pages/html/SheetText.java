package understorey.pages.html;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.jspecify.annotations.Nullable;
import understorey.pages.markdown.Prose;
import understorey.pages.words.Sentences;

/** The author's words for one picture, of which whole sentences are shown as long as the sheet has room. */
final class SheetText {

    private static final String MORE = " …";
    /** Letters of the mark for what is left out. */
    private static final int MARK_LETTERS = 20;

    private final List<Part> parts;
    private final IntToDoubleFunction height;

    /** One text: its sentences, and how many of them are shown. */
    private static final class Part {

        private final List<String> sentences;
        private int shown;
        private boolean closed;

        Part(@Nullable String markdown, Prose prose) {
            String html = prose.html(markdown);
            String text = html == null ? "" : html.replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ").strip();
            sentences = text.isEmpty() ? List.of() : Sentences.split(text);
        }

        private boolean whole() {
            return shown == sentences.size();
        }

        private @Nullable String text() {
            return shown == 0 ? null : String.join(" ", sentences.subList(0, shown)) + (whole() ? "" : MORE);
        }

        private int length() {
            return shown == 0 ? 0 : String.join(" ", sentences.subList(0, shown)).length() + MORE.length();
        }
    }

    /**
     * The words for a picture, of which none is shown yet.
     *
     * @param heightMm of the picture on paper, by the letters of its words
     */
    SheetText(@Nullable String planB, @Nullable String note, IntToDoubleFunction heightMm, Prose prose) {
        this.parts = List.of(new Part(planB, prose), new Part(note, prose));
        this.height = heightMm;
    }

    /**
     * Shows one more sentence a text and picture in turn, until all are shown or the room is full. Words that need no more height are shown
     * in any case.
     *
     * @return false where there is no room for the pictures even without a sentence
     */
    static boolean fill(List<SheetText> texts, double roomMm) {
        double room = Math.max(roomMm, heightMm(texts));
        List<Part> open = new ArrayList<>();
        for (int part = 0; part < 2; part++) {
            for (SheetText text : texts) {
                open.add(text.parts.get(part));
            }
        }
        open.removeIf(Part::whole);
        while (!open.isEmpty()) {
            for (Part part : open) {
                part.shown++;
                part.closed = heightMm(texts) > room;
                part.shown -= part.closed ? 1 : 0;
            }
            open.removeIf(part -> part.closed || part.whole());
        }
        return room == roomMm;
    }

    private static double heightMm(List<SheetText> texts) {
        return texts.stream().mapToDouble(text -> text.height.applyAsDouble(text.letters())).sum();
    }

    private int letters() {
        return parts.stream().mapToInt(Part::length).sum() + (whole() ? 0 : MARK_LETTERS);
    }

    /** True when every sentence is shown. */
    boolean whole() {
        return parts.stream().allMatch(Part::whole);
    }

    /** The first sentences of the other plan, escaped; null for none. */
    @Nullable String planB() {
        return parts.get(0).text();
    }

    /** The first sentences of the note, escaped; null for none. */
    @Nullable String note() {
        return parts.get(1).text();
    }
}
