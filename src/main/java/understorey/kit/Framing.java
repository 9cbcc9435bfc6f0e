package understorey.kit;

import java.util.ArrayList;
import java.util.List;
import understorey.advice.Advice;
import understorey.advice.FitAdvice;
import understorey.kit.camera.Camera;
import understorey.kit.camera.Reach;
import understorey.kit.camera.Shortfall;
import understorey.optics.Sharpness;
import understorey.optics.ThinLens;
import understorey.plan.Filter;
import understorey.plan.Frame;
import understorey.plan.Lens;
import understorey.plan.Role;
import understorey.plan.Sharp;
import understorey.plan.Viewpoint;

/**
 * Distance, focal length and crop at which one camera frames a picture.
 *
 * @param reach         of the lens as it is set
 * @param distanceM     from the lens to what is framed
 * @param magnification at that distance
 * @param cropTimes     linear; 1 for the whole frame
 * @param penalty       in stops of shortfall, for ranking
 * @param weakest       what costs the most stops
 * @param shortfalls    in the order of the reasons
 */
record Framing(Reach reach, double distanceM, double magnification, double cropTimes, Verdict verdict,
               double penalty, Craft.Point weakest, List<Advice> reasons, List<Shortfall> shortfalls) {

    /** A lens this much longer than asked shows too little from any distance: common practice, no source. */
    private static final double LONGEST_STEP_BACK = 1.6;
    /** Enough for a print of 36 × 24 cm at 300 dots an inch: a crop that leaves as much does not show. */
    private static final double ENOUGH_PIXELS_MPX = 12;
    /** Enough for a print of 15 × 10 cm at 300 dots an inch. */
    private static final double LEAST_PIXELS_MPX = 2;
    /** 35 mm and 75 mm still show a carpet as 50 mm does; 24 mm and 100 mm do not: common practice, no source. */
    static final double NEAREST_OCTAVES = 0.6;
    /** 28 mm beats 20 mm for a way in, whatever it weighs; stops per octave: common practice, no source. */
    static final double PER_OCTAVE = 1.5;
    /** A difference that a picture does not show: common practice, no source. */
    private static final double NEAR_ENOUGH = 1.1;
    /** Putting something between body and lens costs time and light: common practice, no source. */
    private static final double ATTACHING = 0.5;
    /** Two distances this close to each other differ by rounding only. */
    private static final double ROUNDING = 1.001;
    /** Two focal lengths within a fiftieth look alike: common practice, no source. */
    static final double SAME_FOCAL = 1.02;
    /** Number of steps after which the focal length no longer changes. */
    private static final int TURNS = 12;

    static Framing of(Camera camera, Intent intent) {
        return new Draft(camera, intent).framing();
    }

    /** Collects what speaks against the lens while it is being framed. */
    private static final class Draft {
        private final Camera camera;
        private final Lens lens;
        private final Intent intent;
        private final List<Advice> reasons = new ArrayList<>();
        private final List<Shortfall> shortfalls = new ArrayList<>();
        private Verdict verdict = Verdict.FITS;
        private double penalty;
        private Craft.Point weakest;

        Draft(Camera camera, Intent intent) {
            this.camera = camera;
            this.lens = camera.lens();
            this.intent = intent;
            weakest = Craft.sensor(camera);
            penalty = weakest.stops();
            count(Craft.pixels(camera));
        }

        Framing framing() {
            return intent.frame() == null ? byFocalLength() : byFrame(intent.frame());
        }

        private Framing byFocalLength() {
            Sharp.Range range = (Sharp.Range) intent.sharp();
            double wantedMm = intent.givenEquivalentMm() / camera.sensor().crop();
            double focalMm = clamp(wantedMm);
            double crop = focalAgainst(wantedMm, focalMm, focalMm / wantedMm);
            Reach reach = Reach.of(camera, focalMm);
            double distanceMm = focusable(reach, Sharpness.focusMm(range.nearM() * 1000, range.farM() * 1000),
                    Verdict.COMPROMISE);
            return done(reach, distanceMm, reach.magnificationAt(distanceMm), crop);
        }

        private Framing byFrame(Frame frame) {
            double wanted = magnification(frame);
            if (frame.distanceM() != null) {
                return fromDistance(frame.distanceM() * 1000, wanted);
            }
            SuitedFocal suited = new SuitedFocal(camera, intent, wanted);
            double downMm = downMm(suited);
            if (downMm < Double.POSITIVE_INFINITY) {
                return fromDistance(downMm, wanted);
            }
            Reach reach = Reach.of(camera, freeFocalMm(suited));
            double crop = 1;
            if (wanted > reach.greatest()) {
                crop = wanted / reach.greatest();
                crop(new Shortfall.NotCloseEnough(), crop);
            }
            double used = Math.min(wanted, reach.greatest());
            double distanceMm = focusable(reach, reach.distanceMm(used), Verdict.CANNOT);
            reasons.add(new FitAdvice.FramedFrom(reach.focalMm(), distanceMm / 1000));
            return done(reach, distanceMm, Math.max(used, reach.least()), crop);
        }

        /**
         * How far below the lens the flowers are where the camera is tilted so far down that they decide the distance, mm;
         * positive infinity where the lens decides, since a stance comes down to a lens that asks for less.
         */
        private double downMm(SuitedFocal suited) {
            Overhead overhead = Overhead.of(intent);
            if (overhead == null || intent.focalEquivalentMm() != null) {
                return Double.POSITIVE_INFINITY;
            }
            double downMm = 1000 * overhead.distanceM(Intent.nominalHeightM(intent.viewpoint()));
            Reach free = Reach.of(camera, suited.focalMm());
            boolean comesDown = !(intent.viewpoint() instanceof Viewpoint.Height)
                    && free.distanceMm(Math.min(suited.magnification(), free.greatest())) <= downMm;
            return comesDown ? Double.POSITIVE_INFINITY : downMm;
        }

        private Framing fromDistance(double askedMm, double wanted) {
            double wantedMm = focalMmFor(wanted, askedMm);
            double focalMm = clamp(wantedMm);
            Reach reach = Reach.of(camera, focalMm);
            double distanceMm = focusable(reach, askedMm, Verdict.CANNOT);
            double magnification = reach.magnificationAt(distanceMm);
            double crop = 1;
            if (distanceMm > askedMm * NEAR_ENOUGH && magnification < wanted) {
                crop = wanted / magnification;
                crop(new Shortfall.NotCloseEnough(), crop);
            } else {
                crop = focalAgainst(wantedMm, focalMm, magnification / wanted);
            }
            return done(reach, distanceMm, magnification, crop);
        }

        /** As set on the ring; a lens that shrinks while it focuses close has to be set longer than the thin lens. */
        private double focalMmFor(double wanted, double distanceMm) {
            double focalMm = ThinLens.focalMmFor(wanted, distanceMm);
            for (int turn = 0; lens.zooms() && camera.attachment() == null && turn < TURNS; turn++) {
                double set = clamp(focalMm);
                focalMm = set * wanted / Reach.of(camera, set).magnificationAt(distanceMm);
            }
            return focalMm;
        }

        /** The distance asked, or the nearest to it that comes into focus. */
        private double focusable(Reach reach, double distanceMm, Verdict tooNear) {
            Filter attachment = camera.attachment();
            if (attachment != null && distanceMm > reach.farthestMm() * ROUNDING) {
                against(Verdict.CANNOT, 8, new FitAdvice.AttachmentTooClose(attachment.name()));
            } else if (attachment != null) {
                against(Verdict.FITS, ATTACHING, new FitAdvice.WithAttachment(attachment.name()));
            }
            if (distanceMm * NEAR_ENOUGH < reach.nearestMm()) {
                shortfalls.add(new Shortfall.TooNear(distanceMm / 1000, reach.nearestMm() / 1000));
                against(tooNear, tooNear == Verdict.CANNOT ? 8 : 1,
                        new FitAdvice.TooNear(reach.nearestMm() / 1000, distanceMm / 1000));
            }
            return Math.max(reach.nearestMm(), Math.min(distanceMm, reach.farthestMm()));
        }

        private Framing done(Reach reach, double distanceMm, double magnification, double crop) {
            if (intent.frame() != null) {
                Craft.framed(reach.alone(), magnification * crop * camera.sensor().crop(), distanceMm).forEach(this::craft);
            }
            proposal();
            return new Framing(reach, distanceMm / 1000, magnification, crop, verdict, penalty, weakest,
                    List.copyOf(reasons), List.copyOf(shortfalls));
        }

        /** Adds why the picture is framed so, where the author leaves the framing open. */
        private void proposal() {
            if (intent.assumed().contains("focal_equivalent")) {
                boolean low = Intent.nominalHeightM(intent.viewpoint()) < Intent.KNEELING_M;
                reasons.add(low || intent.role() == Role.APPROACH ? new FitAdvice.ProposedWayIn(intent.givenEquivalentMm())
                        : new FitAdvice.ProposedFloor(intent.givenEquivalentMm()));
            } else if (intent.assumed().contains("frame")) {
                reasons.add(intent.role() == Role.CLOSING ? new FitAdvice.ProposedHead() : new FitAdvice.ProposedPlant());
            }
        }

        /**
         * Compares the focal length asked with the one there is; the crop that makes up for a shorter one.
         *
         * @param times how much larger the picture comes out than asked
         */
        private double focalAgainst(double wantedMm, double focalMm, double times) {
            double crop = camera.sensor().crop();
            boolean reached = times < SAME_FOCAL && times > 1 / SAME_FOCAL;
            if (!reached && intent.assumed().contains("focal_equivalent")) {
                return nearestTo(wantedMm * crop, focalMm * crop, times);
            }
            if (times >= SAME_FOCAL) {
                Verdict what = times <= NEAR_ENOUGH ? Verdict.FITS
                        : times <= LONGEST_STEP_BACK ? Verdict.COMPROMISE : Verdict.CANNOT;
                shortfalls.add(new Shortfall.TooLong(times, wantedMm * crop));
                against(what, 2 * log2(times), new FitAdvice.FocalLong(focalMm * crop, wantedMm * crop, times));
                return 1;
            }
            if (times <= 1 / SAME_FOCAL) {
                crop(new Shortfall.TooShort(1 / times), 1 / times);
                return 1 / times;
            }
            reasons.add(new FitAdvice.FocalReached(focalMm * crop));
            penalty += 2 * Math.abs(log2(times));
            return Math.max(1, 1 / times);
        }

        /** A lens that misses a proposed focal length is used whole, at the nearest one that it has. */
        private double nearestTo(double proposedMm, double haveMm, double times) {
            double octaves = Math.abs(log2(times));
            craft(new Craft.Point(PER_OCTAVE * octaves, octaves <= NEAREST_OCTAVES ? Verdict.FITS : Verdict.COMPROMISE,
                    times < 1 ? new FitAdvice.ProposedWider(haveMm, proposedMm) : new FitAdvice.ProposedLonger(haveMm, proposedMm)));
            return 1;
        }

        private void crop(Shortfall shortfall, double crop) {
            double left = camera.body().pixelsMpx() / (crop * crop);
            Verdict what = crop <= NEAR_ENOUGH || left >= ENOUGH_PIXELS_MPX ? Verdict.FITS
                    : left >= LEAST_PIXELS_MPX ? Verdict.COMPROMISE : Verdict.CANNOT;
            shortfalls.add(shortfall);
            against(what, 2 * log2(crop), shortfall instanceof Shortfall.TooShort
                    ? new FitAdvice.FocalShort(crop, left, 1 / crop) : new FitAdvice.MagnificationShort(crop, left));
        }

        private void against(Verdict what, double stops, Advice reason) {
            count(new Craft.Point(stops, what, reason));
            reasons.add(reason);
        }

        private void craft(Craft.Point point) {
            count(point);
            if (point.worthSaying()) {
                reasons.add(point.reason());
            }
        }

        private void count(Craft.Point point) {
            verdict = verdict.and(point.verdict());
            penalty += point.stops();
            weakest = point.stops() > weakest.stops() ? point : weakest;
        }

        private double magnification(Frame frame) {
            return frame.widthM() != null
                    ? camera.sensor().acrossMm(intent.orientation()) / (frame.widthM() * 1000)
                    : camera.sensor().upMm(intent.orientation()) / (Intent.heightM(frame, intent.shot().subject()) * 1000);
        }

        private double freeFocalMm(SuitedFocal suited) {
            Craft.Point point = suited.point();
            count(point);
            if (point.verdict() != Verdict.FITS) {
                reasons.add(point.reason());
            }
            return suited.focalMm();
        }

        private double clamp(double focalMm) {
            return Math.min(lens.longestMm(), Math.max(lens.shortestMm(), focalMm));
        }
    }

    static double log2(double times) {
        return Math.log(times) / Math.log(2);
    }
}
