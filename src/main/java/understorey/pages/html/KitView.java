package understorey.pages.html;

import static understorey.pages.words.Words.ifKnown;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import understorey.advice.Measure;
import understorey.brief.Brief;
import understorey.kit.Verdict;
import understorey.packing.CompanionBag;
import understorey.packing.Packing;
import understorey.pages.tables.Row;
import understorey.pages.tables.Table;
import understorey.pages.tables.TableView;
import understorey.pages.tables.VisitColumns;
import understorey.pages.words.Sentences;
import understorey.pages.words.Words;

/**
 * What to carry.
 *
 * @param take      the names alone
 * @param names     all of them in one line, or that the bag cannot do these pictures
 * @param unweighed how many things have no weight; null if all have one
 */
public record KitView(List<String> take, TableView taken, TableView leave, List<String> missing, List<Row> companions, String weight, String names,
                      @Nullable String unweighed, @Nullable String cards, @Nullable String batteries) {

    static KitView of(Brief brief, Sentences sentences) {
        Packing packing = brief.packing();
        List<String> names = packing.take().stream().map(Packing.Item::name).toList();
        return new KitView(names, new Table<>(VisitColumns.take(brief), packing.take()).view("", sentences),
                new Table<>(VisitColumns.LEAVE, packing.leave()).view("", sentences),
                sentences.of(packing.missing()), companions(brief, sentences), sentences.of(packing.weightG(), Measure.GRAMS),
                brief.timed().stream().allMatch(shot -> shot.verdict() == Verdict.CANNOT) ? "this bag cannot do these pictures"
                        : String.join(", ", names),
                packing.unweighed() == 0 ? null : String.valueOf(packing.unweighed()),
                ifKnown(packing.cardGb(), gb -> Words.number(gb, 1) + " GB for about " + packing.frames() + " RAW frames"),
                ifKnown(packing.batteries(), String::valueOf));
    }

    /** What each companion carries, in one line. */
    private static List<Row> companions(Brief brief, Sentences sentences) {
        List<Row> rows = new ArrayList<>();
        for (CompanionBag bag : brief.companionBags()) {
            String things = bag.take().stream().map(item -> item.name() + " (" + pictures(item, brief) + ")").collect(Collectors.joining(", "));
            rows.add(new Row(bag.name(), things.isEmpty() ? "nothing in that bag can do these pictures"
                    : things + "; " + sentences.of(bag.weightG(), Measure.GRAMS) + " in total"));
        }
        return rows;
    }

    private static String pictures(Packing.Item item, Brief brief) {
        return Words.pictures(item.shots().stream().map(shot -> brief.shot(shot).number()).toList());
    }
}
