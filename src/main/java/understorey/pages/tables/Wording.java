package understorey.pages.tables;

import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.Measure;
import understorey.pages.words.Dates;
import understorey.pages.words.Sentences;
import understorey.pages.words.Units;
import understorey.pages.words.Words;
import understorey.sky.Interval;

/** How values become words: the units of a reader, and the sentences of the templates. */
public record Wording(Units units, Sentences sentences) {

    /** For values without advice. */
    public Wording(Units units) {
        this(units, Sentences.none());
    }

    /** Words for a value: a dash for none, a sentence for advice. */
    public String of(@Nullable Object value, Measure measure) {
        if (value == null) {
            return Words.NONE;
        }
        if (value instanceof Advice advice) {
            return sentences.of(advice);
        }
        return value instanceof Interval span ? Dates.span(span) : units.of(value, measure);
    }
}
