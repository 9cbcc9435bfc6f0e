package understorey.pages.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import understorey.advice.Advice;
import understorey.advice.ColourAdvice;
import understorey.advice.DirectionAdvice;
import understorey.advice.PolariserAdvice;
import understorey.light.PolariserEffect;
import understorey.light.SunDirection;
import understorey.light.WhiteBalance;
import understorey.optics.AngleOfView;
import understorey.optics.Projection;
import understorey.sky.SunAt;

/** What a reader is told of the light on a picture, for suns all over the sky and cameras of every tilt. */
class DirectionSentencesTest {

    private static final AngleOfView WIDE = AngleOfView.of(20, 36, 24);
    private final Set<String> told = new TreeSet<>();
    private final Set<Class<?>> kinds = new HashSet<>();

    @BeforeEach
    void tellsAll() throws IOException {
        Sentences sentences = Sentences.builtIn();
        for (double azimuthDeg = 0; azimuthDeg < 360; azimuthDeg += 12) {
            for (double altitudeDeg = -0.5; altitudeDeg < 90; altitudeDeg += 11.5) {
                for (double tiltDeg = -20; tiltDeg <= 80; tiltDeg += 20) {
                    for (double okta = 0; okta <= 8; okta += 2) {
                        tell(sentences, sun(azimuthDeg, altitudeDeg), Projection.of(90, tiltDeg, WIDE), okta);
                    }
                }
            }
        }
    }

    private void tell(Sentences sentences, SunAt sun, Projection camera, double okta) {
        SunDirection direction = SunDirection.of(sun, camera);
        for (List<Advice> reasons : List.of(direction.reasons(true, true), direction.reasons(false, true),
                direction.reasons(true, false), WhiteBalance.byMoon().reasons(),
                PolariserEffect.of(sun, camera, okta, 1.5).reasons(),
                WhiteBalance.of(sun.altitudeDeg(), WhiteBalance.Lit.SUN, okta, 0).reasons(),
                WhiteBalance.of(sun.altitudeDeg(), WhiteBalance.Lit.SUN_AND_SHADE, okta, 0).reasons(),
                WhiteBalance.of(sun.altitudeDeg(), WhiteBalance.Lit.SHADE, okta, 2.1).reasons())) {
            for (Advice reason : reasons) {
                kinds.add(reason.getClass());
                told.add(sentences.of(reason));
            }
        }
    }

    private static SunAt sun(double azimuthDeg, double altitudeDeg) {
        return new SunAt(LocalDate.of(2027, 5, 8).atTime(12, 0).atZone(ZoneOffset.UTC), azimuthDeg, altitudeDeg);
    }

    @Test
    void tellsEveryKindInAFinishedSentence() {
        Set<Class<?>> all = new HashSet<>();
        List.of(DirectionAdvice.class, PolariserAdvice.class, ColourAdvice.class)
                .forEach(topic -> all.addAll(AdviceSentencesTest.records(topic)));
        assertEquals(all, kinds);
        for (String sentence : told) {
            assertTrue(Character.isUpperCase(sentence.codePointAt(0)) && sentence.endsWith("."), sentence);
            assertFalse(sentence.contains("{") || sentence.contains("null") || sentence.contains("_")
                    || sentence.contains("−") || sentence.contains("Costs 0"), sentence);
        }
    }

    @Test
    void readsAsSomeoneWouldSayIt() {
        String nbsp = "\u00a0";
        assertTold("Sidelight: the sun is 78° to the right of the lens axis, 11° high.");
        assertTold("Front light: the sun is behind you, 11° high; watch your own shadow.");
        assertTold("The sun is in the frame (top left): hide it behind a stem, or use the flare. "
                + "Compose on the screen, never through an optical viewfinder.");
        assertTold("Start at 6500" + nbsp + "K: overcast.");
        assertTold("Costs 1½" + nbsp + "stops over the whole picture.");
    }

    private void assertTold(String sentence) {
        assertTrue(told.contains(sentence), sentence + " is not among " + told);
    }
}
