package understorey.pages.html;

import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.brief.TimedShot;
import understorey.exposure.Settings;
import understorey.pages.words.Dates;
import understorey.pages.words.SettingsWords;
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
public record OtherLight(String when, String fNumber, String shutter, String iso, boolean otherFNumber, boolean otherIso,
                         boolean otherBracket, @Nullable String bracket, @Nullable String verdict) {

    static List<OtherLight> skies(TimedShot shot) {
        return shot.otherSkies().stream().map(other -> of(Words.orDash(other.sky(), sky -> SettingsWords.sky(sky, shot.light())), other,
                shot.settings())).toList();
    }

    static List<OtherLight> hours(TimedShot shot) {
        return shot.otherHours().stream().map(other -> of(Dates.clock(other.time()), other, shot.settings())).toList();
    }

    private static OtherLight of(String when, TimedShot.Other other, @Nullable Settings planned) {
        Settings settings = other.settings();
        Settings same = planned == null || settings.tooDark() ? settings : planned;
        return new OtherLight(when, Words.fNumber(settings.fNumber()), SettingsWords.shutter(settings),
                String.valueOf(settings.iso()), settings.fNumber() != same.fNumber(),
                settings.iso() != same.iso(), !settings.bracketStops().equals(same.bracketStops()),
                SettingsWords.exposed(settings), SettingsWords.problem(settings));
    }
}
