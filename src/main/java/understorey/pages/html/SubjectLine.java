package understorey.pages.html;

import static java.util.function.Function.identity;
import static understorey.pages.words.Words.orDash;

import java.time.Month;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
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
    public static List<SubjectLine> of(List<Subject> subjects) {
        return subjects.stream().sorted(Comparator.comparing(subject -> subject.name().toLowerCase(Locale.ROOT))).map(SubjectLine::of).toList();
    }

    private static SubjectLine of(Subject subject) {
        return new SubjectLine(subject.key(), subject.name(), orDash(subject.scientificName(), identity()),
                orDash(subject.monthFirst(), SubjectLine::month) + " to " + orDash(subject.monthLast(), SubjectLine::month),
                orDash(subject.monthsReference(), identity()),
                orDash(subject.stemsPerM2(), stems -> figure(stems.sparse()) + ", " + figure(stems.typical()) + ", " + figure(stems.thick())),
                orDash(subject.heightLowM(), SubjectLine::centimetres) + "–" + orDash(subject.heightHighM(), SubjectLine::centimetres) + "\u00a0cm",
                orDash(subject.flowerWidthMm(), Words::millimetres) + ", " + subject.flowersOpen() + " open",
                orDash(subject.flowerAreaIndex(), index -> Words.number(index.typical(), 2) + "–" + Words.number(index.thick(), 2)),
                subject.colour() + " (exposure: treat as " + orDash(subject.reflectance(), Words::word).replace(' ', '-') + ")",
                orDash(subject.habitat(), identity()), orDash(subject.care(), identity()), orDash(subject.marks(), SubjectLine::sure));
    }

    private static String month(int month) {
        return Words.name(Month.of(month));
    }

    private static String centimetres(double metres) {
        return Words.number(metres * 100, 0);
    }

    /** A mark, and one in brackets that holds for a part of the figures: {@code M (thick D)}. */
    static String worded(String mark) {
        return mark.replace("C2", "second-hand").replace("C", "confirmed").replace("D", "derived").replace("M", "unsourced");
    }

    private static String figure(double perM2) {
        return Words.plain(Words.number(perM2, 1));
    }

    private static String sure(Subject.Marks marks) {
        return "months " + worded(marks.months()) + ", stems " + worded(marks.stems()) + ", height " + worded(marks.height())
                + ", flowers " + worded(marks.flowers()) + ", size " + worded(marks.size());
    }
}
