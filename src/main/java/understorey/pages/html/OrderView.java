package understorey.pages.html;

import freemarker.core.TemplateHTMLOutputModel;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import understorey.brief.Brief;
import understorey.brief.TimedShot;
import understorey.kit.Intent;
import understorey.order.Alternative;
import understorey.order.Leg;
import understorey.order.RunningOrder;
import understorey.pages.svg.Svg;
import understorey.pages.tables.Row;
import understorey.pages.tables.Table;
import understorey.pages.tables.TableView;
import understorey.pages.tables.VisitColumns;
import understorey.pages.tables.Wording;
import understorey.pages.templates.Templates;
import understorey.pages.words.Caption;
import understorey.pages.words.Dates;
import understorey.pages.words.LegWords;
import understorey.pages.words.Sentences;
import understorey.pages.words.Units;
import understorey.plan.Share;
import understorey.plan.Shot;
import understorey.scene.Drawing;
import understorey.sky.Interval;
import understorey.visit.Safety;
import static understorey.pages.words.Words.ifKnown;


/**
 * The day on the ground in words.
 *
 * @param taken   when each picture of the story is taken, in the story's order: "taken 2nd, 07:10–07:35"
 * @param captions to begin with, in the story's order
 * @param others  what changes if the day turns out another
 * @param safety  out of the wood in time
 * @param message for the contact; null without one
 * @param spotPlan null where positions are not known exactly
 */
public record OrderView(TableView table, List<Step> steps, @Nullable String timeLeft, String leaveLastSpotBy, List<String> taken, List<String> captions, List<Other> others, List<Row> safety,
                        @Nullable Message message, @Nullable TemplateHTMLOutputModel spotPlan, @Nullable String spotPlanSays) {

    /**
     * One line of the running order on the field sheet.
     *
     * @param brief null where the sheet has no line for it
     */
    public record Step(String from, String to, @Nullable String brief, boolean shoot) {
    }

    /** Another day, all its pictures in the order taken, and what to do otherwise on it. */
    public record Other(String day, List<Start> order, List<String> lines) {
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
    public record Message(boolean ready, String tell, String day, String arrive, String site, @Nullable String position, @Nullable String base,
                          @Nullable String route, String back,
                          String backBy, String actFrom) {
    }

    /** Shorter waits go without a line on the field sheet. */
    private static final Duration LONG_WAIT = Duration.ofMinutes(15);

    static OrderView of(Brief brief, Sentences sentences) {
        List<String> shooting = brief.order().shooting().stream().map(Leg::shot).toList();
        List<String> taken = new ArrayList<>();
        List<String> captions = new ArrayList<>();
        for (Intent intent : brief.story().sequence()) {
            String name = intent.shot().name();
            Interval time = brief.order().timeOf(name);
            taken.add(time == null ? "not taken" : "taken " + Dates.ordinal(shooting.indexOf(name)) + ", " + Dates.span(time));
            captions.add(Caption.of(brief, intent));
        }
        Drawing spotPlan = ifKnown(brief.spotPlan(), scene -> scene.drawing(sentences::of));
        return new OrderView(table(brief, sentences), steps(brief, sentences), ifKnown(brief.order().timeLeft(), sentences::of), Dates.clock(brief.order().leaveLastSpotBy()), taken, captions, others(brief),
                OutInTime.rows(brief), message(brief),
                ifKnown(spotPlan, plan -> Templates.html(Svg.of(plan, "spot-plan"))), ifKnown(spotPlan, Drawing::says));
    }

    private static TableView table(Brief brief, Sentences sentences) {
        return new Table<>(VisitColumns.steps(brief), brief.order().legs(), leg -> leg.what() == Leg.What.SHOOT)
                .view("", new Wording(Units.METRIC, sentences));
    }

    private static List<Step> steps(Brief brief, Sentences sentences) {
        List<Step> steps = new ArrayList<>();
        for (Leg leg : brief.order().legs()) {
            steps.add(new Step(Dates.clock(leg.from()), Dates.clock(leg.to()), brief(leg, LegWords.withReason(leg, brief, sentences)),
                    leg.what() == Leg.What.SHOOT));
        }
        return steps;
    }

    /** On the field sheet; null where that has no line for it. */
    static @Nullable String brief(Leg leg, String what) {
        return switch (leg.what()) {
            case WALK, SHOOT -> what;
            case SET_UP -> null;
            case WAIT -> Duration.between(leg.from(), leg.to()).compareTo(LONG_WAIT) < 0 ? null : leg.shot() == null ? "wait for opening" : "wait";
        };
    }

    private static List<Other> others(Brief brief) {
        List<Other> others = new ArrayList<>();
        for (Alternative alternative : brief.alternatives()) {
            List<String> lines = lines(alternative, brief);
            String day = switch (alternative.day()) {
                case CLEAR -> "clear";
                case OVERCAST -> "overcast";
                case RAIN -> "wet";
                case WIND -> "windy";
            };
            Other last = others.isEmpty() ? null : others.get(others.size() - 1);
            List<Start> order = order(alternative.order(), brief);
            if (last != null && last.lines().equals(lines) && last.order().equals(order)) {
                others.set(others.size() - 1, new Other(last.day().replace(" or ", ", ") + " or " + day, order, lines));
            } else {
                others.add(new Other(day, order, lines));
            }
        }
        return others;
    }

    private static List<Start> order(RunningOrder order, Brief brief) {
        return order.shooting().stream().map(leg -> new Start(brief.shot(leg.shot()).number(), Dates.clock(leg.from()))).toList();
    }

    /** A line a picture: when it is taken then, and beside it what the author would do otherwise. */
    private static List<String> lines(Alternative alternative, Brief brief) {
        Map<String, String> otherwise = new LinkedHashMap<>();
        for (Shot shot : alternative.instead()) {
            otherwise.put(shot.name(), shot.otherwise() == null ? "" : ". Plan B: " + shot.otherwise().strip());
        }
        List<String> lines = new ArrayList<>();
        for (Alternative.Change change : alternative.changes()) {
            String planB = otherwise.remove(change.shot());
            lines.add(line(change, brief.shot(change.shot())) + (planB == null ? "" : planB));
        }
        otherwise.forEach((shot, planB) -> lines.add(brief.shot(shot).number() + " " + shot + planB));
        return lines;
    }

    private static String line(Alternative.Change change, TimedShot shot) {
        String name = shot.number() + " " + change.shot();
        return change.then() == null ? name + ": left out" : change.planned() == null
                ? name + " fits in at " + Dates.span(change.then())
                : name + " at " + Dates.span(change.then()) + " instead of " + Dates.span(change.planned());
    }

    /** Without a position where the plan has only a coarse one: searchers would go there. */
    private static @Nullable Message message(Brief brief) {
        Safety.Message message = brief.safety().message();
        if (message == null) {
            return null;
        }
        LocalDate day = message.arrive().toLocalDate();
        return new Message(!message.back().isAfter(message.backBy()), message.tell(), Dates.day(day), Dates.clock(message.arrive()), message.site(),
                brief.trip().precision() == Share.Precision.EXACT ? PlaceView.position(message.position()) : null, message.base(),
                message.route().isEmpty() ? null : String.join(", then ", message.route()),
                clock(message.back(), day), clock(message.backBy(), day), clock(message.actFrom(), day));
    }

    /** "09:50", "00:30 the next day". */
    private static String clock(ZonedDateTime time, LocalDate day) {
        return Dates.clock(time) + (time.toLocalDate().equals(day) ? "" : " the next day");
    }
}
