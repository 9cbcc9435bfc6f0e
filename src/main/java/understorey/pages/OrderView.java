package understorey.pages;

import freemarker.core.TemplateHTMLOutputModel;
import java.util.ArrayList;
import java.util.List;
import understorey.brief.Brief;
import understorey.brief.ShotBrief;
import understorey.kit.Intent;
import understorey.outing.Alternative;
import understorey.outing.Leg;
import understorey.outing.Safety;
import understorey.outing.WalkOut;
import understorey.reason.Figure;
import understorey.scene.Drawing;

/**
 * The day on the ground in words.
 *
 * @param taken   when each picture of the story is taken, in the story's order: "taken 2nd, 07:10–07:35"
 * @param captions to begin with, in the story's order
 * @param others  what changes if the day turns out another
 * @param safety  out of the wood in time
 * @param message for whoever knows; null when nobody is named
 * @param timeLine null when no picture is taken
 * @param spotPlan null where positions are not known exactly
 */
public record OrderView(List<Step> steps, String leaveLastSpotBy, List<String> taken, List<String> captions, List<Other> others, List<Row> safety,
                        Message message, TemplateHTMLOutputModel timeLine, String timeLineSays, TemplateHTMLOutputModel spotPlan,
                        String spotPlanSays) {

    /** One line of the running order; {@code idle} while setting up or waiting; {@code told} is a picture's place in the story. */
    public record Step(String from, String to, String what, boolean shoot, boolean idle, String told) {
    }

    /** Another day, and what to do otherwise on it. */
    public record Other(String day, List<String> lines) {
    }

    /** To leave with somebody. */
    public record Message(String tell, String site, String position, String base, String route, String back, String backBy,
                          String actFrom) {
    }

    private static final String[] ORDINALS = {"1st", "2nd", "3rd"};

    static OrderView of(Brief brief, Sentences sentences) {
        List<String> shooting = new ArrayList<>();
        for (Leg leg : brief.outing().legs()) {
            if (leg.what() == Leg.What.SHOOT) {
                shooting.add(leg.shot());
            }
        }
        List<String> taken = new ArrayList<>();
        List<String> captions = new ArrayList<>();
        for (Intent intent : brief.story().sequence()) {
            String name = intent.shot().name();
            taken.add(shooting.contains(name) ? "taken " + ordinal(shooting.indexOf(name)) + ", " + Words.span(brief.outing().timeOf(name))
                    : "not taken: no time left");
            captions.add(Caption.of(brief, intent));
        }
        return new OrderView(steps(brief, sentences), Words.clock(brief.outing().leaveLastSpotBy()), taken, captions, others(brief),
                safety(brief.safety(), brief.trip().site().name()), message(brief.safety().message()),
                svg(brief.timeLine(), "order-line"), says(brief.timeLine()), svg(brief.spotPlan(), "spot-plan"), says(brief.spotPlan()));
    }

    private static TemplateHTMLOutputModel svg(Drawing drawing, String id) {
        return drawing == null ? null : Templates.html(Svg.of(drawing, id));
    }

    private static String says(Drawing drawing) {
        return drawing == null ? null : drawing.says();
    }

    private static String ordinal(int index) {
        return index < ORDINALS.length ? ORDINALS[index] : index + 1 + "th";
    }

    private static List<Step> steps(Brief brief, Sentences sentences) {
        List<String> story = new ArrayList<>();
        for (Intent intent : brief.story().sequence()) {
            story.add(intent.shot().name());
        }
        List<Step> steps = new ArrayList<>();
        for (Leg leg : brief.outing().legs()) {
            String spot = leg.spot() == null ? brief.trip().site().name() : leg.spot();
            boolean shoot = leg.what() == Leg.What.SHOOT;
            String what = switch (leg.what()) {
                case WALK -> leg.shot() == null ? "walk back to " + spot : "walk to " + spot;
                case SET_UP -> "set up";
                case WAIT -> "wait: " + within(sentences, leg);
                case SHOOT -> brief.shot(leg.shot()).number() + " " + leg.shot();
            };
            steps.add(new Step(Words.clock(leg.from()), Words.clock(leg.to()), what, shoot,
                    leg.what() == Leg.What.SET_UP || leg.what() == Leg.What.WAIT,
                    shoot ? ordinal(story.indexOf(leg.shot())) : ""));
        }
        return steps;
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
            if (last != null && last.lines().equals(lines)) {
                others.set(others.size() - 1, new Other(last.day().replace(" or ", ", ") + " or " + day, lines));
            } else {
                others.add(new Other(day, lines));
            }
        }
        return others;
    }

    /** A line a picture: when it is taken then, and beside it what the author would do otherwise. */
    private static List<String> lines(Alternative alternative, Brief brief) {
        List<Intent> alone = new ArrayList<>(alternative.instead());
        List<String> lines = new ArrayList<>();
        for (Alternative.Change change : alternative.changes()) {
            String otherwise = "";
            for (int i = alone.size() - 1; i >= 0; i--) {
                if (alone.get(i).shot().name().equals(change.shot())) {
                    otherwise = ". " + alone.remove(i).shot().otherwise().strip();
                }
            }
            lines.add(line(change, brief.shot(change.shot())) + otherwise);
        }
        for (Intent intent : alone) {
            lines.add(brief.shot(intent.shot().name()).number() + " " + intent.shot().name() + ": " + intent.shot().otherwise().strip());
        }
        return lines;
    }

    private static String line(Alternative.Change change, ShotBrief shot) {
        String name = shot.number() + " " + change.shot();
        return change.then() == null ? name + " is left out" : change.planned() == null
                ? name + " finds time at " + Words.span(change.then())
                : name + " at " + Words.span(change.then()) + " instead of " + Words.span(change.planned());
    }

    private static List<Row> safety(Safety safety, String site) {
        List<Row> rows = new ArrayList<>();
        rows.add(new Row("Back", Words.clock(safety.back())));
        if (safety.daylightMargin() != null) {
            long margin = safety.daylightMargin();
            rows.add(new Row("Last light", Words.clock(safety.lastLight()) + " on the darkest floor visited, " + minutes(Math.abs(margin))
                    + (margin < 0 ? " before you are back" : " after you are back")));
        }
        WalkOut out = safety.walkOut();
        if (out != null && out.minutes() > 0) {
            rows.add(new Row("Way out", minutes(out.minutes()) + " from " + (out.spot() == null ? site : out.spot())
                    + (out.longestMinutes() > out.minutes() ? ", " + minutes(out.longestMinutes()) + " by the slowest of five published paces"
                    : "") + (out.dark() ? ", by lamp" : "")));
        }
        if (safety.closing() != null) {
            Safety.Closing closing = safety.closing();
            Long after = closing.afterSunset();
            rows.add(new Row(closing.carPark() ? "Car park closes" : "Site closes", Words.clock(closing.at())
                    + (after == null ? "" : ", " + minutes(Math.abs(after)) + (after < 0 ? " before" : " after") + " sunset")));
        }
        return rows;
    }

    private static String minutes(long minutes) {
        return Words.of(Figure.of(minutes, Figure.Measure.MINUTES));
    }

    private static Message message(Safety.Message message) {
        return message == null ? null : new Message(message.tell(), message.site(),
                PlaceView.position(message.position()), message.base(), message.route().isEmpty() ? null : String.join(", then ", message.route()),
                Words.clock(message.back()), Words.clock(message.backBy()), Words.clock(message.actFrom()));
    }
}
