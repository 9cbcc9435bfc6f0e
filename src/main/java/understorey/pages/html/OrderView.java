package understorey.pages.html;

import static understorey.pages.words.Words.ifKnown;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.brief.Brief;
import understorey.order.Alternative;
import understorey.order.RunningOrder;
import understorey.pages.tables.Row;
import understorey.pages.words.Caption;
import understorey.pages.words.ClockWords;
import understorey.pages.words.Dates;
import understorey.pages.words.Sentences;
import understorey.plan.Share;
import understorey.visit.Safety;

/**
 * The day on the ground in words.
 *
 * @param captions to begin with, in the story's order
 * @param others  what changes if the day turns out another
 * @param safety  out of the wood in time
 * @param message for the contact; null without one
 * @param spotPlan null where positions are not known exactly
 */
public record OrderView(@Nullable String timeLeft, List<String> captions, List<Other> others, List<Row> safety, @Nullable Message message,
                        @Nullable Drawn spotPlan) {

    /** Another day, all its pictures in the order taken; days with the same starts are one. */
    public record Other(String day, List<Start> order) {
    }

    /** When a picture is begun. */
    public record Start(int number, String at) {
    }

    /**
     * To leave with somebody, the evening before.
     *
     * @param ready    false where the plan is back after the check-in time: such a message is not for sending
     * @param position null where it is not exact
     * @param route    null where no walk is planned
     */
    public record Message(boolean ready, String day, String arrive, String site, @Nullable String position, @Nullable String base,
                          @Nullable String route, String back, String backBy, String actFrom) {
    }

    static OrderView of(Brief brief, Sentences sentences) {
        return new OrderView(ifKnown(brief.order().timeLeft(), sentences::of), brief.story().sequence().stream().map(intent -> Caption.of(brief, intent)).toList(),
                others(brief, sentences.clock()), OutInTime.rows(brief, sentences.clock()), message(brief, sentences.clock()),
                Drawn.ifAny(brief.spotPlan(), "spot-plan", sentences));
    }

    private static List<Other> others(Brief brief, ClockWords clock) {
        List<Other> others = new ArrayList<>();
        for (Alternative alternative : brief.alternatives()) {
            String day = switch (alternative.day()) {
                case CLEAR -> "clear";
                case OVERCAST -> "overcast";
                case RAIN -> "wet";
                case WIND -> "windy";
            };
            Other last = others.isEmpty() ? null : others.get(others.size() - 1);
            List<Start> order = order(alternative.order(), brief, clock);
            if (last != null && last.order().equals(order)) {
                others.set(others.size() - 1, new Other(last.day().replace(" or ", ", ") + " or " + day, order));
            } else {
                others.add(new Other(day, order));
            }
        }
        return others;
    }

    private static List<Start> order(RunningOrder order, Brief brief, ClockWords clock) {
        return order.shooting().stream().map(leg -> new Start(brief.shot(leg.shot()).number(), clock.of(leg.from()))).toList();
    }

    /** Without a position where the plan has only a coarse one: searchers would go there. */
    private static @Nullable Message message(Brief brief, ClockWords clock) {
        Safety.Message message = brief.safety().message();
        if (message == null) {
            return null;
        }
        LocalDate day = message.arrive().toLocalDate();
        return new Message(!message.back().isAfter(message.backBy()), Dates.day(day), clock.of(message.arrive()), message.site(),
                brief.trip().precision() == Share.Precision.EXACT ? PlaceView.position(message.position()) : null, message.base(),
                message.route().isEmpty() ? null : String.join(", then ", message.route()),
                clock.on(message.back(), day), clock.on(message.backBy(), day), clock.on(message.actFrom(), day));
    }
}
