package understorey.pages.html;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import understorey.brief.TimedShot;
import understorey.exposure.Settings;
import understorey.kit.Verdict;
import understorey.light.LightAt;
import understorey.pages.words.Dates;
import understorey.pages.words.Words;

/**
 * Settings if the light differs.
 *
 * @param shutter      “too dark” where no frame makes sense
 * @param otherFNumber its aperture is not that of the light expected
 * @param otherIso     its ISO is not that of the light expected
 * @param otherBracket its bracket is not that of the light expected
 * @param bracket      in full, or how far one frame is below the meter; null for a single frame as metered
 * @param verdict      with why, as {@code cannot: too dark}; null for what fits
 */
public record OtherLight(String when, String ev, String fNumber, String shutter, String iso, boolean otherFNumber, boolean otherIso,
                         boolean otherBracket, @Nullable String bracket, @Nullable String verdict, String kelvin) {

    static final String TOO_DARK = "too dark";

    static List<OtherLight> skies(TimedShot shot) {
        return shot.otherSkies().stream().map(other -> of(Words.orDash(other.sky(),
                sky -> Words.word(sky) + metered(other.metered())), other, shot.settings())).toList();
    }

    private static String metered(LightAt.Metered metered) {
        return switch (metered) {
            case GROUND -> "";
            case SHADE -> ", metered in the shade";
            case SUN -> ", metered in the sun";
            case SUN_AND_SHADE -> ", sun and shade metered together";
        };
    }

    static List<OtherLight> hours(TimedShot shot) {
        return shot.otherHours().stream().map(other -> of(Dates.clock(other.time()), other, shot.settings())).toList();
    }

    private static OtherLight of(String when, TimedShot.Other other, @Nullable Settings planned) {
        Settings settings = other.settings();
        Settings same = planned == null || settings.tooDark() ? settings : planned;
        return new OtherLight(when, Words.ev(settings.ev100()), Words.fNumber(settings.fNumber()), shutter(settings),
                String.valueOf(settings.iso()), settings.fNumber() != same.fNumber(),
                settings.iso() != same.iso(),
                !settings.bracketStops().equals(same.bracketStops()),
                settings.tooDark() ? null : exposed(settings), verdict(settings), other.whiteBalance().kelvin() + " K");
    }

    static String shutter(Settings settings) {
        return settings.tooDark() ? TOO_DARK : Words.shutter(settings.shutterS());
    }

    /** The darkest first; null for a single frame. */
    private static @Nullable String exposed(Settings settings) {
        return settings.lessStops() == 0 ? bracket(settings) : Words.stops(settings.lessStops()) + " below the meter";
    }

    static @Nullable String bracket(Settings settings) {
        if (settings.bracketStops().size() < 2) {
            return null;
        }
        return settings.bracketStops().stream().map(stops -> (stops > 0 ? "+" : "") + Words.number(stops, 0))
                .collect(Collectors.joining(", "));
    }

    static @Nullable String verdict(Settings settings) {
        if (settings.verdict() == Verdict.FITS) {
            return null;
        }
        String why = settings.limit() == null ? "" : switch (settings.limit()) {
            case DARK -> ": " + TOO_DARK;
            case BRIGHT -> ": too bright";
            case HANDS -> ": too slow hand-held";
            case MONOPOD -> ": too slow for a monopod";
            case STEMS -> ": motion blur";
            case RELEASE -> ": bulb needs a remote release";
            case DEPTH -> ": depth of field";
            case STACK -> ": too many frames to stack";
        };
        return Words.word(settings.verdict()) + why;
    }
}
