package understorey.pages.html;

import static understorey.pages.words.Words.ifKnown;

import freemarker.core.TemplateHTMLOutputModel;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import understorey.advice.Advice;
import understorey.advice.LeftOutAdvice;
import understorey.advice.TripAdvice;
import understorey.brief.Brief;
import understorey.brief.TimedShot;
import understorey.order.Leg;
import understorey.pages.markdown.Prose;
import understorey.pages.tables.Row;
import understorey.pages.tables.TableView;
import understorey.pages.words.ClockWords;
import understorey.pages.words.Sentences;
import understorey.pages.words.Words;
import understorey.plan.Contact;
import understorey.plan.Share;
import understorey.visit.Safety;

/**
 * The field sheet: one side of paper for up to six pictures, two for up to twelve.
 *
 * @param size    of the type and of the sketches
 * @param shared  what all pictures have in common
 * @param shots   in the order in which they are taken
 * @param leftOut a sentence with the reason for each picture that is not taken
 * @param days    the starts if the day differs; without lines if no other day has other ones
 * @param home    times to keep on the way back, and who knows
 */
public record SheetPage(TemplateHTMLOutputModel css, String size, PlanView plan, SheetRail rail, List<String> shared, List<SheetShot> shots,
                        List<String> leftOut, TableView days, String leaveBy, List<Row> home, List<String> cautions) {

    public static SheetPage of(Brief brief, PlanView plan, TemplateHTMLOutputModel css, Sentences sentences, Prose prose) {
        List<TimedShot> taken = brief.order().shooting().stream().map(leg -> brief.shot(leg.shot())).toList();
        List<String> shared = SheetShot.shared(taken);
        List<SheetShot> shots = taken.stream()
                .map(shot -> SheetShot.of(brief, shot, plan.shots().get(shot.number() - 1), shared, sentences)).toList();
        return new SheetPage(css, "", plan, SheetRail.of(brief, sentences), shared, shots, leftOut(brief, sentences),
                SheetDays.of(plan.order().others(), brief.order().shooting().stream().map(leg -> start(leg, brief, sentences)).toList(), sentences),
                sentences.clock().of(brief.order().leaveLastSpotBy()), home(brief, sentences.clock()), SheetCautions.of(brief, plan.place().cautions(), sentences))
                .filled(prose);
    }

    /** As large as fits with all of the author's words, else with as many as there is room for. */
    private SheetPage filled(Prose prose) {
        for (SheetRoom.Size size : SheetRoom.Size.values()) {
            SheetRoom room = SheetRoom.of(size, this);
            List<SheetText> texts = shots.stream().map(shot -> shot.text(room, prose)).toList();
            boolean fits = SheetText.fill(texts, room.shotsMm());
            if (size == SheetRoom.Size.DENSE || fits && texts.stream().allMatch(SheetText::whole)) {
                List<SheetShot> worded = IntStream.range(0, shots.size()).mapToObj(i -> shots.get(i).with(texts.get(i))).toList();
                return new SheetPage(css, Words.word(size), plan, rail, shared, worded, leftOut, days, leaveBy, home, cautions);
            }
        }
        throw new IllegalStateException("the dense size is for any number of pictures");
    }

    private static OrderView.Start start(Leg leg, Brief brief, Sentences sentences) {
        return new OrderView.Start(brief.shot(leg.shot()).number(), sentences.clock().of(leg.from()));
    }

    private static List<String> leftOut(Brief brief, Sentences sentences) {
        List<String> reasons = new ArrayList<>();
        for (TimedShot shot : brief.timed()) {
            String name = shot.intent().shot().name();
            if (shot.time() == null) {
                reasons.add(brief.findings().stream().filter(finding -> leavesOut(finding, name)).map(sentences::of).findFirst()
                        .orElse("“" + name + "” is left out."));
            }
        }
        return reasons;
    }

    private static boolean leavesOut(Advice finding, String shot) {
        return finding instanceof LeftOutAdvice left && left.shot().equals(shot)
                || finding instanceof TripAdvice.ShotCannot cannot && cannot.shot().equals(shot)
                || finding instanceof TripAdvice.ShotCannotInLight dark && dark.shot().equals(shot);
    }

    private static List<Row> home(Brief brief, ClockWords clock) {
        List<Row> rows = new ArrayList<>();
        Safety safety = brief.safety();
        rows.add(new Row(brief.trip().site().parking() == null ? "Last picture ends" : "Back", clock.of(safety.back())));
        if (safety.closing() != null) {
            rows.add(new Row(safety.closing().carPark() ? "Car park closes" : "Site closes", clock.of(safety.closing().at())));
        }
        Contact contact = brief.trip().audience() == Share.Audience.PUBLIC ? null : brief.trip().contact();
        String tell = ifKnown(contact, Contact::tell);
        if (contact != null && tell != null && !tell.isBlank()) {
            rows.add(new Row("Contact", tell));
        }
        if (contact != null && contact.backBy() != null) {
            rows.add(new Row("Check in by", clock.of(contact.backBy())));
        }
        return rows;
    }
}
