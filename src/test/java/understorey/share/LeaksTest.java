package understorey.share;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import understorey.plan.Position;
import understorey.plan.Share;
import understorey.plan.Share.Audience;
import understorey.plan.Share.Precision;
import understorey.plan.Shot;
import understorey.plan.Trip;
import understorey.reading.PlansReader;

class LeaksTest {

    @Test
    void findsEveryTextOfATripThatTellsThePlace() {
        Trip trip = Secrets.trip(true, "A wooded dingle in the hills", new Share(Audience.PUBLIC, Precision.COARSE));
        TreeSet<String> paths = new TreeSet<>();
        Leaks.of(trip).forEach(leak -> paths.add(leak.path()));
        TreeSet<String> expected = new TreeSet<>(List.of("trip", "series", "story", "shots[0].name", "site.cautions[0]",
                "site.subjects[0].habitat"));
        for (String key : List.of("notes", "otherwise", "subject.habitat", "compose.background", "compose.keep_out[0]")) {
            expected.addAll(List.of("shots[0]." + key, "shots[1]." + key, "shots[2]." + key));
        }
        assertEquals(expected, paths);
    }

    @Test
    void asksNothingOfQuietTripsNorOfOtherAudiences() {
        assertEquals(List.of(), Leaks.of(Secrets.quiet(new Share(Audience.PUBLIC, Precision.HIDDEN))));
        assertEquals(List.of(), Leaks.of(Secrets.trip(true, null, new Share(Audience.PARTY, Precision.EXACT))));
        assertEquals(List.of(), Leaks.of(Secrets.trip(false, null, new Share(Audience.PUBLIC, Precision.EXACT))));
        assertEquals(List.of(), Leaks.of(Secrets.trip(true, null, null)));
    }

    /** Texts of the demo, which hold no position, as if written for places all over the world. */
    @Test
    void takesHardlyAnyEverydayTextForAPosition() {
        List<String> texts = new ArrayList<>();
        for (Trip trip : PlansReader.read(Path.of("plans")).trips()) {
            texts.add(trip.story());
            for (Shot shot : trip.shots()) {
                texts.add(shot.name());
                texts.add(shot.notes());
                texts.add(shot.otherwise());
            }
            texts.addAll(trip.site().cautions());
            trip.gear().lenses().forEach(lens -> texts.add(lens.name()));
        }
        texts.removeIf(text -> text == null);
        Random random = new Random(7);
        int taken = 0;
        int places = 200;
        for (int i = 0; i < places; i++) {
            PositionText at = new PositionText(new Position(random.nextDouble() * 120 - 55, random.nextDouble() * 350 - 175));
            for (String text : texts) {
                taken += at.in(PlainText.forms(text)) == null ? 0 : 1;
            }
        }
        assertTrue(texts.size() > 30 && taken <= places * texts.size() / 1000, taken + " of " + places * texts.size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"[map](https&#58;//maps.example.test/abc)", "[map](https&colon;//maps.example.test/abc)",
        "[map][1]\n\n[1]: https&colon;&sol;&sol;maps.example.test/abc", "[map](&#x68;ttps://maps.example.test/abc)",
        "[map](https\\://maps.example.test/abc)",
        "<https://maps.example.test/abc>", "[map](https&amp;colon;//maps.example.test/abc)", "https://maps.example.test/abc",
        "HTTP://maps.example.test/abc",
        "maps.example.test/abc", "on maps.example.test/go/eu6abc--", "maps.example.test:8080/abc",
        "maps.example.test?id=abc", "maps.example.test#abc",
        "www.example.test", "maps&period;example&period;test&sol;abc"})
    void findsALinkInEveryDress(String text) {
        assertEquals(1, new Links(List.of()).in(text).size(), text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"f/2.8", "1/60 s at f/5.6", "e.g. ferns and/or moss", "i.e./e.g.", "plan.final.yaml", "photos/one.jpg", "![](one.jpg)",
        "10.5281/zenodo.123", "24-70 mm f/2.8-4.0", "6.9 mm f/1.8/2.2", "images.example.org", "8.5.2027/9.5.2027",
        "Wait... and/or shoot.", "#bluebells"})
    void takesNoOtherTextForALink(String text) {
        assertEquals(Set.of(), new Links(List.of()).in(text), text);
    }

    @Test
    void letsAReviewedLinkPassAsWrittenAndAsDecoded() {
        Links links = new Links(List.of("https://example.org/a%20b", "https://example.org/c"));
        assertEquals(Set.of(), links.in("https://example.org/a%20b and [x](https&#58;//example.org/c)"));
        assertEquals(Set.of("https://example.org/d"), links.in("https://example.org/a%20b https&colon;//example.org/d"));
    }
}
