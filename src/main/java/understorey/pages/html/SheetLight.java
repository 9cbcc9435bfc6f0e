package understorey.pages.html;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import understorey.brief.TimedShot;
import understorey.exposure.Settings;
import understorey.exposure.motion.Lull;
import understorey.kit.Verdict;
import understorey.pages.tables.Row;
import understorey.pages.words.ClockWords;
import understorey.pages.words.SettingsWords;
import understorey.pages.words.Words;
import understorey.plan.SkyWord;

/** What changes in the settings of a picture if the light differs, for light that can come within the visit. */
final class SheetLight {

    /** A forecast of the cloud cover may miss by that much, okta: common practice, no source. */
    private static final double CLOUD_MISS_OKTA = 4;
    /** Light that differs by less is not worth other settings, stops: common practice, no source. */
    private static final double LEAST_STOPS = 0.5;

    private SheetLight() {
    }

    /** Each light, and what is set otherwise in it: every sky if the sky is unknown, else the skies and hours near the plan. */
    static List<Row> of(TimedShot shot, ClockWords clock) {
        Settings planned = shot.settings();
        if (planned == null) {
            return List.of();
        }
        Double okta = shot.weather().okta();
        Map<String, String> skies = new LinkedHashMap<>();
        for (TimedShot.Other other : shot.otherSkies()) {
            SkyWord sky = other.sky();
            if (sky != null && (okta == null || Math.abs(sky.okta() - okta) <= CLOUD_MISS_OKTA)) {
                add(skies, (planned.inMist() ? "no mist, " : "") + Words.word(sky), other.settings(), okta == null ? null : planned);
            }
        }
        if (shot.ifMist() != null) {
            add(skies, "there is mist", shot.ifMist().settings(), planned);
        }
        Map<String, String> hours = new LinkedHashMap<>();
        for (TimedShot.Other other : okta == null ? List.<TimedShot.Other>of() : shot.otherHours()) {
            boolean later = other.time().isAfter(shot.light().time());
            if (later || other.settings().verdict() != Verdict.CANNOT) {
                add(hours, clock.of(other.time()), other.settings(), planned);
            }
        }
        List<Row> lights = new ArrayList<>();
        skies.forEach((change, sky) -> lights.add(new Row("if " + sky, change)));
        hours.forEach((change, hour) -> lights.add(new Row("at " + hour, change)));
        return lights;
    }

    private static void add(Map<String, String> changes, String when, Settings settings, @Nullable Settings planned) {
        boolean worth = planned == null || settings.tooDark() || planned.inMist() != settings.inMist()
                || Math.abs(settings.ev100() - planned.ev100()) >= LEAST_STOPS;
        String change = worth ? change(settings, planned) : "";
        if (!change.isEmpty()) {
            changes.merge(change, when, (one, other) -> one + " or " + other);
        }
    }

    /** All settings where none are planned. */
    private static String change(Settings settings, @Nullable Settings planned) {
        if (settings.tooDark()) {
            return SettingsWords.TOO_DARK;
        }
        List<String> parts = otherThan(planned, settings.fNumber(), settings.shutterS(), settings.iso());
        if (planned != null && !settings.bracketStops().equals(planned.bracketStops())) {
            String bracket = SettingsWords.bracket(settings);
            parts.add(bracket == null ? "one frame" : "bracket " + bracket);
        }
        String verdict = SettingsWords.problem(settings);
        return String.join(", ", parts) + (verdict == null || parts.isEmpty() ? "" : " (" + verdict + ")");
    }

    /** What a lull allows and the wind does not; null for nothing, and if the sky is unknown. */
    static @Nullable String lull(TimedShot shot) {
        Settings planned = shot.settings();
        if (planned == null || planned.lull() == null || !shot.skyKnown()) {
            return null;
        }
        Lull lull = planned.lull();
        return String.join(", ", otherThan(planned, lull.fNumber(), lull.shutterS(), lull.iso()));
    }

    /** What differs from the plan; all where there is none. */
    private static List<String> otherThan(@Nullable Settings planned, double fNumber, double shutterS, int iso) {
        List<String> parts = new ArrayList<>();
        if (planned == null || fNumber != planned.fNumber()) {
            parts.add(Words.fNumber(fNumber));
        }
        if (planned == null || shutterS != planned.shutterS()) {
            parts.add(Words.shutter(shutterS));
        }
        if (planned == null || iso != planned.iso()) {
            parts.add("ISO\u00a0" + iso);
        }
        return parts;
    }
}
