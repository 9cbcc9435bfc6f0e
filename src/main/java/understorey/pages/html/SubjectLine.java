package understorey.pages.html;

import static java.util.function.Function.identity;
import static understorey.pages.words.Words.orDash;

import java.time.Month;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import understorey.advice.Measure;
import understorey.pages.tables.Column;
import understorey.pages.tables.Facts;
import understorey.pages.tables.Row;
import understorey.pages.words.Sentences;
import understorey.pages.words.Words;
import understorey.plan.Subject;

/**
 * One subject of the catalogue in words.
 *
 * @param where its months hold
 * @param facts how it looks, and how sure each kind of figure is
 */
public record SubjectLine(String key, String name, String scientificName, String months, String where, String habitat, String care, List<Row> facts) {

    private static final List<Column<Subject>> FACTS = List.of(
            Column.text("Flower", Measure.WORD, (subject, wording) -> orDash(subject.flowerWidthMm(), mm -> wording.of(mm / 1000, Measure.METRES))
                    + ", " + subject.flowersOpen() + " open; " + subject.colour() + " (exposure: treat as "
                    + orDash(subject.reflectance(), Words::word).replace(' ', '-') + ")"),
            Column.text("Height", Measure.WORD, (subject, wording) -> orDash(subject.heightLowM(),
                    low -> wording.units().plain(low, Measure.PLANT_HEIGHT))
                    + "–" + orDash(subject.heightHighM(), high -> wording.of(high, Measure.PLANT_HEIGHT))),
            Column.text("Density", Measure.WORD, (subject, wording) -> orDash(subject.stemsPerM2(),
                    stems -> wording.units().plain(stems.sparse(), Measure.STEM_DENSITY)
                    + ", " + wording.units().plain(stems.typical(), Measure.STEM_DENSITY) + ", " + wording.of(stems.thick(), Measure.STEM_DENSITY))),
            Column.text("Flower area", Measure.WORD, (subject, wording) -> orDash(subject.flowerAreaIndex(),
                    index -> Words.number(index.typical(), 2) + "–" + Words.number(index.thick(), 2))),
            Column.text("Reliability", Measure.WORD, (subject, wording) -> orDash(subject.marks(), SubjectLine::sure)));

    /** By name. */
    public static List<SubjectLine> of(List<Subject> subjects, Sentences sentences) {
        return subjects.stream().sorted(Comparator.comparing(subject -> subject.name().toLowerCase(Locale.ROOT)))
                .map(subject -> of(subject, sentences)).toList();
    }

    private static SubjectLine of(Subject subject, Sentences sentences) {
        return new SubjectLine(subject.key(), subject.name(), orDash(subject.scientificName(), identity()),
                orDash(subject.monthFirst(), SubjectLine::month) + " to " + orDash(subject.monthLast(), SubjectLine::month),
                orDash(subject.monthsReference(), identity()), orDash(subject.habitat(), identity()), orDash(subject.care(), identity()),
                new Facts<>(FACTS, subject).rows(sentences));
    }

    private static String month(int month) {
        return Words.name(Month.of(month));
    }

    /** A mark, and one in brackets that holds for a part of the figures: {@code M (thick D)}. */
    static String worded(String mark) {
        return mark.replace("C2", "second-hand").replace("C", "confirmed").replace("D", "derived").replace("M", "unsourced");
    }

    private static String sure(Subject.Marks marks) {
        return "months " + worded(marks.months()) + ", stems " + worded(marks.stems()) + ", height " + worded(marks.height())
                + ", flowers " + worded(marks.flowers()) + ", size " + worded(marks.size());
    }
}
