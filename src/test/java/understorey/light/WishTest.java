package understorey.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import understorey.advice.LightAdvice;
import understorey.light.illuminance.CanopyLight;
import understorey.plan.FieldGuide.Closing;
import understorey.plan.FieldGuide.Trigger;
import understorey.plan.LightWish;
import understorey.sky.Skyline;
import understorey.sky.SunAt;

/** Edges of the wishes: common practice, no source, as the documentation of {@link Wish} states them. */
class WishTest {

    /** A clear sky over a leafless wood, the sun in the east at that altitude. */
    private static Moment clear(double altitudeDeg) {
        return moment(altitudeDeg, altitudeDeg > -0.5, 0, 0, 0);
    }

    private static Moment moment(double altitudeDeg, boolean clear, double okta, double mist, double drops) {
        SunAt sun = new SunAt(LocalDate.of(2027, 5, 8).atTime(7, 0).atZone(ZoneOffset.UTC), 90, altitudeDeg);
        return new Moment(sun, clear, clear ? 0.3 : 0, altitudeDeg < -6 ? -5 : 9, clear ? 4 : 0, okta, mist, drops, 1, false, Double.NaN, 0, 1);
    }

    @ParameterizedTest
    @CsvSource({"-5,0,SunNotYetUp", "0,1,SunIsLow", "4,1,SunIsLow", "6,1,SunIsLow", "8,0.5,SunTooHigh", "11,0,SunTooHigh"})
    void takesLowSunForTheFirstSixDegrees(double altitudeDeg, double value, String kind) {
        Wish wish = Wish.of(LightWish.LOW_SUN, clear(altitudeDeg), null);
        assertEquals(value, wish.value(), 1e-9);
        assertEquals(kind, wish.limits().getClass().getSimpleName());
    }

    @Test
    void countsLittleOnALowSunBehindTheHill() {
        Wish wish = Wish.of(LightWish.LOW_SUN, moment(4, false, 0, 0, 0), null);
        assertEquals(0.2, wish.value(), 1e-9);
        assertInstanceOf(LightAdvice.SunBehindLand.class, wish.limits());
        assertInstanceOf(LightAdvice.SunBehindCloud.class, Wish.of(LightWish.LOW_SUN, moment(4, true, 7, 0, 0), null).limits());
    }

    /** The sun stands in the east: what a picture meets by the way it faces. */
    @ParameterizedTest
    @CsvSource({"90,1,0,0", "120,1,0.152,0", "135,0.606,0.606,0", "180,0,1,0", "0,0,1,0", "270,0,0,1", "225,0,0.606,0.606", "110,1,0,0"})
    void tellsFrontSideAndBackByTheWayThePictureFaces(double facingDeg, double back, double side, double front) {
        assertEquals(back, Wish.of(LightWish.BACKLIGHT, clear(20), facingDeg).value(), 0.001);
        assertEquals(side, Wish.of(LightWish.SIDELIGHT, clear(20), facingDeg).value(), 0.001);
        assertEquals(front, Wish.of(LightWish.FRONTLIGHT, clear(20), facingDeg).value(), 0.001);
    }

    @Test
    void turnsAPictureThatFacesNowhere() {
        Wish back = Wish.of(LightWish.BACKLIGHT, clear(20), null);
        assertEquals(1, back.value(), 0);
        assertEquals(new LightAdvice.FaceIntoSun(90), back.because());
        Wish front = Wish.of(LightWish.FRONTLIGHT, clear(20), null);
        assertEquals(new LightAdvice.FaceAwayFromSun(270), front.because());
        assertEquals(0, Wish.of(LightWish.SIDELIGHT, clear(70), null).value(), 0);
        assertEquals(0, Wish.of(LightWish.BACKLIGHT, moment(20, false, 0, 0, 0), 90.0).value(), 0);
    }

    @Test
    void isSoftWithoutSunAndHarshInFlecks() {
        assertEquals(0, Wish.of(LightWish.SOFT, clear(40), null).value(), 0);
        assertInstanceOf(LightAdvice.Harsh.class, Wish.of(LightWish.SOFT, clear(40), null).limits());
        assertInstanceOf(LightAdvice.SoftWithoutSun.class, Wish.of(LightWish.SOFT, moment(10, false, 0, 0, 0), null).limits());
        assertInstanceOf(LightAdvice.SoftUnderCloud.class, Wish.of(LightWish.SOFT, moment(40, true, 8, 0, 0), null).limits());
        assertEquals(1, Wish.of(LightWish.SOFT, moment(40, true, 8, 0, 0), null).value(), 0);
    }

