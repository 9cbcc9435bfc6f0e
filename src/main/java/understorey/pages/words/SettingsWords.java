package understorey.pages.words;

import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import understorey.exposure.Settings;
import understorey.kit.Verdict;
import understorey.light.LightAt;
import understorey.plan.SkyWord;

/** Settings of a camera in a few words. */
public final class SettingsWords {

    public static final String TOO_DARK = "too dark";

    private SettingsWords() {
    }

    /** A sky, and what is metered under it where that is not the whole ground. */
    public static String sky(SkyWord sky, LightAt.Metered metered) {
        return Words.word(sky) + switch (metered) {
            case GROUND -> "";
            case SHADE -> ", in the shade";
            case SUN -> ", in the sun";
            case SUN_AND_SHADE -> ", sun and shade";
        };
    }

    /** The shutter speed; where no frame makes sense, that it is too dark. */
    public static String shutter(Settings settings) {
        return settings.tooDark() ? TOO_DARK : Words.shutter(settings.shutterS());
    }

    /** The bracket in full, or how far one frame is off the meter; null for a single frame as metered. */
    public static @Nullable String exposed(Settings settings) {
        return settings.tooDark() ? null : settings.lessStops() == 0 ? bracket(settings)
                : (settings.inMist() ? "+" : "−") + Words.stops(Math.abs(settings.lessStops()));
    }

    /** How far one frame is below the meter reading or above it; null for one as metered. */
    public static @Nullable String bias(Settings settings) {
        return settings.lessStops() == 0 ? null
                : Words.stops(Math.abs(settings.lessStops())) + (settings.inMist() ? " above the meter" : " below the meter");
    }

    /** The darkest first; null for a single frame. */
    public static @Nullable String bracket(Settings settings) {
        if (settings.bracketStops().size() < 2) {
            return null;
        }
        return settings.bracketStops().stream().map(stops -> (stops > 0 ? "+" : "") + Words.number(stops, 0))
                .collect(Collectors.joining(", "));
    }

    /** The verdict with its reason, as {@code cannot: too dark}; null for what fits. */
    public static @Nullable String problem(Settings settings) {
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

    /** Empty where a single frame as metered fits. */
    public static String bracketAndProblem(Settings settings) {
        return Stream.of(exposed(settings), problem(settings)).filter(Objects::nonNull).collect(Collectors.joining("; "));
    }
}
