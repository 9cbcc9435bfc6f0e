package understorey.share;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import understorey.plan.Position;
import understorey.plan.Site;
import understorey.plan.Spot;

class HiddenNamesTest {

    private static Site site() {
        List<Spot> spots = List.of(spot("Footbridge", "Turn left behind Maddock’s barn."), spot("Stone bank", null),
                spot("Brücke", null), spot("Devil's step", null), spot("Ørsted Eg", null), spot("Gate", null));
        return new Site("Gorsewell Dingle", "gorsewell-dingle", "A wooded dingle", new Position(52.337, -3.548), null,
                ZoneId.of("UTC"), List.of(), null, spots, List.of(), null, null, List.of(), List.of(),
                "Public footpath from the chapel in Penhallow; parking there.", "https://www.wildflowers.example/gorse", true,
                List.of(), null, List.of(), null);
    }

    private static Spot spot(String name, String notes) {
        return new Spot(name, null, null, null, null, null, null, notes, null);
    }

    private static Set<String> in(String text, String... reviewed) {
        HiddenNames names = HiddenNames.of(site(), List.of(reviewed));
        Set<String> found = new TreeSet<>();
        PlainText.forms(text).forEach(form -> found.addAll(names.in(form)));
        return found;
    }

    @ParameterizedTest
    @ValueSource(strings = {"Gorsewell Dingle", "gorsewell dingle", "GORSEWELL DINGLE", "Gorsewell", "gorsewell's floor", "Gorsewells",
        "Gorsewell-Dingle", "gorsewell_dingle", "GorsewellDingle", "gorsewelldingle", "#GorsewellDingle", "Gorsewell\nDingle",
        "**Gorse**well", "Gorse-well", "Gorse well", "Gorse-\nwell", "G o r s e w e l l", "G.o.r.s.e.w.e.l.l", "Görsewell", "Gorséwell",
        "Gorse\u00adwell", "Gorse\u200bwell", "Gorswell", "Gorsewel", "Gorsewwell", "Grosewell", "Gorsewall", "Gorse&shy;well", "G&#111;rsewell",
        "G&ouml;rsewell", "Gorse%77ell", "%47%6f%72sewell", "G\\u006frsewell", "G0rsewell", "Gorsewe11", "Gоrsewell", "Ｇｏｒｓｅｗｅｌｌ",
        "Gorse<b>well</b>", "<img alt=\"Gorsewell\">", "[Gorsewell](x.jpg)", "![](gorsewell.jpg)", "https://example.org/gorsewell-2", "Gorsewellian",
        "The Footbridge", "footbridges", "foot bridge", "foot-bridge", "Foot Bridge", "fotbridge", "Stonebank", "stone banks", "Stone-bank",
        "Brucke", "Bruecke", "BRÜCKE", "Brücken", "Bru\u0308cke", "Devil’s step", "Devils step", "the devil",
        "Orsted", "Oersted", "Ørsteds", "the gates",
        "the gate", "Gate1", "Penhallow", "in Penhallows", "Maddock", "wildflowers.example", "wildflowers example"})
    void findsWhatComesNearAHiddenName(String text) {
        assertFalse(in(text).isEmpty(), text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Stay on the path and behind the wall.", "A wooded dingle in the hills", "Drops last until the sun has been on the bank.",
        "Lead in along the stream", "A floodgate of light", "From the far rail", "The stone wall", "the chapel", "White flowers in the well-lit wood",
        "gathering light", "Horses graze", "bridges and boots", "Papery stars", "late", "a step to the left", "One head, one drop", "parking there"})
    void letsOtherWordsPass(String text) {
        assertEquals(Set.of(), in(text), text);
    }

    @Test
    void letsReviewedWordsPassAndNoOthers() {
        assertEquals(Set.of(), in("Over the footbridge, all footbridges", "footbridge"));
        assertEquals(Set.of(), in("Over the foot bridge. A footbridge is wet.", "Footbridge"));
        assertEquals(Set.of("stone bank"), in("From the stone bank by the gate", "gate", "bank"));
        assertEquals(Set.of("gorsewell", "gorsewell dingle"), in("Gorsewell Dingle", "dingle"));
    }
}
