package understorey.pages.html;

import static understorey.pages.words.Words.ifKnown;

import org.jspecify.annotations.Nullable;
import understorey.brief.TimedShot;
import understorey.exposure.Settings;
import understorey.exposure.motion.Lull;
import understorey.kit.LensFit;
import understorey.pages.words.Sentences;
import understorey.pages.words.SettingsWords;
import understorey.pages.words.Words;
import understorey.plan.SkyWord;

/**
 * The settings of a picture in words, without a forecast for one sky that is named.
 *
 * @param line    aperture, shutter speed and ISO
 * @param lull    the same in a lull; null if it allows no more, or the sky is unknown
 * @param bias    how far they are below the meter or above it
 * @param bracket between its frames
 * @param stack   frames of a focus stack and how to take them
 */
public record SettingsView(String aperture, String shutter, String iso, String line, @Nullable String lull, @Nullable String bias,
                           @Nullable String bracket, @Nullable String stack) {

    /** Null for a picture that no camera takes. */
    static @Nullable SettingsView of(TimedShot shot, Sentences sentences) {
        LensFit fit = shot.fit().best();
        Settings settings = shot.settings();
        if (fit == null || settings == null) {
            return null;
        }
        String aperture = Words.fNumber(settings.fNumber());
        String shutter = SettingsWords.shutter(settings);
        String iso = String.valueOf(settings.iso());
        SkyWord sky = shot.settingsSky();
        Lull lull = shot.skyKnown() ? settings.lull() : null;
        return new SettingsView(aperture, shutter, iso, line(aperture, shutter, iso) + (sky == null ? "" : " if the sky is " + Words.word(sky)),
                lull == null ? null : line(Words.fNumber(lull.fNumber()), Words.shutter(lull.shutterS()), String.valueOf(lull.iso())),
                SettingsWords.bias(settings),
                ifKnown(SettingsWords.bracket(settings), steps -> steps + "\u00a0stops"), FocusWords.stack(fit, settings, sentences));
    }

    private static String line(String aperture, String shutter, String iso) {
        return aperture + " · " + shutter + " · ISO\u00a0" + iso;
    }
}
