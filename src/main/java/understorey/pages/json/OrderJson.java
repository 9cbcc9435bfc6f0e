package understorey.pages.json;

import static understorey.pages.words.Words.ifKnown;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.brief.Brief;
import understorey.kit.Intent;
import understorey.order.Alternative;
import understorey.order.Leg;
import understorey.pages.words.Caption;
import understorey.pages.words.Words;
import understorey.visit.HeadTorchHours;
import understorey.visit.Safety;
import understorey.visit.WalkOut;

/** The day on the ground in {@code plan.json}. */
final class OrderJson {

    private final Brief brief;
    private final Function<Advice, String> sentences;

    OrderJson(Brief brief, Function<Advice, String> sentences) {
        this.brief = brief;
        this.sentences = sentences;
    }

    void legs(Json json, List<Leg> legs) {
        json.objects("running_order", legs, this::leg);
    }

    private void leg(Json json, Leg leg) {
        json.time("from", leg.from()).time("to", leg.to()).word("what", leg.what())
                .text("spot", name(leg.spot()))
                .text("shot", leg.shot())
                .text("why", ifKnown(leg.why(), sentences));
    }

    void story(Json json) {
        json.objects("story", brief.story().sequence(), this::inStory);
    }

    private void inStory(Json json, Intent intent) {
        json.text("shot", intent.shot().name()).word("role", intent.role())
                .span("taken", brief.order().timeOf(intent.shot().name()))
                .text("caption", Caption.of(brief, intent));
    }

    void alternatives(Json json) {
        json.objects("alternatives", brief.alternatives(), this::alternative);
    }

    private void alternative(Json json, Alternative alternative) {
        json.word("day", alternative.day());
        legs(json, alternative.order().legs());
        json.objects("changes", alternative.changes(), (object, change) -> object.text("shot", change.shot())
                        .span("planned", change.planned()).span("then", change.then()))
                .objects("instead", alternative.instead(), (object, shot) -> object.text("shot", shot.name())
                        .text("otherwise", shot.otherwise()));
    }

    static void lamp(Json json, HeadTorchHours hours) {
        json.time("until", hours.until()).time("from", hours.from()).truth("all_the_time", hours.allDay());
    }

    /** Without the message: that is for one reader only. */
    void safety(Json json, Safety safety) {
        WalkOut out = safety.walkOut();
        Safety.Closing closing = safety.closing();
        json.time("back", safety.back()).time("leave_last_spot_by", safety.leaveLastSpotBy())
                .time("last_light", safety.lastLight()).count("daylight_margin_min", ifKnown(safety.daylightMargin(), Long::intValue))
                .text("farthest_spot", ifKnown(out, way -> name(way.spot())))
                .count("walk_out_min", ifKnown(out, WalkOut::minutes))
                .count("walk_out_longest_min", ifKnown(out, WalkOut::longestMinutes))
                .truth("walk_out_dark", ifKnown(out, WalkOut::dark))
                .time("closes", ifKnown(closing, Safety.Closing::at))
                .text("closing", ifKnown(closing, gate -> gate.carPark() ? "car park" : "site"))
                .count("closes_after_sunset_min", ifKnown(ifKnown(closing, Safety.Closing::afterSunset), Long::intValue));
    }

    private String name(@Nullable String spot) {
        return Words.place(brief.trip().site(), spot);
    }
}
