package understorey.advice;

import static understorey.advice.Measure.F_NUMBER;
import static understorey.advice.Measure.MEGAPIXELS;
import static understorey.advice.Measure.METRES;
import static understorey.advice.Measure.MILLIMETRES;
import static understorey.advice.Measure.PRINT_WIDTH;
import static understorey.advice.Measure.SHARE;
import static understorey.advice.Measure.TIMES;

/** How well a lens serves a picture: focal length, distance, depth of field, pixels, polariser. */
public sealed interface FitAdvice extends Advice {

    /** Makes a picture a compromise or rules it out. */
    sealed interface Objection extends FitAdvice {

        @Override
        default Severity severity() {
            return Severity.OBJECTION;
        }
    }

    /** The focal length asked is within the lens. */
    record FocalReached(@In(MILLIMETRES) double equivalent) implements FitAdvice {
    }

    record ProposedFloor(@In(MILLIMETRES) double proposed) implements FitAdvice {
    }

    record ProposedWayIn(@In(MILLIMETRES) double proposed) implements FitAdvice {
    }

    record ProposedPlant() implements FitAdvice {
    }

    record ProposedHead() implements FitAdvice {
    }

    /** Shorter than what melts the background behind a plant. */
    record BackgroundWide(@In(MILLIMETRES) double have, @In(MILLIMETRES) double proposed) implements Objection {
    }

    record ProposedWider(@In(MILLIMETRES) double have, @In(MILLIMETRES) double proposed) implements Objection {
    }

    record ProposedLonger(@In(MILLIMETRES) double have, @In(MILLIMETRES) double proposed) implements Objection {
    }

    /** The lens frames the picture from this distance. */
    record FramedFrom(@In(MILLIMETRES) double focal, @In(METRES) double distance) implements FitAdvice {
    }

    /** Shorter than asked: crop. */
    record FocalShort(@In(TIMES) double times, @In(MEGAPIXELS) double left, @In(SHARE) double share) implements Objection {
    }

    /** Longer than asked: step back, and see less. */
    record FocalLong(@In(MILLIMETRES) double have, @In(MILLIMETRES) double asked, @In(TIMES) double times) implements Objection {
    }

    /** The picture is smaller than the lens focuses: crop. */
    record MagnificationShort(@In(TIMES) double times, @In(MEGAPIXELS) double left) implements Objection {
    }

    /** The distance asked is nearer than the lens focuses. */
    record TooNear(@In(METRES) double closest, @In(METRES) double asked) implements Objection {
    }

    /** Too few pixels for the print asked. */
    record PrintSoft(@In(MEGAPIXELS) double left, @In(MEGAPIXELS) double needed, @In(PRINT_WIDTH) double print) implements Objection {
    }

    record WorkingDistanceSmall(@In(METRES) double distance) implements FitAdvice {
    }

    record WorkingDistanceLong(@In(METRES) double distance) implements FitAdvice {
    }

    /** So near that the camera shades the flower. */
    record FlowerShaded(@In(METRES) double distance) implements Objection {
    }

    /** A close-up by a lens that is no macro lens. */
    record NoMacro() implements FitAdvice {
    }

    record SmallerSensor(@In(TIMES) double crop) implements FitAdvice {
    }

    /** Less room for a crop or a large print than another body has. */
    record FewerPixels(@In(MEGAPIXELS) double pixels) implements FitAdvice {
    }

    /** The sharpness asked needs a smaller aperture than is of use. */
    record DepthShort(@In(F_NUMBER) double needed, @In(F_NUMBER) double useful) implements Objection {
    }

    record DepthProposedShort(@In(F_NUMBER) double needed, @In(F_NUMBER) double useful) implements FitAdvice {
    }

    /** The one aperture of a built-in lens holds less than was asked. */
    record DepthFixed(@In(F_NUMBER) double useful, @In(F_NUMBER) double needed) implements Objection {
    }

    /** An attachment brings the lens this close. */
    record WithAttachment(String attachment) implements FitAdvice {
    }

    /** With its attachment the lens no longer sees so far. */
    record AttachmentTooClose(String attachment) implements Objection {
    }

    /** The polariser goes on straight, or by a ring. */
    record PolariserOn(String filter) implements FitAdvice {
    }

    record PolariserByRing(String filter, String ring) implements FitAdvice {
    }

    record PolariserMissing(@In(MILLIMETRES) double thread) implements Objection {
    }

    record PolariserNoThread(String lens) implements Objection {
    }

    /** Left at home: a lighter bag takes the picture as well. */
    record LensAtHome(String item) implements Objection {
    }

    /** Left at home: a carried camera takes the picture better. */
    record LensOutclassed(String item, String better) implements Objection {
    }

    /** Left at home: the author decided on another camera. */
    record LensNotChosen(String item) implements Objection {
    }

    /** The author decided on this camera, and the bag has no better one. */
    record ChosenCamera() implements FitAdvice {
    }

    /** The author decided on this camera, and another one of the bag serves better. */
    record BetterCamera(String better, Advice because) implements FitAdvice {
    }
}
