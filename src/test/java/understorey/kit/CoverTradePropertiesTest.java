package understorey.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.bag;
import static understorey.Samples.fullFrame;
import static understorey.Samples.picture;
import static understorey.Samples.prime;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import understorey.Samples;
import understorey.plan.Bag;
import understorey.plan.Shot;
import understorey.plan.Slope;
import understorey.plan.Subject;
import understorey.plan.Viewpoint;
import understorey.reading.subject.SubjectCatalogue;

class CoverTradePropertiesTest {

    private static final Subject RAMSONS = SubjectCatalogue.builtIn().find("ramsons");
    private static final Bag BAG = Samples.with(bag(fullFrame(24), Samples.ZOOM, Samples.MACRO, prime(14), prime(400)),
            Samples.tube(20));

    @Property(tries = 500)
    void comparesOnlyWhatShowsGroundWhateverThePicture(@ForAll @DoubleRange(min = 0.01, max = 30) double heightM,
            @ForAll @DoubleRange(min = -90, max = 90) double tiltDeg, @ForAll @DoubleRange(min = 10, max = 600) double mm,
            @ForAll @DoubleRange(min = 0, max = 90) double slopeDeg, @ForAll @DoubleRange(min = 0, max = 360) double facing) {
        Shot shot = picture("Any").of(RAMSONS).from(new Viewpoint.Height(heightM)).tilt(tiltDeg).equivalent(mm).shot();
        Shot aimed = new Shot(shot.name(), null, shot.subject(), null, shot.viewpoint(), null, null,
                shot.focalEquivalentMm(), null, facing, List.of(), null, null, null, null, null, tiltDeg, null, null, null, null);
        CoverTrade trade = CoverTrade.of(WholeBag.fit(Intent.of(List.of(aimed), null).get(0), BAG), new Slope(slopeDeg, 90));
        if (trade == null) {
            return;
        }
        assertEquals(1, trade.choices().stream().filter(CoverChoice::planned).count());
        for (CoverChoice choice : trade.choices()) {
            assertTrue(choice.typical().ground() > 0 && choice.trunkScale() > 0 && choice.trunkScale() < 1);
            assertTrue(choice.typical().cover() >= 0 && choice.typical().cover() <= choice.thick().cover() + 1e-12);
            assertTrue(choice.depthM() >= 0 && choice.nearestM() > 0 && choice.typical().farthestM() < 1e9);
        }
        trade.reasons().forEach(reason -> assertFalse(reason.toString().matches(".*(NaN|Infinity).*"), reason::toString));
    }

    @Property(tries = 200)
    void aBankThatRisesAheadThinsTheFloorAsPlanned(@ForAll @DoubleRange(min = 1, max = 30) double slopeDeg) {
        Samples.Picture floor = picture("Floor").of(RAMSONS);
        ShotFit fit = WholeBag.fit(floor.intent(), BAG);
        double rising = CoverTrade.of(facing(fit, 0), new Slope(slopeDeg, 180)).planned().typical().cover();
        double falling = CoverTrade.of(facing(fit, 0), new Slope(Math.min(slopeDeg, 5), 0)).planned().typical().cover();
        double level = CoverTrade.of(fit, null).planned().typical().cover();
        assertTrue(rising < level && level < falling);
    }

    private static ShotFit facing(ShotFit fit, double facingDeg) {
        Shot shot = fit.intent().shot();
        Shot aimed = new Shot(shot.name(), shot.role(), shot.subject(), null, shot.viewpoint(), null, null, null, null,
                facingDeg, List.of(), null, null, null, null, null, null, null, null, null, null);
        return WholeBag.fit(Intent.of(List.of(aimed), null).get(0), BAG);
    }
}
