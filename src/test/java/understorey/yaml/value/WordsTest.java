package understorey.yaml.value;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.plan.Filter;
import understorey.plan.Foliage;
import understorey.plan.LightWish;
import understorey.plan.Season;
import understorey.plan.Subject;
import understorey.plan.Support;

class WordsTest {

    @Test
    void writesEachWordAsTheFormatDoes() {
        assertEquals(List.of("low-sun", "backlight", "sidelight", "frontlight", "overhead", "soft", "mist", "after-rain",
                "twilight"), Words.of(LightWish.values()));
        assertEquals(List.of("leafless", "bud-burst", "half-leaf", "full-leaf"), Words.of(Foliage.Stage.values()));
        assertEquals(List.of("in bud", "first flowers", "full flower", "fading", "over"), Words.of(Season.Stage.values()));
        assertEquals(List.of("tripod", "monopod", "beanbag", "ground plate"), Words.of(Support.Kind.values()));
        assertEquals(List.of("polariser", "neutral density", "step-up ring", "close-up lens", "extension tube"),
                Words.of(Filter.Kind.values()));
        assertEquals("blue-violet", Words.of(Subject.Reflectance.BLUE_VIOLET));
    }

    @Test
    void findsAWordAsWrittenOnly() {
        assertEquals(LightWish.LOW_SUN, Words.find(LightWish.values(), "low-sun"));
        assertNull(Words.find(LightWish.values(), "LOW_SUN"));
    }
}
