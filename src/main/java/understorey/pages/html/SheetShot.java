package understorey.pages.html;

import static understorey.pages.words.Words.ifKnown;

import freemarker.core.TemplateHTMLOutputModel;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import understorey.advice.Measure;
import understorey.advice.ShutterAdvice;
import understorey.advice.WaitAdvice;
import understorey.brief.Brief;
import understorey.brief.TimedShot;
import understorey.exposure.Settings;
import understorey.kit.LensFit;
import understorey.kit.Verdict;
import understorey.order.Leg;
import understorey.pages.markdown.Prose;
import understorey.pages.tables.Row;
import understorey.pages.templates.Templates;
import understorey.pages.words.Sentences;
import understorey.pages.words.SettingsWords;
import understorey.pages.words.Words;

/**
 * One picture on the field sheet.
 *
 * @param walk    from the spot before; null where the visit begins at this spot
 * @param pause   how long to wait, and what for; null for no wait
 * @param verdict null for what fits
 * @param setUp   camera, support, aim, focus, filters and release: words, and the figure that follows them
 * @param lights  what changes if the light differs, for light that can come within the visit
 * @param lull    what changes in a lull; null if nothing does
 * @param note    the author's, as escaped text; null for none
 * @param planB   the author's, as escaped text; null for none
 * @param more    whether some of these words are on the plan alone
 */
