package understorey.pages.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import understorey.advice.Advice;
import understorey.advice.ApertureAdvice;
import understorey.advice.DepthAdvice;
import understorey.advice.DirectionAdvice;
import understorey.advice.LightAdvice;
import understorey.advice.MotionAdvice;
import understorey.advice.PhoneAdvice;
import understorey.advice.ShutterAdvice;
import understorey.advice.ToneAdvice;
import understorey.brief.Brief;
import understorey.brief.TimedShot;
import understorey.pages.Briefs;

/** The four sentences beside a picture say four things. */
class SaidOfShotTest {

    private static final int BESIDE = 4;
    private static final Predicate<Advice> SIDE = advice -> advice instanceof DirectionAdvice.SunAhead || advice instanceof DirectionAdvice.SunBeside
            || advice instanceof DirectionAdvice.SunBehindYou || advice instanceof LightAdvice.AheadAsWished
            || advice instanceof LightAdvice.AsideAsWished || advice instanceof LightAdvice.BehindYouAsWished
            || advice instanceof LightAdvice.SunOffTheSideWished;
    private static final Predicate<Advice> SETTINGS = advice -> advice instanceof ApertureAdvice || advice instanceof MotionAdvice
            || advice instanceof DepthAdvice || advice instanceof ToneAdvice || advice instanceof ShutterAdvice
            || advice instanceof PhoneAdvice;

    @Test
    void theSideOfTheSunIsSaidOnce() {
        int sides = 0;
        for (Brief brief : Briefs.all()) {
            for (TimedShot shot : brief.timed()) {
                long said = SaidOfShot.inOrder(brief, shot).stream().filter(SIDE).count();
                assertTrue(said <= 1, shot.intent().shot().name());
                sides += (int) said;
            }
        }
        assertTrue(sides > 5, sides + " sides");
    }

    @Test
    void whatSpoilsAPictureComesFirstAndAReasonForItsSettingsBeside() {
        Set<Class<?>> first = new HashSet<>();
        for (Brief brief : Briefs.all()) {
            for (TimedShot shot : brief.timed()) {
                List<Advice> said = SaidOfShot.inOrder(brief, shot);
                boolean objections = said.stream().anyMatch(SaidOfShotTest::objects);
                if (objections) {
                    assertTrue(objects(said.get(0)), said.toString());
                    first.add(said.get(0).getClass());
                } else if (shot.settings() != null) {
                    assertTrue(said.stream().limit(BESIDE).anyMatch(SETTINGS), said.toString());
                }
            }
        }
        assertTrue(first.size() > 2, first.toString());
    }

    @Test
    void theSunInTheFrameIsSaidBesideThePictureUnlessMoreSpoilsIt() {
        int flares = 0;
        for (Brief brief : Briefs.all()) {
            for (TimedShot shot : brief.timed()) {
                List<Advice> said = SaidOfShot.inOrder(brief, shot);
                if (shot.sunlight() != null && said.stream().noneMatch(SaidOfShotTest::objects)) {
                    List<Advice> sun = shot.sunlight().reasons().stream().filter(DirectionAdvice.SunInFrame.class::isInstance).toList();
                    assertEquals(sun, said.stream().limit(1).filter(DirectionAdvice.SunInFrame.class::isInstance).toList());
                    flares += sun.size();
                }
            }
        }
        assertTrue(flares > 0, "the sun is in no frame");
    }

    private static boolean objects(Advice advice) {
        return advice.severity() != Advice.Severity.NOTE;
    }
}
