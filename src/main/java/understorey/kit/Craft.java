package understorey.kit;

import java.util.stream.Stream;
import understorey.advice.Advice;
import understorey.advice.FitAdvice;
import understorey.kit.camera.Camera;

/**
 * What an expert holds against a camera that frames a picture as asked, in stops of shortfall. Five rules, each common
 * practice, no source. Each costs nothing up to a limit and grows evenly from there.
 *
 * <ul>
 * <li>Sensor: a stop per doubling of the crop factor, because noise falls with the width of the sensor.
 * <li>Pixels: three quarters of a stop per halving below 45 megapixels, which leave room for a crop and a large print.
 * <li>No macro lens, which is less than half life size by itself: half a stop per doubling of the magnification above a
 * tenth, counted on full frame. The edges soften and the focus ring becomes too coarse.
 * <li>Too near: a stop per halving of a working distance below 15 cm. Below 5 cm the picture is a compromise.
 * <li>Too far from a subject that is framed: a stop per doubling beyond 60 cm or six frame widths, whichever is longer.
 * </ul>
 */
final class Craft {

    /**
     * One thing that speaks against a camera.
     *
     * @param stops   of shortfall
     * @param verdict that it allows
     */
    record Point(double stops, Verdict verdict, Advice reason) {

        /** True where it is worth a sentence: half a stop, common practice, no source. */
        boolean worthSaying() {
            return stops >= 0.5;
        }
    }

    private static final double MANY_PIXELS_MPX = 45;
    private static final double PER_HALVING = 0.75;
    private static final double MACRO = 0.5;
    private static final double CLOSE_UP = 0.1;
    private static final double COMFORTABLE_MM = 150;
    private static final double SHADED_MM = 50;
    private static final double CLEAR_MM = 600;
    private static final double CLEAR_WIDTHS = 6;
    private static final double FULL_FRAME_MM = 36;

    private Craft() {
    }

    /** What speaks against a sensor, for any picture. */
    static Point sensor(Camera camera) {
        double crop = camera.sensor().crop();
        return new Point(doublings(crop), Verdict.FITS, new FitAdvice.SmallerSensor(crop));
    }

    /** What speaks against the pixels of a body, for any picture. */
    static Point pixels(Camera camera) {
        double mpx = camera.body().pixelsMpx();
        return new Point(PER_HALVING * doublings(MANY_PIXELS_MPX / mpx), Verdict.FITS, new FitAdvice.FewerPixels(mpx));
    }

    /**
     * What speaks against a camera on a subject that is framed.
     *
     * @param alone         greatest magnification of the lens without attachment
     * @param magnification of the picture as cropped, counted on full frame
     */
    static Stream<Point> framed(double alone, double magnification, double distanceMm) {
        double distanceM = distanceMm / 1000;
        double macro = alone >= MACRO ? 0 : doublings(magnification / CLOSE_UP) / 2;
        double clearMm = Math.max(CLEAR_MM, CLEAR_WIDTHS * FULL_FRAME_MM / magnification);
        boolean shaded = distanceMm < SHADED_MM;
        return Stream.of(new Point(macro, Verdict.FITS, new FitAdvice.NoMacro()),
                new Point(doublings(COMFORTABLE_MM / distanceMm), shaded ? Verdict.COMPROMISE : Verdict.FITS,
                        shaded ? new FitAdvice.FlowerShaded(distanceM) : new FitAdvice.WorkingDistanceSmall(distanceM)),
                new Point(doublings(distanceMm / clearMm), Verdict.FITS, new FitAdvice.WorkingDistanceLong(distanceM)));
    }

    private static double doublings(double times) {
        return Math.max(0, Framing.log2(times));
    }
}
