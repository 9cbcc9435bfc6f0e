package understorey.pages.html;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import understorey.brief.TimedShot;
import understorey.exposure.Settings;
import understorey.pages.words.SettingsWords;
import understorey.pages.words.Words;

/** Settings in one figure where the sky is known, from the least to the most of all skies where it is not. */
final class SkySpan {

    private SkySpan() {
    }

    static String fNumber(TimedShot shot) {
        return span(shot, Settings::fNumber, settings -> Words.fNumber(settings.fNumber()));
    }

    static String shutter(TimedShot shot) {
        return span(shot, Settings::shutterS, SettingsWords::shutter);
    }

    static String iso(TimedShot shot) {
        return span(shot, Settings::iso, settings -> String.valueOf(settings.iso()));
    }

    static String ev(TimedShot shot) {
        return span(shot, Settings::ev100, settings -> Words.ev(settings.ev100()));
    }

    private static String span(TimedShot shot, ToDoubleFunction<Settings> quantity, Function<Settings, String> words) {
        Settings planned = shot.settings();
        List<Settings> all = shot.skyKnown() && planned != null ? List.of(planned) : shot.otherSkies().stream().map(TimedShot.Other::settings).toList();
        Comparator<Settings> order = Comparator.comparingDouble(quantity);
        return joined(words.apply(Collections.min(all, order)), words.apply(Collections.max(all, order)));
    }

    /** One figure, or two with the unit of the first left out where both have the same. */
    private static String joined(String least, String most) {
        if (least.equals(most)) {
            return least;
        }
        int unit = most.indexOf('\u00a0');
        return unit > 0 && least.endsWith(most.substring(unit)) ? least.substring(0, least.length() - most.length() + unit)
                + "–" + most : least + "–" + most;
    }
}
