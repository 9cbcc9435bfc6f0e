package understorey.pages.html;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
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

    public static List<SubjectLine> of(List<Subject> subjects) {
        List<SubjectLine> lines = new ArrayList<>();
        for (Subject subject : subjects) {
            lines.add(of(subject));
        }
        return lines;
    }

    private static SubjectLine of(Subject subject) {
        Subject.Stems stems = subject.stemsPerM2();
        return new SubjectLine(subject.key(), subject.name(), subject.scientificName(),
                Words.name(Month.of(subject.monthFirst())) + " to " + Words.name(Month.of(subject.monthLast())),
                subject.monthsReference(), figure(stems.sparse()) + ", " + figure(stems.typical()) + ", "
                + figure(stems.thick()), Words.number(subject.heightLowM() * 100, 0) + "–"
                + Words.number(subject.heightHighM() * 100, 0) + "\u00a0cm",
                Words.millimetres(subject.flowerWidthMm()) + ", " + subject.flowersOpen() + " open",
                Words.number(subject.flowerAreaIndex().typical(), 2) + "–"
                + Words.number(subject.flowerAreaIndex().thick(), 2),
                subject.colour() + " (exposure: treat as " + Words.word(subject.reflectance()).replace(' ', '-') + ")",
                subject.habitat(), subject.care(), sure(subject.marks()));
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
