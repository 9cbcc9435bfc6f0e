package understorey.pages;

import freemarker.core.TemplateHTMLOutputModel;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import understorey.brief.Brief;
import understorey.brief.TimedShot;
import understorey.kit.Intent;
import understorey.order.Alternative;
import understorey.order.Leg;
import understorey.order.RunningOrder;
import understorey.plan.Share;
import understorey.plan.Shot;
import understorey.scene.Drawing;
import understorey.scene.Scene;
import understorey.visit.Safety;

/**
 * The day on the ground in words.
 *
 * @param taken   when each picture of the story is taken, in the story's order: "taken 2nd, 07:10–07:35"
 * @param captions to begin with, in the story's order
 * @param others  what changes if the day turns out another
 * @param safety  out of the wood in time
 * @param message for the contact; null without one
 * @param timeLine null when no picture is taken
 * @param spotPlan null where positions are not known exactly
 */
public record OrderView(List<Step> steps, String leaveLastSpotBy, List<String> taken, List<String> captions, List<Other> others, List<Row> safety,
                        Message message, TemplateHTMLOutputModel timeLine, TemplateHTMLOutputModel spotPlan,
                        String spotPlanSays) {

    /**
     * One line of the running order.
     *
     * @param brief the same on the field sheet; null where that has no line for it
     * @param told  a picture's place in the story
     */
    public record Step(String from, String to, String what, String brief, boolean shoot, String told) {
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
    public record Message(boolean ready, String tell, String day, String arrive, String site, String position, String base, String route, String back,
                          String backBy, String actFrom) {
    }

    /** Shorter waits go without a line on the field sheet. */
    private static final Duration LONG_WAIT = Duration.ofMinutes(10);
    private static final String[] ENDINGS = {"st", "nd", "rd"};

    static OrderView of(Brief brief, Sentences sentences) {
        List<String> shooting = new ArrayList<>();
        for (Leg leg : brief.order().legs()) {
            if (leg.what() == Leg.What.SHOOT) {
                shooting.add(leg.shot());
            }
        }
        List<String> taken = new ArrayList<>();
        List<String> captions = new ArrayList<>();
        for (Intent intent : brief.story().sequence()) {
            String name = intent.shot().name();
            taken.add(shooting.contains(name) ? "taken " + ordinal(shooting.indexOf(name)) + ", " + Words.span(brief.order().timeOf(name))
                    : "not taken");
            captions.add(Caption.of(brief, intent));
        }
        Drawing timeLine = drawing(brief.timeLine(), sentences);
        Drawing spotPlan = drawing(brief.spotPlan(), sentences);
        return new OrderView(steps(brief, sentences), Words.clock(brief.order().leaveLastSpotBy()), taken, captions, others(brief),
                OutInTime.rows(brief), message(brief),
                svg(timeLine, "order-line"), svg(spotPlan, "spot-plan"), spotPlan == null ? null : spotPlan.says());
    }

    private static Drawing drawing(Scene scene, Sentences sentences) {
        return scene == null ? null : scene.drawing(sentences::of);
    }

    private static TemplateHTMLOutputModel svg(Drawing drawing, String id) {
        return drawing == null ? null : Templates.html(Svg.of(drawing, id));
    }

    /** "1st" for 0, "12th" for 11, "22nd" for 21. */
    static String ordinal(int index) {
        int last = index % 10;
        boolean teens = index % 100 / 10 == 1;
        return last < ENDINGS.length && !teens ? index + 1 + ENDINGS[last] : index + 1 + "th";
    }

    private static List<Step> steps(Brief brief, Sentences sentences) {
        List<String> story = new ArrayList<>();
        for (Intent intent : brief.story().sequence()) {
            story.add(intent.shot().name());
        }
        List<Step> steps = new ArrayList<>();
        for (Leg leg : brief.order().legs()) {
            String spot = leg.spot() == null ? brief.trip().site().name() : leg.spot();
            boolean shoot = leg.what() == Leg.What.SHOOT;
            String what = switch (leg.what()) {
                case WALK -> leg.shot() == null ? "walk back to " + spot : "walk to " + spot;
                case SET_UP -> "set up";
                case WAIT -> "wait: " + within(sentences, leg);
                case SHOOT -> brief.shot(leg.shot()).number() + " " + leg.shot();
            };
            steps.add(new Step(Words.clock(leg.from()), Words.clock(leg.to()), what, brief(leg, what), shoot,
                    shoot ? ordinal(story.indexOf(leg.shot())) : ""));
        }
        return steps;
    }

    /** On the field sheet; null where that has no line for it. */
    static String brief(Leg leg, String what) {
        return switch (leg.what()) {
            case WALK, SHOOT -> what;
            case SET_UP -> null;
            case WAIT -> Duration.between(leg.from(), leg.to()).compareTo(LONG_WAIT) < 0 ? null : leg.shot() == null ? "wait for opening" : "wait";
        };
    }

    /** The reason without its full stop. */
    private static String within(Sentences sentences, Leg leg) {
        String sentence = sentences.within(leg.why());
        return sentence.substring(0, sentence.length() - 1);
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
        return order.shooting().stream().map(leg -> new Start(brief.shot(leg.shot()).number(), Words.clock(leg.from()))).toList();
    }

    /** A line a picture: when it is taken then, and beside it what the author would do otherwise. */
    private static List<String> lines(Alternative alternative, Brief brief) {
        List<Shot> alone = new ArrayList<>(alternative.instead());
        List<String> lines = new ArrayList<>();
        for (Alternative.Change change : alternative.changes()) {
            String otherwise = "";
            for (int i = alone.size() - 1; i >= 0; i--) {
                if (alone.get(i).name().equals(change.shot())) {
                    otherwise = ". Plan B: " + alone.remove(i).otherwise().strip();
                }
            }
            lines.add(line(change, brief.shot(change.shot())) + otherwise);
        }
        for (Shot shot : alone) {
            lines.add(brief.shot(shot.name()).number() + " " + shot.name() + ". Plan B: " + shot.otherwise().strip());
        }
        return lines;
    }

    private static String line(Alternative.Change change, TimedShot shot) {
        String name = shot.number() + " " + change.shot();
        return change.then() == null ? name + ": left out" : change.planned() == null
                ? name + " fits in at " + Words.span(change.then())
                : name + " at " + Words.span(change.then()) + " instead of " + Words.span(change.planned());
    }

    /** Without a position where the plan has only a coarse one: searchers would go there. */
    private static Message message(Brief brief) {
        Safety.Message message = brief.safety().message();
        if (message == null) {
            return null;
        }
        LocalDate day = message.arrive().toLocalDate();
        return new Message(!message.back().isAfter(message.backBy()), message.tell(), Words.day(day), Words.clock(message.arrive()), message.site(),
                brief.trip().precision() == Share.Precision.EXACT ? PlaceView.position(message.position()) : null, message.base(),
                message.route().isEmpty() ? null : String.join(", then ", message.route()),
                clock(message.back(), day), clock(message.backBy(), day), clock(message.actFrom(), day));
    }

    /** "09:50", "00:30 the next day". */
    private static String clock(ZonedDateTime time, LocalDate day) {
        return Words.clock(time) + (time.toLocalDate().equals(day) ? "" : " the next day");
    }
}
