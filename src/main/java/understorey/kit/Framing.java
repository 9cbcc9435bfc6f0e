package understorey.kit;

import static understorey.reason.Figure.Measure.MEGAPIXELS;
import static understorey.reason.Figure.Measure.METRES;
import static understorey.reason.Figure.Measure.MILLIMETRES;
import static understorey.reason.Figure.Measure.TIMES;

import java.util.ArrayList;
import java.util.List;
import understorey.optics.Sharpness;
import understorey.optics.ThinLens;
import understorey.plan.Filter;
import understorey.plan.Frame;
import understorey.plan.Lens;
import understorey.plan.Orientation;
import understorey.plan.Sharp;
import understorey.reason.Reason;

/**
 * Where one camera stands to frame a picture, at which focal length, and how much of its frame is used.
 *
 * @param focalMm       as set on the lens
 * @param distanceM     from the lens to what is framed
 * @param magnification at that distance
 * @param cropTimes     linear; 1 for the whole frame
 * @param penalty       in stops of shortfall, for ranking
 */
record Framing(double focalMm, double distanceM, double magnification, double cropTimes, Verdict verdict,
               double penalty, List<Reason> reasons) {

    /** A longer lens than asked sees less, however far one steps back: common practice, no source. */
    private static final double LONGEST_STEP_BACK = 1.6;
    /** Enough for a print of 15 × 10 cm at 300 dots an inch. */
    private static final double LEAST_PIXELS_MPX = 2;
    /** What nobody sees. */
    private static final double NEAR_ENOUGH = 1.1;
    /** Putting something between body and lens costs time and light: common practice, no source. */
    private static final double ATTACHING = 1;
    private static final double CLOSE_UP = 0.1;
    private static final double LEAST_WORKING_M = 0.1;
    private static final double FREE_CHOICE_EQUIVALENT_MM = 50;

    static Framing of(Camera camera, Intent intent) {
        return new Draft(camera, intent).framing();
    }

    /** Collects what speaks against the lens while it is being framed. */
    private static final class Draft {
        private final Camera camera;
        private final Lens lens;
        private final Intent intent;
        private final List<Reason> reasons = new ArrayList<>();
        private Verdict verdict = Verdict.FITS;
        private double penalty;

        Draft(Camera camera, Intent intent) {
            this.camera = camera;
            this.lens = camera.lens();
            this.intent = intent;
        }

        Framing framing() {
            return intent.frame() == null ? byFocalLength() : byFrame(intent.frame());
        }

        private Framing byFocalLength() {
            Sharp.Range range = (Sharp.Range) intent.sharp();
            double distanceM = Sharpness.focusMm(range.nearM() * 1000, range.farM() * 1000) / 1000;
            double wantedMm = intent.focalEquivalentMm() / camera.sensor().crop();
            double focalMm = clamp(wantedMm);
            double crop = focalAgainst(wantedMm, focalMm);
            if (camera.attachment() != null) {
                against(Verdict.CANNOT, 8, Reason.of(FitReason.ATTACHMENT_TOO_CLOSE)
                        .with("attachment", camera.attachment().name()));
            }
            if (distanceM < lens.closestM()) {
                against(Verdict.COMPROMISE, 1, Reason.of(FitReason.TOO_NEAR)
                        .with("asked", distanceM, METRES).with("closest", lens.closestM(), METRES));
                distanceM = lens.closestM();
            }
            return done(focalMm, distanceM, ThinLens.magnification(focalMm, distanceM * 1000), crop);
        }

        private Framing byFrame(Frame frame) {
            double wanted = magnification(frame);
            if (frame.distanceM() != null) {
                return fromDistance(frame.distanceM(), wanted);
            }
            double focalMm = freeFocalMm(wanted);
            double reach = reach(focalMm);
            double least = leastMagnification(focalMm);
            double crop = 1;
            if (wanted > reach) {
                crop = wanted / reach;
                crop(FitReason.MAGNIFICATION_SHORT, crop);
            } else if (wanted < least) {
                against(Verdict.CANNOT, 8, Reason.of(FitReason.ATTACHMENT_TOO_CLOSE)
                        .with("attachment", camera.attachment().name()));
            } else if (camera.attachment() != null) {
                penalty += ATTACHING;
                reasons.add(Reason.of(FitReason.WITH_ATTACHMENT).with("attachment", camera.attachment().name()));
            }
            double used = Math.min(wanted, reach);
            double distanceM = ThinLens.subjectMm(actingFocalMm(focalMm), used) / 1000;
            if (distanceM < LEAST_WORKING_M) {
                against(Verdict.FITS, 0.5, Reason.of(FitReason.WORKING_DISTANCE_SMALL)
                        .with("distance", distanceM, METRES));
            }
            reasons.add(Reason.of(FitReason.FRAMED_FROM).with("focal", focalMm, MILLIMETRES)
                    .with("distance", distanceM, METRES));
            return done(focalMm, distanceM, used, crop);
        }

        private Framing fromDistance(double distanceM, double wanted) {
            double wantedMm = ThinLens.focalMmFor(wanted, distanceM * 1000);
            double focalMm = clamp(wantedMm);
            double crop = focalAgainst(wantedMm, focalMm);
            double magnification = ThinLens.magnification(focalMm, distanceM * 1000);
            if (magnification > reach(focalMm) * NEAR_ENOUGH) {
                against(Verdict.CANNOT, 8, Reason.of(FitReason.TOO_NEAR)
                        .with("asked", distanceM, METRES).with("closest", lens.closestM(), METRES));
            }
            return done(focalMm, distanceM, magnification, crop);
        }

        private Framing done(double focalMm, double distanceM, double magnification, double crop) {
            return new Framing(focalMm, distanceM, magnification, crop, verdict, penalty, List.copyOf(reasons));
        }

        /** Compares the focal length asked with the one there is; the crop that makes up for a shorter one. */
        private double focalAgainst(double wantedMm, double focalMm) {
            double crop = camera.sensor().crop();
            if (focalMm > wantedMm * 1.001) {
                double times = focalMm / wantedMm;
                Verdict what = times <= NEAR_ENOUGH ? Verdict.FITS
                        : times <= LONGEST_STEP_BACK ? Verdict.COMPROMISE : Verdict.CANNOT;
                against(what, 2 * log2(times), Reason.of(FitReason.FOCAL_LONG)
                        .with("have", focalMm * crop, MILLIMETRES).with("asked", wantedMm * crop, MILLIMETRES)
                        .with("times", times, TIMES));
                return 1;
            }
            if (focalMm < wantedMm * 0.999) {
                return crop(FitReason.FOCAL_SHORT, wantedMm / focalMm);
            }
            reasons.add(Reason.of(FitReason.FOCAL_REACHED).with("focal", focalMm, MILLIMETRES)
                    .with("equivalent", focalMm * crop, MILLIMETRES));
            return 1;
        }

        private double crop(FitReason kind, double crop) {
            double left = camera.body().pixelsMpx() / (crop * crop);
            Verdict what = crop <= NEAR_ENOUGH ? Verdict.FITS
                    : left >= LEAST_PIXELS_MPX ? Verdict.COMPROMISE : Verdict.CANNOT;
            against(what, 2 * log2(crop), Reason.of(kind).with("times", crop, TIMES).with("left", left, MEGAPIXELS));
            return crop;
        }

        private void against(Verdict what, double stops, Reason reason) {
            verdict = verdict.and(what);
            penalty += stops;
            reasons.add(reason);
        }

        private double magnification(Frame frame) {
            boolean landscape = intent.orientation() == Orientation.LANDSCAPE;
            double across = landscape ? camera.sensor().widthMm() : camera.sensor().heightMm();
            double up = landscape ? camera.sensor().heightMm() : camera.sensor().widthMm();
            return frame.widthM() != null
                    ? across / (frame.widthM() * 1000)
                    : up / (Intent.heightM(frame, intent.shot().subject()) * 1000);
        }

        private double freeFocalMm(double magnification) {
            if (intent.focalEquivalentMm() != null) {
                return clamp(intent.focalEquivalentMm() / camera.sensor().crop());
            }
            return magnification >= CLOSE_UP || camera.attachment() != null
                    ? lens.longestMm()
                    : clamp(FREE_CHOICE_EQUIVALENT_MM / camera.sensor().crop());
        }

        /**
         * The greatest magnification at a focal length with what is attached: a tube adds its length over the focal length, a close-up lens of
         * power D makes (1 + m)(1 + fD) − 1 of m (thin lenses in contact).
         */
        private double reach(double focalMm) {
            double alone = greatestMagnification(lens, focalMm);
            return (1 + alone) * (1 + closeUpPower(focalMm)) - 1 + extension(focalMm);
        }

        /** With an attachment a lens no longer sees the distance: the least it then magnifies. */
        private double leastMagnification(double focalMm) {
            return closeUpPower(focalMm) + extension(focalMm);
        }

        private double actingFocalMm(double focalMm) {
            return focalMm / (1 + closeUpPower(focalMm));
        }

        private double closeUpPower(double focalMm) {
            Filter attachment = camera.attachment();
            return attachment == null || attachment.dioptres() == null ? 0 : focalMm * attachment.dioptres() / 1000;
        }

        private double extension(double focalMm) {
            Filter attachment = camera.attachment();
            return attachment == null || attachment.lengthMm() == null ? 0 : attachment.lengthMm() / focalMm;
        }

        private double clamp(double focalMm) {
            return Math.min(lens.longestMm(), Math.max(lens.shortestMm(), focalMm));
        }
    }

    /**
     * The greatest magnification of the lens alone: the maker's figure at the long end, else by the thin lens
     * from the closest distance, at most 1:1 (nearer than four focal lengths no thin lens focuses).
     */
    static double greatestMagnification(Lens lens, double focalMm) {
        return lens.magnification() != null && focalMm == lens.longestMm()
                ? lens.magnification()
                : ThinLens.magnificationAtSensorDistance(focalMm, Math.max(lens.closestM() * 1000, 4 * focalMm));
    }

    static double log2(double times) {
        return Math.log(times) / Math.log(2);
    }
}
