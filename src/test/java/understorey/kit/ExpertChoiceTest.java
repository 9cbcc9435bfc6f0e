package understorey.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.BEANBAG;
import static understorey.Samples.LEGS;
import static understorey.Samples.MACRO;
import static understorey.Samples.ZOOM;
import static understorey.Samples.bag;
import static understorey.Samples.fullFrame;
import static understorey.Samples.kinds;
import static understorey.Samples.phone;
import static understorey.Samples.picture;
import static understorey.Samples.with;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import understorey.Samples;
import understorey.advice.Advice;
import understorey.advice.FitAdvice.BackgroundWide;
import understorey.advice.FitAdvice.FocalReached;
import understorey.advice.FitAdvice.FocalShort;
import understorey.advice.FitAdvice.FramedFrom;
import understorey.advice.FitAdvice.MagnificationShort;
import understorey.advice.FitAdvice.NoMacro;
import understorey.advice.FitAdvice.ProposedLonger;
import understorey.advice.FitAdvice.ProposedWayIn;
import understorey.advice.FitAdvice.ProposedWider;
import understorey.plan.Bag;
import understorey.plan.Lens;
import understorey.plan.Role;
import understorey.plan.Viewpoint;

/** Which lens an expert takes from a bag for a picture, and how far it serves. All of it is common practice, no source. */
class ExpertChoiceTest {

    private static final Lens LONG = new Lens("Long zoom", "A", null, 70, 200, 4, 4, 32.0, 1.0, 0.27, 72.0, 0, 840.0);
    private static final Lens TELE = new Lens("Tele zoom", "A", null, 100, 400, 5, 6.3, 32.0, 0.98, 0.3, 77.0, 0, 1400.0);
    private static final Lens WIDE = new Lens("Wide prime", "A", null, 20, 20, 2.8, 2.8, 22.0, 0.2, 0.17, 62.0, 0, 320.0);

    private static final Bag FULL = with(bag(fullFrame(24), ZOOM, LONG, WIDE, MACRO), LEGS, BEANBAG);
    private static final Bag ONE_ZOOM = with(bag(fullFrame(24), ZOOM), LEGS);
    private static final Bag PHONE = bag(phone());
    private static final Bag WIDE_ONLY = with(bag(fullFrame(24), WIDE), LEGS);
    private static final Bag LONG_ONLY = with(bag(fullFrame(24), LONG), LEGS);
    private static final Bag TELE_AND_MACRO = with(bag(fullFrame(24), TELE, MACRO), LEGS);

    private static Samples.Picture carpet() {
        return picture("Carpet").role(Role.OPENING);
    }

    private static Samples.Picture dense() {
        return picture("Dense carpet").role(Role.EXTRA).equivalent(135).sharp(14, 45);
    }

    private static Samples.Picture wayIn() {
        return picture("Way in").role(Role.APPROACH);
    }

    private static Samples.Picture dominant() {
        return wayIn().from(Viewpoint.Stance.GROUND);
    }

    private static Samples.Picture plant() {
        return picture("Plant").role(Role.DETAIL);
    }

    private static Samples.Picture head() {
        return picture("Head").role(Role.CLOSING);
    }

    static Stream<Arguments> decisions() {
        return Stream.of(
                decision("a normal lens for the carpet", FULL, carpet(), "Short zoom", Verdict.FITS, FocalReached.class),
                decision("28 mm from the knees for the way in", FULL, wayIn(), "Short zoom", Verdict.FITS, FocalReached.class),
                decision("wide and low for the dominant flower", FULL, dominant(), "Wide prime", Verdict.FITS, FocalReached.class),
                decision("the long zoom for a dense carpet", FULL, dense(), "Long zoom", Verdict.FITS, FocalReached.class),
                decision("the macro lens for one head", FULL, head(), "Close-up prime", Verdict.FITS, FramedFrom.class),
                decision("the macro lens, not 400 mm, for one head", TELE_AND_MACRO, head(), "Close-up prime", Verdict.FITS, FramedFrom.class),
                decision("one zoom takes the carpet", ONE_ZOOM, carpet(), "Short zoom", Verdict.FITS, FocalReached.class),
                decision("one zoom takes a head, with softer edges", ONE_ZOOM, head(), "Short zoom", Verdict.FITS, NoMacro.class),
                decision("one zoom crops for a dense carpet", ONE_ZOOM, dense(), "Short zoom", Verdict.COMPROMISE, FocalShort.class),
                decision("a phone thins the carpet", PHONE, carpet(), "main", Verdict.COMPROMISE, ProposedWider.class),
                decision("a phone thins a carpet framed 2 m wide", PHONE, carpet().wide(2), "main", Verdict.COMPROMISE, ProposedWider.class),
                decision("a phone's main camera is made for the way in", PHONE, wayIn(), "main", Verdict.FITS, ProposedWayIn.class),
                decision("a phone shows all that grows behind a plant", PHONE, plant(), "main", Verdict.COMPROMISE, BackgroundWide.class),
                decision("a phone crops its main camera for a head, and does not shade it with the wide one", PHONE, head(), "main",
                        Verdict.COMPROMISE, MagnificationShort.class),
                decision("a phone has too few pixels for 135 mm", PHONE, dense(), "main", Verdict.CANNOT, FocalShort.class),
                decision("20 mm thins the carpet", WIDE_ONLY, carpet(), "Wide prime", Verdict.COMPROMISE, ProposedWider.class),
                decision("20 mm shows all that grows behind a plant", WIDE_ONLY, plant(), "Wide prime", Verdict.COMPROMISE, BackgroundWide.class),
                decision("20 mm crops for a head", WIDE_ONLY, head(), "Wide prime", Verdict.COMPROMISE, MagnificationShort.class),
                decision("20 mm cannot be cropped to 135 mm", WIDE_ONLY, dense(), "Wide prime", Verdict.CANNOT, FocalShort.class),
                decision("70 mm still takes the carpet, denser", LONG_ONLY, carpet(), "Long zoom", Verdict.FITS, ProposedLonger.class),
                decision("70 mm has no room for the way in", LONG_ONLY, wayIn(), "Long zoom", Verdict.COMPROMISE, ProposedLonger.class),
                decision("100 mm makes a plant stand out", LONG_ONLY, plant(), "Long zoom", Verdict.FITS, FramedFrom.class));
    }

    private static Arguments decision(String why, Bag bag, Samples.Picture picture, String lens, Verdict verdict,
                                      Class<? extends Advice> reason) {
        return Arguments.of(why, bag, picture, lens, verdict, reason);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("decisions")
    void decides(String why, Bag bag, Samples.Picture picture, String lens, Verdict verdict, Class<? extends Advice> reason) {
        LensFit best = SmallestBag.of(bag, List.of(), List.of(picture.intent())).fits().get(0).best();
        assertEquals(lens, best.camera().lens().name());
        assertEquals(verdict, best.verdict(), () -> best.reasons().toString());
        assertTrue(kinds(best.reasons()).contains(reason), () -> best.reasons().toString());
    }
}
