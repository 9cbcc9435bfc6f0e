package understorey.scene.sketch;

import java.time.ZonedDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import understorey.Samples;
import understorey.kit.Intent;
import understorey.kit.LensFit;
import understorey.kit.WholeBag;
import understorey.plan.Bag;
import understorey.plan.Canopy;
import understorey.plan.Compose;
import understorey.plan.Foliage;
import understorey.plan.Role;
import understorey.plan.Shot;
import understorey.plan.Slope;
import understorey.plan.Subject;
import understorey.plan.Viewpoint;
import understorey.reading.subject.SubjectCatalogue;
import understorey.sky.SunAt;

/** Pictures ready to be drawn: a full-frame body, primes, a close-up lens. */
public final class Setups {

    private static final Bag BAG = Samples.with(Samples.bag(Samples.fullFrame(24), Samples.prime(20), Samples.prime(50),
            Samples.prime(135), Samples.MACRO), Samples.TALL_LEGS, Samples.BEANBAG);
    static final Canopy WOOD = new Canopy(Canopy.Trees.DECIDUOUS, Foliage.Stage.LEAFLESS, 20.0);

    private Setups() {
    }

    /** A picture that faces east. */
    static LensFit fit(Samples.Picture picture) {
        return fit(picture, null);
    }

    private static LensFit fit(Samples.Picture picture, Compose compose) {
        Shot shot = picture.shot();
        Shot facing = new Shot(shot.name(), shot.role(), shot.subject(), shot.spot(), shot.viewpoint(), shot.orientation(),
                shot.sharp(), shot.focalEquivalentMm(), shot.frame(), 90.0, List.of(), null, null, null, null, null,
                shot.tiltDeg(), null, null, null, compose);
        return WholeBag.fit(Intent.of(List.of(facing), null).get(0), BAG).best();
    }

    /** Sharp from half the distance framed to twice it; null where no lens takes it. */
    public static Setup of(Samples.Picture picture, Slope slope, Canopy canopy, SunAt sun) {
        LensFit fit = fit(picture);
        return fit == null ? null : new Setup(fit, 11, 0.5 * fit.distanceM(), 2 * fit.distanceM(), slope, canopy,
                null, sun, Air.CLEAR, Stage.FULL, around(canopy));
    }

    /** Leaves by the stage in words. */
    static Surroundings around(Canopy canopy) {
        return new Surroundings(canopy != null && canopy.foliage() instanceof Foliage.Stage stage ? stage.ordinal() / 3.0 : 1, null);
    }

    /** On open ground. */
    static Setup composed(Samples.Picture picture, Compose compose) {
        LensFit fit = fit(picture, compose);
        return new Setup(fit, 11, 0.5 * fit.distanceM(), 2 * fit.distanceM(), null, null, null, null, Air.CLEAR, Stage.FULL, Surroundings.BARE);
    }

    /** Every subject of the catalogue wide, low and close, under the trees that it grows below; without those that no lens takes. */
    public static Map<String, Setup> everySubject() {
        Map<String, Setup> setups = new LinkedHashMap<>();
        for (Subject subject : SubjectCatalogue.builtIn().all()) {
            double high = subject.heightHighM() == null ? 0.3 : subject.heightHighM();
            Canopy canopy = subject.guide() != null && subject.guide().setting().trees() == null ? null
                    : new Canopy(subject.guide().setting().trees(), Foliage.Stage.HALF_LEAF, 20.0);
            setups.put(subject.name() + ", wide", of(picture(subject).from(new Viewpoint.Height(high + 1.2)).equivalent(50).tilt(10).sharp(2, 20), null, canopy, null));
            setups.put(subject.name() + ", low", of(picture(subject).from(new Viewpoint.Height(0.75 * high)).equivalent(20).tilt(-6).sharp(0.4, 4),
                    null, canopy, sun(90, 14)));
            setups.put(subject.name() + ", close", of(picture(subject).role(Role.CLOSING), null, canopy, null));
        }
        setups.values().removeIf(Objects::isNull);
        return setups;
    }

    private static Samples.Picture picture(Subject subject) {
        return Samples.picture(subject.name()).of(subject);
    }

    public static Setup inTheWood(Samples.Picture picture, double slopeDeg) {
        return of(picture, new Slope(slopeDeg, 270), WOOD, sun(90, 5));
    }

    static SunAt sun(double azimuthDeg, double altitudeDeg) {
        return new SunAt(ZonedDateTime.parse("2027-05-08T06:30:00+01:00"), azimuthDeg, altitudeDeg);
    }
}
