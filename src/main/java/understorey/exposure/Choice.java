package understorey.exposure;

import java.util.List;
import understorey.exposure.scale.Shutter;
import understorey.exposure.scale.StopScale;
import understorey.kit.Darkening;
import understorey.kit.LensFit;
import understorey.plan.CameraSettings;

/**
 * Aperture, ISO and shutter speed of one picture. ISO is at its base where hands and flowers allow it; else these yield in turn:
 * the aperture, as far as the depth of field asked allows; ISO, up to 800 for a frame between gusts; two stops of a depth of field
 * that was only suggested; ISO, up to the author's limit; more of that depth of field. At last ISO rises up to 800 where a
 * frame by hand would be slower than 1/30 s, or one on legs than two seconds. What the author sets stays.
 */
final class Choice {

    /** Rather than wait longer for one frame people raise ISO: common practice, no source. */
    private static final double LONGEST_WAIT_S = 240;
    /** A third of a stop in time is within what the markings round. */
    static final double TOLERANCE = Math.pow(2, 1 / 3.0);
    /** A depth of field that was only suggested is given up before ISO rises past that: common practice, no source. */
    private static final int FREELY_RAISED_ISO = 800;
    /** Flowers hardly ever keep still for longer, not even in still air: common practice, no source. */
    private static final double STILL_S = 2;
    /** Slower than that by hand many frames are soft, whatever a stabiliser promises: common practice, no source. */
    private static final double BY_HAND_S = 1 / 30.0;
    private static final double SHORTEST_ASKED_S = Dimming.SHORTEST_S * TOLERANCE;

    private final LensFit fit;
    private final CameraSettings set;
    private final double ev100;
    private final Aperture aperture;
    private final Motion motion;
    private final int lowestIso;
    private final int highestIso;
    private final double lostStops;
    private final double opened;
    private final Dimming dimming;
    private final int neededIso;
    private final int iso;

    Choice(LensFit fit, List<Darkening> filters, double ev100, Aperture aperture, Motion motion) {
        this.fit = fit;
        this.set = fit.intent().shot().set();
        this.ev100 = ev100;
        this.aperture = aperture;
        this.motion = motion;
        lowestIso = set.iso() != null ? set.iso() : fit.camera().body().baseIso();
        highestIso = set.iso() != null ? set.iso() : fit.camera().body().topIso();
        double fitted = fit.lossStops() + fit.closenessStops();
        opened = opened(fitted);
        dimming = Dimming.of(fit, filters, opened, secondsAt(opened, lowestIso, fitted),
                set.shutterS() == null ? motion.longestS() : Double.POSITIVE_INFINITY);
        lostStops = fitted + dimming.lossStops();
        neededIso = Math.max(raised(dimming.fNumber(), bearableS(), highestIso), raised(dimming.fNumber(), freelyS(), freeIso()));
        iso = Math.max(neededIso, raised(dimming.fNumber(), easilyS(), freeIso()));
    }

    /**
     * Opened while the lowest ISO leaves the shutter speed too slow; past a depth of field that was only suggested while ISO 800
     * does, and further while the highest does.
     */
    private double opened(double lossStops) {
        double asked = opened(aperture.first(), aperture.widest(), lowestIso, freelyS(), lossStops);
        double yielded = opened(asked, aperture.yielding(), freeIso(), freelyS(), lossStops);
        return opened(yielded, aperture.open(), highestIso, bearableS(), lossStops);
    }

    /** A third of a stop at a time. */
    private double opened(double from, double widest, int iso, double longestS, double lossStops) {
        double fNumber = from;
        while (fNumber > widest && secondsAt(fNumber, iso, lossStops) > longestS) {
            fNumber = Math.max(widest, StopScale.thirdWider(fNumber));
        }
        return fNumber;
    }

    private int freeIso() {
        return Math.max(lowestIso, Math.min(highestIso, FREELY_RAISED_ISO));
    }

    private int raised(double fNumber, double limitS, int highest) {
        return Math.min(highest, Math.max(lowestIso, StopScale.nextIsoUp(Shutter.iso(fNumber, ev100, limitS, lostStops))));
    }