    /** Half-covered sky is half sun: chances of reference/sun-line.csv for a sun at 30° in contrast that is harsh throughout. */
    @ParameterizedTest
    @CsvSource({"1,0.92,POOR,Harsh", "4,0.57,FAIR,SunComesOut", "6,0.29,GOOD,SoftUnderCloud", "8,0,GOOD,SoftUnderCloud"})
    void isSoftWhileACloudHidesTheSun(double okta, double chance, Outlook.Grade grade, String kind) {
        Wish soft = Wish.of(LightWish.SOFT, moment(30, true, okta, 0, 0), null);
        assertEquals(1 - chance, soft.value(), 0.006);
        assertEquals(grade, Outlook.Grade.of(soft.value()));
        assertEquals(kind, soft.because().getClass().getSimpleName());
        assertEquals(chance, Wish.of(LightWish.FRONTLIGHT, moment(30, true, okta, 0, 0), 270.0).value(), 0.006);
    }

    /** One cloud before the sun is one cloud for all wishes. */
    @Test
    void countsWhatSpoilsSeveralWishesOnce() {
        Moment scattered = moment(5, true, 3, 0, 0);
        assertEquals(0.51, new Wishes(List.of(LightWish.LOW_SUN, LightWish.BACKLIGHT), 90.0, null).quality(scattered), 0.006);
        assertEquals(0.51 * 0.49, new Wishes(List.of(LightWish.LOW_SUN, LightWish.SOFT), 90.0, null).quality(scattered), 0.006);
    }

    /** An opening that is not known may be there: fair, not good and not never (common practice, no source). */
    @Test
    void grantsALowSunFairlyWhereTheWoodMayOpen() {
        Moment closed = clear(5);
        Moment low = new Moment(closed.sun(), true, 0, 9, 0, 0, 0, 0, 1, true, Double.NaN, 0, 1);
        for (LightWish wish : List.of(LightWish.LOW_SUN, LightWish.BACKLIGHT)) {
            Wish light = Wish.of(wish, low, 90.0);
            assertEquals(Outlook.Grade.FAIR, Outlook.Grade.of(light.value()));
            assertEquals(new LightAdvice.NeedsOpening(90), light.because());
        }
        assertEquals(Outlook.Grade.FAIR, Outlook.Grade.of(new Wishes(List.of(LightWish.LOW_SUN, LightWish.BACKLIGHT), 90.0, null).quality(low)));
    }

    @ParameterizedTest
    @CsvSource({"-10,0", "-7,0.5", "-5,1", "-3,1", "-1.5,0.5", "1,0"})
    void isTwilightAroundTheEdgeOfTheCivilOne(double altitudeDeg, double value) {
        assertEquals(value, Wish.of(LightWish.TWILIGHT, clear(altitudeDeg), null).value(), 1e-9);
    }

    @Test
    void takesMistAsItIsAndDropsUntilTheyHaveDried() {
        assertEquals(0.6, Wish.of(LightWish.MIST, moment(2, false, 1, 0.6, 0), null).value(), 0);
        assertEquals(0.3, Wish.of(LightWish.AFTER_RAIN, moment(2, false, 1, 0, 1e-9), null).value(), 1e-6);
        assertEquals(0.6, Wish.of(LightWish.AFTER_RAIN, moment(2, false, 1, 0, 3 / 7.0), null).value(), 1e-9);
        assertEquals(1, Wish.of(LightWish.AFTER_RAIN, moment(2, false, 1, 0, 1), null).value(), 0);
        assertInstanceOf(LightAdvice.DropsGone.class, Wish.of(LightWish.AFTER_RAIN, clear(20), null).limits());
    }

    /** Below about EV 5 colours and focusing fade; a picture of twilight is meant to be dim (common practice, no source). */
    @Test
    void fadesInTheDimUnlessTwilightIsWished() {
        Wishes mist = new Wishes(List.of(LightWish.MIST), null, null);
        assertEquals(0, mist.quality(moment(-8, false, 1, 1, 0)));
        Moment dim = new Moment(clear(-3).sun(), false, 0, 2.5, 0, 1, 1, 0, 1, false, Double.NaN, 0, 1);
        assertEquals(0.5, mist.quality(dim), 1e-9);
        assertInstanceOf(LightAdvice.TooDim.class, mist.because(dim).get(0));
        assertEquals(1, new Wishes(List.of(LightWish.MIST, LightWish.TWILIGHT), null, null).quality(dim), 1e-9);
    }

    @Property
    void staysBetweenZeroAndOneAndNeverGainsByCloudWhatWantsSun(@ForAll LightWish wish,
            @ForAll @DoubleRange(min = -20, max = 90) double altitudeDeg, @ForAll boolean up,
            @ForAll @DoubleRange(min = 0, max = 8) double okta, @ForAll @DoubleRange(min = 0, max = 359) double facingDeg) {
        Moment thin = moment(altitudeDeg, up && altitudeDeg > 0, okta, 0.5, 0.5);
        Moment thick = moment(altitudeDeg, up && altitudeDeg > 0, Math.min(8, okta + 1), 0.5, 0.5);
        double value = Wish.of(wish, thin, facingDeg).value();
        assertTrue(value >= 0 && value <= 1);
        assertTrue(!wish.needsSun() || Wish.of(wish, thick, facingDeg).value() <= value + 1e-12);
    }

