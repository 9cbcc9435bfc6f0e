package understorey.pages;

import java.util.ArrayList;
import java.util.List;
import understorey.brief.ShotBrief;
import understorey.exposure.Settings;

/** Settings in one figure where the sky is known, from the least to the most of all skies where it is not. */
final class SkySpan {

    private SkySpan() {
    }

    static String fNumber(ShotBrief shot) {
        Settings least = least(shot, Settings::fNumber);
        Settings most = most(shot, Settings::fNumber);
        return joined(Words.fNumber(least.fNumber()), Words.fNumber(most.fNumber()));
    }

    static String shutter(ShotBrief shot) {
        return joined(OtherLight.shutter(least(shot, Settings::shutterS)),
                OtherLight.shutter(most(shot, Settings::shutterS)));
    }

    static String iso(ShotBrief shot) {
        return joined(String.valueOf(least(shot, Settings::iso).iso()), String.valueOf(most(shot, Settings::iso).iso()));
    }

    static String ev(ShotBrief shot) {
        return joined(Words.ev(least(shot, Settings::ev100).ev100()), Words.ev(most(shot, Settings::ev100).ev100()));
    }

    private interface Quantity {
        double of(Settings settings);
    }

    private static Settings least(ShotBrief shot, Quantity quantity) {
        Settings least = null;
        for (Settings settings : all(shot)) {
            least = least == null || quantity.of(settings) < quantity.of(least) ? settings : least;
        }
        return least;
    }

    private static Settings most(ShotBrief shot, Quantity quantity) {
        Settings most = null;
        for (Settings settings : all(shot)) {
            most = most == null || quantity.of(settings) > quantity.of(most) ? settings : most;
        }
        return most;
    }

    private static List<Settings> all(ShotBrief shot) {
        if (shot.skyKnown()) {
            return List.of(shot.settings());
        }
        List<Settings> all = new ArrayList<>();
        for (ShotBrief.Other in : shot.otherSkies()) {
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
