package understorey.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.ZOOM;
import static understorey.Samples.bag;
import static understorey.Samples.fullFrame;
import static understorey.Samples.picture;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.optics.FlowerLayer;
import understorey.optics.GroundView;
import understorey.plan.Lens;
import understorey.plan.Role;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.Slope;
import understorey.plan.Spot;
import understorey.plan.Viewpoint;
import understorey.reading.subject.SubjectCatalogue;

class TiltTest {

    private static final Lens ANY = new Lens("Any", "A", null, 14, 300, 4, 4, 22.0, 0.1, null, null, 0, null);

    private static LensFit best(Samples.Picture picture) {
        return WholeBag.fit(picture.intent(), bag(fullFrame(24), ZOOM)).best();
    }

    private static LensFit view(double nearM, double farM, double heightM, double focalMm, double riseDeg, boolean upright) {
        Samples.Picture picture = picture("a").equivalent(focalMm).sharp(nearM, farM).from(new Viewpoint.Height(heightM));
        Shot shot = (upright ? picture.upright() : picture).shot();
        Shot facing = new Shot(shot.name(), null, shot.subject(), "Bank", shot.viewpoint(), shot.orientation(), shot.sharp(),
                focalMm, null, 0.0, List.of(), null, null, null, null, null, null, null, null, null, null);
        Site site = Samples.wood(List.of(new Spot("Bank", null, null, null, null,
                new Slope(Math.abs(riseDeg), riseDeg > 0 ? 180 : 0), null, null, null)), List.of(), null, null);
        return WholeBag.fit(Intent.of(List.of(facing), site).get(0), bag(fullFrame(24), ANY)).best();
    }

    /** Height in the frame, −1 to 1, of what lies so far below the horizontal: the tangent against that of half the frame. */
    private static double rowOf(LensFit fit, double belowDeg) {
        return Math.tan(Math.toRadians(fit.tiltDeg() - belowDeg)) / Math.tan(Math.toRadians(fit.view().verticalDeg() / 2));
    }

    /** From 1.5 m the ground 40 m away lies asin(1.5 / 40) = 2.149° below the horizontal; the upper third is row 1/3. */
    @Test
    void putsTheFarEdgeOfTheCarpetOnTheUpperThird() {
        assertEquals(1 / 3.0, rowOf(best(picture("a").equivalent(50).sharp(2.5, 40)), 2.149), 1e-4);
        assertEquals(1 / 3.0, rowOf(best(picture("a").equivalent(28).sharp(2.5, 40).upright()), 2.149), 1e-4);
        assertEquals(1 / 3.0, rowOf(best(picture("a").equivalent(24).sharp(2.5, Double.POSITIVE_INFINITY)), 0), 1e-9,
                "the horizon");
    }

    /** On a rise of 30° the lens is 1.5·cos 30° off the ground, which at 10 m lies asin(1.299 / 10) = 7.464° under the line of the slope. */
    @Test
    void followsTheSlope() {
        for (double riseDeg : new double[] {30, -30}) {
            assertEquals(1 / 3.0, rowOf(view(2.6, 10, 1.5, 50, riseDeg, false), 7.464 - riseDeg), 1e-4);
        }
    }

    @Test
    void doesNotJumpWithTheNearLimit() {
        LensFit far = best(picture("a").equivalent(50).sharp(2.13, 40));
        LensFit near = best(picture("a").equivalent(50).sharp(2.12, 40));
        assertEquals(far.tiltDeg(), near.tiltDeg(), 0.05);
        assertTrue(best(picture("a").equivalent(50).sharp(1, 40)).tiltDeg() < 10, "looks at the view, not at one's feet");
    }

    /** One part in a hundred of any input turns the camera by no more than a degree; and it sees ground. */
    @Property
    void turnsLittleForALittleMoreOfAnything(@ForAll @DoubleRange(min = 0.3, max = 5) double nearM,
                                             @ForAll @DoubleRange(min = 1.1, max = 40) double times,
                                             @ForAll @DoubleRange(min = 0.1, max = 2) double heightM,
                                             @ForAll @DoubleRange(min = 14, max = 290) double focalMm,
                                             @ForAll @DoubleRange(min = -40, max = 40) double riseDeg,
                                             @ForAll boolean upright) {
        double farM = nearM * times;
        LensFit fit = view(nearM, farM, heightM, focalMm, riseDeg, upright);
        double more = 1.01;
        for (LensFit other : new LensFit[] {view(nearM * more, farM, heightM, focalMm, riseDeg, upright),
            view(nearM, farM * more, heightM, focalMm, riseDeg, upright),
            view(nearM, farM, heightM * more, focalMm, riseDeg, upright),
            view(nearM, farM, heightM, focalMm * more, riseDeg, upright)}) {
            assertEquals(fit.tiltDeg(), other.tiltDeg(), 1, () -> "from " + fit.tiltDeg());
        }
        assertEquals(fit.tiltDeg(), view(nearM, farM, heightM, focalMm, riseDeg + 0.4, upright).tiltDeg(), 1);
        assertTrue(fit.tiltDeg() + riseDeg <= 45 + 1e-9, () -> "down at " + fit.tiltDeg());
        assertTrue(new GroundView(heightM, fit.tiltDeg(), riseDeg, fit.view(), 0).showsGround(FlowerLayer.FAR_M));
    }

