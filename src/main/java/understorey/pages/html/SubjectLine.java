package understorey.pages.html;

import static java.util.function.Function.identity;
import static understorey.pages.words.Words.orDash;

import java.time.Month;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import understorey.advice.Measure;
import understorey.pages.words.Units;
import understorey.pages.words.Words;
import understorey.plan.Subject;

/**
 * One subject of the catalogue in words.
 *
 * @param where  its months hold
 * @param sure   how sure each kind of figure is
 */
public record SubjectLine(String key, String name, String scientificName, String months, String where, String stems,
                          String height, String flower, String areaIndex, String colour, String habitat, String care,
                          String sure) {

    /** By name. */
    public static List<SubjectLine> of(List<Subject> subjects, Units units) {
        return subjects.stream().sorted(Comparator.comparing(subject -> subject.name().toLowerCase(Locale.ROOT))).map(subject -> of(subject, units)).toList();
    }

    private static SubjectLine of(Subject subject, Units units) {
        return new SubjectLine(subject.key(), subject.name(), orDash(subject.scientificName(), identity()),
                orDash(subject.monthFirst(), SubjectLine::month) + " to " + orDash(subject.monthLast(), SubjectLine::month),
                orDash(subject.monthsReference(), identity()),
                orDash(subject.stemsPerM2(), stems -> units.plain(stems.sparse(), Measure.STEM_DENSITY) + ", " + units.plain(stems.typical(), Measure.STEM_DENSITY) + ", " + units.plain(stems.thick(), Measure.STEM_DENSITY)),
                orDash(subject.heightLowM(), low -> units.plain(low, Measure.PLANT_HEIGHT)) + "–" + orDash(subject.heightHighM(), high -> units.of(high, Measure.PLANT_HEIGHT)),
                orDash(subject.flowerWidthMm(), mm -> units.of(mm / 1000, Measure.METRES)) + ", " + subject.flowersOpen() + " open",
                orDash(subject.flowerAreaIndex(), index -> Words.number(index.typical(), 2) + "–" + Words.number(index.thick(), 2)),
                subject.colour() + " (exposure: treat as " + orDash(subject.reflectance(), Words::word).replace(' ', '-') + ")",
                orDash(subject.habitat(), identity()), orDash(subject.care(), identity()), orDash(subject.marks(), SubjectLine::sure));
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