    private double secondsAt(double fNumber, int iso, double lossStops) {
        return Shutter.seconds(fNumber, ev100, iso, lossStops);
    }

    /** Slowest shutter speed before something yields; never faster than a camera has. */
    private double bearableS() {
        return set.shutterS() != null ? set.shutterS() : Math.max(Math.min(motion.longestS(), patienceS()), SHORTEST_ASKED_S);
    }

    /** Slowest shutter speed before what costs little yields. */
    private double freelyS() {
        return set.shutterS() != null ? set.shutterS() : Math.max(Math.min(bearableS(), motion.calmS()), SHORTEST_ASKED_S);
    }

    /** Slowest shutter speed before ISO yields for frames that are sharp more often. */
    private double easilyS() {
        return set.shutterS() != null ? set.shutterS() : Math.min(freelyS(), fit.steady() ? STILL_S : BY_HAND_S);
    }

    /** Slowest shutter speed of a frame: as the camera times it where nothing locks bulb. */
    private double patienceS() {
        return fit.steady() && !fit.released() ? Reminders.LONGEST_COUNTED_S : LONGEST_WAIT_S;
    }

    /** The aperture before the light was found too bright for it. */
    double opened() {
        return opened;
    }

    double fNumber() {
        return dimming.fNumber();
    }

    Dimming dimming() {
        return dimming;
    }

    int iso() {
        return iso;
    }

    /** True when ISO is as low as it goes, or as the author sets it. */
    boolean isoLowest() {
        return iso == lowestIso;
    }

    /** True when ISO is higher than hands and flowers need, for frames that are sharp more often. */
    boolean eased() {
        return iso > neededIso;
    }

    /** At the ISO that hands and flowers need. */
    double neededS() {
        return secondsAt(fNumber(), neededIso, lostStops);
    }

    double lossStops() {
        return lostStops;
    }

    /** Exactly, as the light asks for it; as the author sets it. */
    double seconds() {
        return set.shutterS() != null ? set.shutterS() : secondsAt(fNumber(), iso, lostStops);
    }

    /** At the aperture where it begins and the lowest ISO. */
    double firstS() {
        return secondsAt(aperture.first(), lowestIso, lostStops);
    }

    /** At the lowest ISO. */
    double lowestIsoS() {
        return secondsAt(fNumber(), lowestIso, lostStops);
    }

    /** As marked; of a frame that is too bright the fastest that there is. */
    double markedS() {
        if (set.shutterS() != null) {
            return set.shutterS();
        }
        double seconds = StopScale.snapShutterS(seconds());
        return fit.camera().lens().builtIn() ? seconds : Math.max(Dimming.SHORTEST_S, seconds);
    }

    /** A limit as marked; not below a shutter speed that passes for within it. */
    double about(double limitS) {
        double marked = StopScale.snapShutterS(limitS);
        return missed(seconds() / limitS) > 0 ? marked : Math.max(marked, markedS());
    }

    /** True when hands or flowers allow less. */
    boolean tooSlow() {
        return missed(seconds() / motion.longestS()) > 0;
    }

    /** True when a frame would take longer than anybody waits, though nothing moves. */
    boolean outlastsPatience() {
        return motion.longestS() > patienceS();
    }

    double motionStops() {
        return missed(seconds() / Math.min(motion.longestS(), patienceS()));
    }

    /** Depth of field goes with the square of the f-number, as light does: twice the stops of its ratio. */
    double depthStops() {
        return missed(Math.pow(fit.fNumberNeeded() / fNumber(), 2));
    }

    /** Stops that the frame is overexposed by; negative when it is underexposed, 0 to a third of a stop. */
    double overStops() {
        double times = markedS() / secondsAt(fNumber(), iso, lostStops);
        return times < 1 ? -missed(1 / times) : missed(times);
    }

    /** The ISO, as marked, at which a shutter speed suits the light; beyond the author's limit too. */
    int isoFor(double seconds) {
        return StopScale.nextIsoUp(Shutter.iso(fNumber(), ev100, seconds, lostStops));
    }

    private static double missed(double times) {
        return times > TOLERANCE * (1 + 1e-9) ? StopScale.log2(times) : 0;
    }
}
