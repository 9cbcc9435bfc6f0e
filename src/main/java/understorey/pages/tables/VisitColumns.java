package understorey.pages.tables;

import static understorey.pages.tables.Column.data;

import java.util.List;
import understorey.advice.Measure;
import understorey.brief.Brief;
import understorey.order.Leg;
import understorey.packing.Packing;
import understorey.pages.words.Words;

/** The running order and what is carried. */
public final class VisitColumns {

    private VisitColumns() {
    }

    /** The running order, step by step. */
    public static List<Column<Leg>> steps(Brief brief) {
        return List.of(
                data("from", Leg::from),
                data("to", Leg::to),
                data("what", Leg::what),
                data("spot", leg -> Words.place(brief.trip().site(), leg.spot())),
                data("shot", Leg::shot),
                data("why", Leg::why));
    }

    /** Things of a bag with the pictures that need them. */
    public static List<Column<Packing.Item>> take(Brief brief) {
        return List.of(
                Column.of("item", "Take", Measure.WORD, Packing.Item::name),
                Column.of("for", "For", Measure.WORD, Packing.Item::shots, (item, wording) -> item.shots().isEmpty() ? ""
                        : Words.pictures(item.shots().stream().map(shot -> brief.shot(shot).number()).toList())),
                Column.of("weight_g", "Weight", Measure.GRAMS, Packing.Item::weightG));
    }

    /** Things that stay at home. */
    public static final List<Column<Packing.Item>> LEAVE = List.of(
            Column.of("item", "Leave at home", Measure.WORD, Packing.Item::name),
            Column.of("why", "Why", Measure.WORD, Packing.Item::why),
            Column.of("weight_g", "Weight", Measure.GRAMS, Packing.Item::weightG));
}
