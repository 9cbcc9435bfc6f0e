package understorey.pages.json;

import java.io.IOException;
import java.util.List;
import java.util.function.Function;
import understorey.advice.Advice;
import understorey.brief.Brief;
import understorey.kit.Intent;
import understorey.order.Alternative;
import understorey.order.Leg;
import understorey.pages.words.Caption;
import understorey.plan.Shot;
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

    void legs(Json json, List<Leg> legs) throws IOException {
        json.list("running_order");
        for (Leg leg : legs) {
            leg(json.item(), leg);
            json.end();
        }
        json.endList();
    }

    private void leg(Json json, Leg leg) throws IOException {
        json.time("from", leg.from()).time("to", leg.to()).word("what", leg.what())
                .text("spot", name(leg.spot()))
                .text("shot", leg.shot())
                .text("why", leg.why() == null ? null : sentences.apply(leg.why()));
    }

    void story(Json json) throws IOException {
        json.list("story");
        for (Intent intent : brief.story().sequence()) {
            told(json.item(), intent);
            json.end();
        }
        json.endList();
    }

    private void told(Json json, Intent intent) throws IOException {
        json.text("shot", intent.shot().name()).word("role", intent.role())
                .span("taken", brief.order().timeOf(intent.shot().name()))
                .text("caption", Caption.of(brief, intent));
    }

    void alternatives(Json json) throws IOException {
        json.list("alternatives");
        for (Alternative alternative : brief.alternatives()) {
            alternative(json.item(), alternative);
            json.end();
        }
        json.endList();
    }

    private void alternative(Json json, Alternative alternative) throws IOException {
        json.word("day", alternative.day());
        legs(json, alternative.order().legs());
        json.list("changes");
        for (Alternative.Change change : alternative.changes()) {
            json.item().text("shot", change.shot()).span("planned", change.planned()).span("then", change.then()).end();
        }
        json.endList().list("instead");
        for (Shot shot : alternative.instead()) {
            json.item().text("shot", shot.name()).text("otherwise", shot.otherwise()).end();
        }
        json.endList();
    }

    void lamp(Json json) throws IOException {
        HeadTorchHours hours = brief.day().headTorch();
        json.time("until", hours.until()).time("from", hours.from()).truth("all_the_time", hours.allDay());
    }

    /** Without the message: that is for one reader only. */
    void safety(Json json) throws IOException {
        Safety safety = brief.safety();
        WalkOut out = safety.walkOut();
        Safety.Closing closing = safety.closing();
        json.time("back", safety.back()).time("leave_last_spot_by", safety.leaveLastSpotBy())
                .time("last_light", safety.lastLight()).count("daylight_margin_min", minutes(safety.daylightMargin()))
                .text("farthest_spot", out == null ? null : name(out.spot()))
                .count("walk_out_min", out == null ? null : out.minutes())
                .count("walk_out_longest_min", out == null ? null : out.longestMinutes())
                .truth("walk_out_dark", out == null ? null : out.dark())
                .time("closes", closing == null ? null : closing.at())
                .text("closing", closing == null ? null : closing.carPark() ? "car park" : "site")
                .count("closes_after_sunset_min", closing == null ? null : minutes(closing.afterSunset()));
    }

    private static Integer minutes(Long minutes) {
        return minutes == null ? null : Integer.valueOf(minutes.intValue());
    }

    private String name(String spot) {
        return spot == null ? brief.trip().site().name() : spot;
    }
}