public record SheetShot(ShotView view, String from, String to, @Nullable String walk, @Nullable String pause, @Nullable String verdict,
                        List<Row> setUp, List<Row> lights, @Nullable String lull, @Nullable TemplateHTMLOutputModel note,
                        @Nullable TemplateHTMLOutputModel planB, boolean more) {

    /**
     * A picture, still without the author's words.
     *
     * @param shared what all pictures have in common, and the sheet says once
     */
    static SheetShot of(Brief brief, TimedShot shot, ShotView view, List<String> shared, Sentences sentences) {
        LensFit fit = shot.fit().best();
        Settings settings = shot.settings();
        List<Leg> legs = before(brief.order().legs(), view.name());
        Leg shoot = legs.get(legs.size() - 1);
        return new SheetShot(view, sentences.clock().start(shoot.from(), shoot.to()), sentences.clock().of(shoot.to()), walk(brief, legs), pause(legs),
                verdict(shot), fit == null || settings == null ? List.of() : setUp(view, fit, settings, shared, sentences),
                SheetLight.of(shot, sentences.clock()), SheetLight.lull(shot), null, null, false);
    }

    private static @Nullable String verdict(TimedShot shot) {
        String why = ifKnown(shot.settings(), SettingsWords::problem);
        return shot.verdict() == Verdict.FITS ? null : shot.settings() == null ? "no camera" : why == null ? Words.word(shot.verdict()) : why;
    }

    /** The author's words, of which none is shown yet. */
    SheetText text(SheetRoom room, Prose prose) {
        int fixed = room.lines(letters(setUp)) + room.lines(letters(lights) + (lull == null ? 0 : lull.length() + 12));
        String way = Stream.of(walk, pause).filter(Objects::nonNull).collect(Collectors.joining(", "));
        String settings = Stream.of(ifKnown(view.settings(), SettingsView::line), verdict).filter(Objects::nonNull).collect(Collectors.joining(" "));
        return new SheetText(view.otherwise(), note(view),
                words -> room.heightMm(fixed + room.lines(words), view.name(), settings, view.spot(), way), prose);
    }

    /** With what is shown of them. */
    SheetShot with(SheetText text) {
        return new SheetShot(view, from, to, walk, pause, verdict, setUp, lights, lull, ifKnown(text.note(), Templates::html),
                ifKnown(text.planB(), Templates::html), !text.whole());
    }

    private static int letters(List<Row> rows) {
        return rows.stream().mapToInt(row -> row.name().length() + row.text().length() + 4).sum();
    }

    /** What all pictures have in common: the body, and how the shutter is fired. */
    static List<String> shared(List<TimedShot> shots) {
        List<String> shared = new ArrayList<>();
        List<String> bodies = shots.stream().map(shot -> ifKnown(shot.fit().best(), fit -> fit.camera().body().name())).distinct().toList();
        List<String> releases = shots.stream().map(shot -> ifKnown(shot.settings(), SheetShot::release)).distinct().toList();
        Stream.of(bodies, releases).filter(one -> one.size() == 1 && one.get(0) != null).map(one -> one.get(0)).forEach(shared::add);
        return shared;
    }

    /** What goes where, what the author notes, and what spoils the picture. */
    private static @Nullable String note(ShotView view) {
        List<String> parts = new ArrayList<>();
        if (view.compose() != null) {
            parts.add(Words.capital(view.compose()) + ".");
        }
        if (view.notes() != null) {
            parts.add(view.notes().strip());
        }
        if (view.trouble() != null) {
            parts.add(view.trouble());
        }
        return parts.isEmpty() ? null : String.join(" ", parts);
    }

    /** The legs after the picture before, up to the picture itself. */
    private static List<Leg> before(List<Leg> legs, String shot) {
        List<Leg> before = new ArrayList<>();
        for (Leg leg : legs) {
            before.add(leg);
            if (leg.what() == Leg.What.SHOOT) {
                if (shot.equals(leg.shot())) {
                    return before;
                }
                before.clear();
            }
        }
        throw new IllegalArgumentException(shot + " is not taken");
    }

    private static @Nullable String walk(Brief brief, List<Leg> legs) {
        List<Leg> all = brief.order().legs();
        int first = all.indexOf(legs.get(0));
        Leg walk = legs.stream().filter(leg -> leg.what() == Leg.What.WALK).findFirst().orElse(null);
        boolean start = all.subList(0, first).stream().noneMatch(leg -> leg.what() == Leg.What.SHOOT);
        if (walk == null) {
            return start ? null : "same spot";
        }
        String from = start ? ifKnown(brief.trip().site().parking(), parking -> parking.spot()) : all.get(first - 1).spot();
        boolean dark = brief.day().headTorch().neededBetween(walk.from(), walk.to());
        return Words.minutes(walk.minutes()) + " from " + Words.place(brief.trip().site(), from) + (dark ? ", head torch" : "");
    }

    /** The reason in the fewest words: the start beside it says until when. */
    private static @Nullable String pause(List<Leg> legs) {
        Leg wait = legs.stream().filter(leg -> leg.what() == Leg.What.WAIT).reduce((one, last) -> last).orElse(null);
        if (wait == null) {
            return null;
        }
        Object why = wait.why() instanceof WaitAdvice.WaitWithRoom room ? room.why() : wait.why();
        String reason = why instanceof WaitAdvice.WaitForOpening ? " for the gate"
                : why instanceof WaitAdvice.WaitForPin ? " for the fixed time"
                : why instanceof WaitAdvice.WaitForSunrise ? " for sunrise"
                : why instanceof WaitAdvice.WaitForSun ? " for the sun"
                : why instanceof WaitAdvice.WaitForDay ? " for daylight"
                : why instanceof WaitAdvice.WaitForMoreLight more ? " for " + Words.stops(more.stops()) + " more light"
                : why instanceof WaitAdvice.WaitForEasierSettings ? " for better settings" : " for better light";
        return "wait " + Words.minutes(wait.minutes()) + reason;
    }

    private static List<Row> setUp(ShotView view, LensFit fit, Settings settings, List<String> shared, Sentences sentences) {
        List<Row> rows = new ArrayList<>();
        String body = fit.camera().body().name();
        String camera = shared.contains(body) ? fit.camera().name().substring(body.length() + 2) : fit.camera().name();
        boolean zooms = fit.camera().lens().zooms();
        Double facing = fit.intent().shot().facingDeg();
        rows.add(new Row(camera + (zooms ? " at" : ""), zooms ? Words.millimetres(fit.focalMm()) : ""));
        add(rows, "with", FocusWords.filters(fit, settings));
        rows.add(new Row((fit.support() == null ? "hand-held" : fit.support().name()) + ", lens at", sentences.of(fit.heightM(), Measure.METRES)));
        rows.add(new Row(facing == null ? "" : "facing", (facing == null ? "" : Words.compass(facing) + ", ") + ShotView.tilt(fit)));
        add(rows, "focus", sentences.of(fit.focusFromSensorM(), Measure.METRES));
        add(rows, "sharp", FocusWords.sharp(fit, settings, sentences));
        SettingsView worded = view.settings();
        add(rows, "stack", ifKnown(worded, SettingsView::stack));
        add(rows, "", ifKnown(worded, SettingsView::bias));
        add(rows, "bracket", ifKnown(worded, SettingsView::bracket));
        String release = release(settings);
        add(rows, "", release == null || shared.contains(release) ? null : release);
        return rows;
    }

    private static void add(List<Row> rows, String name, @Nullable String figure) {
        if (figure != null) {
            rows.add(new Row(name, figure));
        }
    }

    private static @Nullable String release(Settings settings) {
        boolean remote = settings.reasons().stream().anyMatch(reason -> reason instanceof ShutterAdvice.LetGoByRemote);
        boolean timer = settings.reasons().stream().anyMatch(reason -> reason instanceof ShutterAdvice.LetGoByTimer);
        return remote ? "remote release" : timer ? "self-timer" : null;
    }
}