    @Test
    void keepsTheTiltThatIsWritten() {
        assertEquals(8, best(picture("a").equivalent(50).sharp(2.5, 40).tilt(8)).tiltDeg());
    }

    @Test
    void aimsAFramedPictureAtTheFlowersOrTheMiddleOfThePlant() {
        double plantM = Samples.ramsons().heightM();
        LensFit level = best(picture("a").wide(0.7 * plantM).from(new Viewpoint.Height(plantM)));
        assertEquals(0, level.tiltDeg(), 1e-9);
        LensFit thirds = best(picture("a").wide(1.2 * plantM).from(new Viewpoint.Height(plantM)));
        assertEquals(thirds.frameHeightM() / 6, thirds.distanceM() * Math.sin(Math.toRadians(thirds.tiltDeg())), 1e-9,
                "the flowers on the upper third");
        LensFit above = best(picture("a").wide(3));
        double middleM = Samples.ramsons().heightM() / 2;
        assertEquals(above.heightM() - middleM,
                above.distanceM() * Math.sin(Math.toRadians(above.tiltDeg())), 1e-9);
    }

    /** A frame a little wider lets the flowers rise a little: no more than a degree for one part in a hundred. */
    @Property
    void aimsEvenlyWithTheFrame(@ForAll @DoubleRange(min = 0.1, max = 3) double widthM) {
        Viewpoint low = new Viewpoint.Height(Samples.ramsons().heightM());
        assertEquals(best(picture("a").wide(widthM).from(low)).tiltDeg(),
                best(picture("a").wide(widthM * 1.01).from(low)).tiltDeg(), 1);
    }

    /** A standing carpet is seen at 0 to 25° down with any lens from 24 to 200 mm: common practice, no source. */
    @Property
    void looksDownLittleOnAStandingCarpet(@ForAll @DoubleRange(min = 2, max = 5) double nearM,
                                          @ForAll @DoubleRange(min = 10, max = 80) double farM,
                                          @ForAll @DoubleRange(min = 24, max = 200) double focalMm, @ForAll boolean upright) {
        double deg = view(nearM, farM, 1.5, focalMm, 0, upright).tiltDeg();
        assertTrue(deg >= 0 && deg <= 25, () -> deg + "°");
    }

    /**
     * A camera closer to a framed subject than it is high would have to look at the photographer's feet. It comes down
     * instead: to 25° where the stance is left open, to 45° where it is given. Common practice, no source.
     */
    @Property
    void comesDownToAFramedSubject(@ForAll @DoubleRange(min = 0.1, max = 5) double widthM,
                                   @ForAll @DoubleRange(min = 14, max = 290) double focalMm,
                                   @ForAll Viewpoint.Stance stance, @ForAll boolean open) {
        LensFit fit = framed(widthM, focalMm, open ? null : stance);
        assertTrue(Math.abs(fit.tiltDeg()) <= (open ? 25 : 45) + 1e-9, () -> fit.tiltDeg() + "° from " + fit.heightM());
        for (LensFit other : new LensFit[] {framed(widthM * 1.01, focalMm, open ? null : stance),
            framed(widthM, focalMm * 1.01, open ? null : stance)}) {
            assertEquals(fit.tiltDeg(), other.tiltDeg(), 1);
            assertEquals(fit.heightM(), other.heightM(), 0.05);
        }
    }

    private static LensFit framed(double widthM, double focalMm, Viewpoint.Stance stance) {
        Lens lens = new Lens("Prime", "A", null, focalMm, focalMm, 4, 4, 22.0, 0.1 + 2 * focalMm / 1000, null, null, 0, null);
        return WholeBag.fit(picture("a").role(Role.OPENING).wide(widthM).from(stance).intent(), bag(fullFrame(24), lens)).best();
    }

    /** A carpet 2 m wide, taken with a phone's main camera: from the knees, not 70° down from standing. */
    @Test
    void kneelsWithAPhoneForANarrowCarpet() {
        LensFit fit = WholeBag.fit(picture("a").role(Role.OPENING).wide(2).intent(), bag(Samples.phone())).best();
        assertEquals(25, fit.tiltDeg(), 0.5);
        assertEquals(0.8, fit.heightM(), 0.1);
    }

    @Test
    void missesTheGroundOnlyWhereTheTiltIsWrittenSo() {
        Samples.Picture carpet = picture("a").of(SubjectCatalogue.builtIn().find("ramsons")).role(Role.OPENING).equivalent(50).sharp(2.5, 40);
        assertFalse(best(carpet).missesTheGround());
        assertTrue(best(carpet.tilt(-20)).missesTheGround());
        assertFalse(best(picture("a").equivalent(50).sharp(2.5, 40).tilt(-20)).missesTheGround(), "no carpet");
    }
}