    /** Nothing that wants the sun is even fair under a closed cloud, and nothing is soft in the sun of the zenith. */
    @Test
    void isPoorWithoutSunAndHarshInAHighOne() {
        for (LightWish wish : Arrays.stream(LightWish.values()).filter(LightWish::needsSun).toList()) {
            for (double altitude : new double[] {2, 20, 60}) {
                assertEquals(0, Wish.of(wish, moment(altitude, true, 8, 0, 0), 90.0).value(), 0);
                assertEquals(0, Wish.of(wish, moment(altitude, false, 8, 0, 0), 90.0).value(), 0);
            }
        }
        SunAt zenith = new SunAt(LocalDate.of(2027, 4, 16).atTime(12, 0).atZone(ZoneOffset.UTC), 180, 89);
        LightAt open = LightAt.of(zenith, Standpoint.of(Skyline.ring(0), CanopyLight.NONE, LocalDate.of(2027, 4, 16)));
        assertTrue(open.contrastStops(0) > 2.5, "" + open.contrastStops(0));
        Moment noon = new Moment(zenith, true, 1, 15, open.contrastStops(0), 0, 0, 0, 1, false, Double.NaN, 0, 1);
        assertInstanceOf(LightAdvice.Harsh.class, Wish.of(LightWish.SOFT, noon, null).limits());
    }

    @Test
    void lowSunThatNoLeafLetsThroughIsNone() {
        Moment closed = new Moment(clear(3).sun(), true, 0, 6, 0, 0, 0, 0, 1, false, Double.NaN, 0, 1);
        assertEquals(0.2, Wish.of(LightWish.LOW_SUN, closed, null).value(), 1e-9);
        assertInstanceOf(LightAdvice.FlecksTooFew.class, Wish.of(LightWish.LOW_SUN, closed, null).limits());
    }

    /** Moments of every kind, from night to a high sun, in and out of it, under each sky and with each sureness of mist and drops. */
    private static List<Moment> everyKind() {
        List<Moment> moments = new ArrayList<>();
        for (double altitude : new double[] {-10, -6, -4, -2, 1, 5, 8, 20, 50, 70}) {
            for (double okta : new double[] {0, 3, 5, 8}) {
                for (double likely : new double[] {0, 0.3, 1, Double.NaN}) {
                    Moment inSun = moment(altitude, true, okta, likely, likely);
                    moments.add(inSun);
                    moments.add(moment(altitude, false, okta, likely, likely));
                    moments.add(new Moment(inSun.sun(), true, 0, 9, 0, okta, likely, likely, 0.5, false, Double.NaN, 0, 1));
                    moments.add(new Moment(inSun.sun(), true, 0, 9, 0, okta, likely, likely, 1, true, Double.NaN, 0, 1));
                    moments.add(new Moment(inSun.sun(), true, 1, 9, 0, okta, likely, likely, 1, false, Double.NaN, 2, 1));
                    moments.add(new Moment(inSun.sun(), false, 0, 2, 0, okta, likely, likely, 1, false, Double.NaN, 0, 1));
                }
            }
        }
        return moments;
    }

    /** Flowers that close by every sign. */
    private static Stream<Wish> flowersEverywhere() {
        OpenFlowers flowers = new OpenFlowers(new Closing(Set.of(Trigger.values()), null, null, "M", "from memory"));
        return everyKind().stream().flatMap(moment -> Stream.of(-5.0, 20.0).map(temperature -> flowers.at(new Moment(moment.sun(), true, 0, 9, 0,
                moment.okta(), 0, 0, 1, false, temperature, moment.okta() == 3 ? 1 : 0, 1), false)));
    }

    private static List<Wish> judgedEverywhere(LightWish wish) {
        return everyKind().stream().flatMap(moment -> Stream.of(null, 90.0, 180.0, 270.0)
                .map(facing -> wish == LightWish.TWILIGHT ? Wish.of(wish, moment, facing)
                : Wish.of(wish, moment, facing).inRain(moment, wish).brightEnough(moment)))
                .toList();
    }

    @ParameterizedTest
    @EnumSource
    void grantsEveryWishAtOneMomentAndRefusesItAtAnother(LightWish wish) {
        List<Wish> judged = judgedEverywhere(wish);
        assertTrue(judged.stream().anyMatch(light -> light.value() == 1), "never as wished");
        assertTrue(judged.stream().anyMatch(light -> light.value() == 0), "never far from it");
        assertTrue(judged.stream().filter(light -> light.value() < 1).noneMatch(light -> light.limits().equals(light.there())),
                "the light as wished spoils it");
    }

    @Test
    void hasNoReasonThatNoWishEverGives() {
        Set<Class<?>> given = new HashSet<>();
        for (LightWish wish : LightWish.values()) {
            judgedEverywhere(wish).forEach(light -> given.addAll(List.of(light.there().getClass(), light.limits().getClass())));
        }
        flowersEverywhere().forEach(light -> given.addAll(List.of(light.there().getClass(), light.limits().getClass())));
        assertEquals(Set.of(LightAdvice.class.getPermittedSubclasses()), given);
    }
}
