package understorey.pages.json;

import static understorey.pages.tables.Column.data;

import java.util.List;
import understorey.advice.Measure;
import understorey.brief.Brief;
import understorey.kit.Intent;
import understorey.order.Alternative;
import understorey.order.Leg;
import understorey.packing.CompanionBag;
import understorey.packing.Packing;
import understorey.pages.tables.Column;
import understorey.pages.tables.Facts;
import understorey.pages.tables.Table;
import understorey.pages.tables.VisitColumns;
import understorey.pages.words.Caption;
import understorey.pages.words.Words;
import understorey.plan.Shot;
import understorey.visit.HeadTorchHours;
import understorey.visit.Safety;
import understorey.visit.WalkOut;

/** The day on the ground and what is carried. */
final class VisitJson {

    static final List<Column<HeadTorchHours>> HEAD_TORCH = List.of(
            data("until", HeadTorchHours::until),
            data("from", HeadTorchHours::from),
            data("all_the_time", HeadTorchHours::allDay));

    private static final List<Column<Shot>> INSTEAD = List.of(
            data("shot", Shot::name),
            data("otherwise", Shot::otherwise));

    private static final List<Column<Safety.Closing>> CLOSING = List.of(
            data("closes", Safety.Closing::at),
            data("closing", gate -> gate.carPark() ? "car park" : "site"),
            data("closes_after_sunset_min", Measure.MINUTES, Safety.Closing::afterSunset));

    private VisitJson() {
    }

    static List<Facts<Leg>> order(Brief brief) {
        return Facts.each(VisitColumns.steps(brief), brief.order().legs());
    }

    static List<Facts<Intent>> story(Brief brief) {
        return Facts.each(List.of(
                data("shot", intent -> intent.shot().name()),
                data("role", Intent::role),
                data("taken", intent -> brief.order().timeOf(intent.shot().name())),
                data("caption", intent -> Caption.of(brief, intent))), brief.story().sequence());
    }

    static List<Facts<Alternative>> alternatives(Brief brief) {
        return Facts.each(List.of(
                data("day", Alternative::day),
                data("running_order", other -> new Table<>(VisitColumns.steps(brief), other.order().legs())),
                data("changes", other -> other.changes().stream().map(Alternative.Change::shot).toList()),
                data("instead", other -> Facts.each(INSTEAD, other.instead()))), brief.alternatives());
    }

    /** Without the message: that is for one reader only. */
    static Facts<Safety> safety(Brief brief) {
        List<Column<WalkOut>> walkOut = List.of(
                data("farthest_spot", way -> Words.place(brief.trip().site(), way.spot())),
                data("walk_out_min", Measure.MINUTES, WalkOut::minutes),
                data("walk_out_longest_min", Measure.MINUTES, WalkOut::longestMinutes),
                data("walk_out_dark", WalkOut::dark));
        return new Facts<>(Column.all(List.of(
                data("back", Safety::back),
                data("leave_last_spot_by", Safety::leaveLastSpotBy),
                data("last_light", Safety::lastLight),
                data("daylight_margin_min", Measure.MINUTES, Safety::daylightMargin)),
                Column.part(walkOut, Safety::walkOut), Column.part(CLOSING, Safety::closing)), brief.safety());
    }

    static Facts<Packing> kit(Brief brief) {
        List<Column<Packing.Item>> take = VisitColumns.take(brief);
        List<Column<CompanionBag>> companion = List.of(
                data("name", CompanionBag::name),
                data("take", bag -> Facts.each(take, bag.take())),
                data("weight_g", Measure.GRAMS, CompanionBag::weightG),
                data("unweighed", Measure.COUNT, CompanionBag::unweighed));
        return new Facts<>(List.of(
                data("take", packing -> Facts.each(take, packing.take())),
                data("leave", packing -> Facts.each(VisitColumns.LEAVE, packing.leave())),
                data("missing", Packing::missing),
                data("weight_g", Measure.GRAMS, Packing::weightG),
                data("card_gb", Measure.GIGABYTES, Packing::cardGb),
                data("batteries", Measure.COUNT, Packing::batteries),
                data("unweighed", Measure.COUNT, Packing::unweighed),
                data("frames", Measure.COUNT, Packing::frames),
                data("companions", packing -> Facts.each(companion, brief.companionBags()))), brief.packing());
    }
}
