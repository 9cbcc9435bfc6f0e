package understorey.kit.camera;

import understorey.plan.Filter;

/** What a lens falls short of on a picture, and by how much. Remedies are sought for it. */
public sealed interface Shortfall {

    /**
     * A focal length below the one asked.
     *
     * @param times linear, above 1
     */
    record TooShort(double times) implements Shortfall {
    }

    /**
     * A focal length above the one asked.
     *
     * @param times   linear, above 1
     * @param askedMm full-frame equivalent
     */
    record TooLong(double times, double askedMm) implements Shortfall {
    }

    /** A magnification below the one asked. */
    record NotCloseEnough() implements Shortfall {
    }

    /** A minimum focus distance above the distance asked, metres from the lens. */
    record TooNear(double askedM, double closestM) implements Shortfall {
    }

    /** A depth of field below the one asked at every useful aperture. */
    record TooDeep() implements Shortfall {
    }

    /** Too few pixels for the print asked, megapixels. */
    record TooFewPixels(double leftMpx, double neededMpx) implements Shortfall {
    }

    /** No step-up ring for a polariser in the bag. */
    record NoRing(Filter polariser, double lensThreadMm) implements Shortfall {
    }

    /** No polariser for the thread of the lens, mm. */
    record NoPolariser(double threadMm) implements Shortfall {
    }

    /** Nothing that holds the camera at the height asked. */
    record NoSupport() implements Shortfall {
    }

    /** A support that carries less than the camera weighs. */
    record Overloaded() implements Shortfall {
    }
}
