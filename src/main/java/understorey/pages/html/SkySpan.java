package understorey.pages.html;

import java.util.ArrayList;
import java.util.List;
import understorey.brief.TimedShot;
import understorey.exposure.Settings;
import understorey.pages.words.Words;

/** Settings in one figure where the sky is known, from the least to the most of all skies where it is not. */
final class SkySpan {

    private SkySpan() {
    }

    private record Ends(Settings least, Settings most) {
    }

    static String fNumber(TimedShot shot) {
        Ends ends = ends(shot, Quantity.F_NUMBER);
        return joined(Words.fNumber(ends.least.fNumber()), Words.fNumber(ends.most.fNumber()));
    }

    static String shutter(TimedShot shot) {
        Ends ends = ends(shot, Quantity.SHUTTER);
        return joined(OtherLight.shutter(ends.least), OtherLight.shutter(ends.most));
    }

    static String iso(TimedShot shot) {
        Ends ends = ends(shot, Quantity.ISO);
        return joined(String.valueOf(ends.least.iso()), String.valueOf(ends.most.iso()));
    }

    static String ev(TimedShot shot) {
        Ends ends = ends(shot, Quantity.EV);
        return joined(Words.ev(ends.least.ev100()), Words.ev(ends.most.ev100()));
    }

    private enum Quantity {
        F_NUMBER, SHUTTER, ISO, EV;

        double of(Settings settings) {
            return switch (this) {
                case F_NUMBER -> settings.fNumber();
                case SHUTTER -> settings.shutterS();
                case ISO -> settings.iso();
                case EV -> settings.ev100();
            };
        }
    }

    private static Ends ends(TimedShot shot, Quantity quantity) {
        Settings least = null;
        Settings most = null;
        for (Settings settings : all(shot)) {
            least = least == null || quantity.of(settings) < quantity.of(least) ? settings : least;
            most = most == null || quantity.of(settings) > quantity.of(most) ? settings : most;
        }
        return new Ends(least, most);
    }

    private static List<Settings> all(TimedShot shot) {
        if (shot.skyKnown()) {
            return List.of(shot.settings());
        }
        List<Settings> all = new ArrayList<>();
        for (TimedShot.Other in : shot.otherSkies()) {
            all.add(in.settings());
        }
        return all;
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
