package understorey.plan;

import org.jspecify.annotations.Nullable;

/**
 * A lens, interchangeable or built into a body.
 *
 * @param name          as in the bag
 * @param mount         null for a lens built into a body
 * @param sensor        behind a built-in lens; null for a lens with a mount
 * @param shortestMm    focal length at the wide end
 * @param longestMm     focal length at the long end; the same for a prime
 * @param widestShort   smallest f-number at the wide end
 * @param widestLong    smallest f-number at the long end
 * @param smallestStop  largest f-number
 * @param closestM      minimum focus distance from sensor to subject, metres
 * @param magnification greatest magnification
 * @param threadMm      filter thread; null for none
 * @param stabilisedStops gained by the lens's stabiliser; 0 for none
 * @param breathing     share of the focal length lost at the closest focus, 0 to below 1
 */
public record Lens(String name, @Nullable String mount, @Nullable Sensor sensor, double shortestMm, double longestMm,
                   double widestShort, double widestLong, @Nullable Double smallestStop, double closestM,
                   @Nullable Double magnification, @Nullable Double threadMm, double stabilisedStops, @Nullable Double weightG,
                   @Nullable Double breathing) {

    /** A lens whose breathing is not given. */
    public Lens(String name, @Nullable String mount, @Nullable Sensor sensor, double shortestMm, double longestMm,
                double widestShort, double widestLong, @Nullable Double smallestStop, double closestM,
                @Nullable Double magnification, @Nullable Double threadMm, double stabilisedStops, @Nullable Double weightG) {
        this(name, mount, sensor, shortestMm, longestMm, widestShort, widestLong, smallestStop, closestM, magnification,
                threadMm, stabilisedStops, weightG, null);
    }

    /** True for a lens that is built into its body. */
    public boolean builtIn() {
        return mount == null;
    }

    /** True for a built-in lens without a smallest aperture: it has a fixed aperture. */
    public boolean oneAperture() {
        return builtIn() && smallestStop == null;
    }

    public boolean zooms() {
        return longestMm > shortestMm;
    }

    /**
     * Smallest f-number at a focal length, interpolated by the logarithm of the focal length (an assumption: real
     * lenses change it in steps).
     */
    public double widestAt(double focalMm) {
        if (!zooms() || widestLong == widestShort) {
            return widestShort;
        }
        double share = Math.log(focalMm / shortestMm) / Math.log(longestMm / shortestMm);
        return widestShort + (widestLong - widestShort) * Math.min(1, Math.max(0, share));
    }
}
