package understorey.scene.chart;

import java.util.Comparator;
import java.util.List;
import understorey.light.LightAt;
import understorey.scene.Drawing.Point;
import understorey.sky.Skyline;
import understorey.sky.SunAt;

/**
 * The two scales of the sun over the skyline: bearings across, around the side on which the sun is highest, and
 * degrees above the level horizon upwards. All that stands there fits: the sun, the land and the tree tops.
 */
final class Panorama {

    static final double WIDTH = 356;
    static final double LEFT = 36;
    static final double RIGHT = 348;
    private static final double PLOT = 180;
    static final double STEP_DEG = 2;

    private final double centreDeg;
    private final double halfDeg;
    private final double highestDeg;
    private final double top;

    /**
     * Scales below a line of the sheet.
     *
     * @param up         the rows of the day with the sun up
     * @param treesUpTo  the highest tree top above the level horizon, degrees; 0 for none
     * @param top        upper edge of the plot, px
     */
    Panorama(List<LightAt> up, Skyline skyline, double latitude, double treesUpTo, double top) {
        this.top = top;
        this.centreDeg = centre(up, latitude);
        double widest = 90;
        double highest = Math.max(30, treesUpTo + 3);
        for (LightAt row : up) {
            widest = Math.max(widest, Math.abs(offset(row.sun().azimuthDeg())) + 15);
            highest = Math.max(highest, row.sun().apparentAltitudeDeg() + 6);
        }
        this.halfDeg = Math.min(180, widest);
        for (double offset = -halfDeg; offset <= halfDeg; offset += STEP_DEG) {
            highest = Math.max(highest, skyline.angleDeg(bearing(offset)) + 3);
        }
        this.highestDeg = highest;
    }

    /** Where the sun is highest that day; without sun, the pole-ward or equator-ward side by hemisphere. */
    private static double centre(List<LightAt> up, double latitude) {
        double azimuth = up.stream().map(LightAt::sun).max(Comparator.comparingDouble(SunAt::apparentAltitudeDeg))
                .map(SunAt::azimuthDeg).orElse(latitude < 0 ? 0.0 : 180.0);
        return azimuth > 90 && azimuth < 270 ? 180 : 0;
    }

    double halfDeg() {
        return halfDeg;
    }

    double highestDeg() {
        return highestDeg;
    }

    double top() {
        return top;
    }

    double bottom() {
        return top + PLOT;
    }

    /** Degrees right of the middle of the sheet, −180 to 180. */
    double offset(double bearingDeg) {
        double offset = (bearingDeg - centreDeg) % 360;
        return offset > 180 ? offset - 360 : offset < -180 ? offset + 360 : offset;
    }

    double bearing(double offset) {
        return ((centreDeg + offset) % 360 + 360) % 360;
    }

    double x(double offset) {
        return LEFT + (offset + halfDeg) / (2 * halfDeg) * (RIGHT - LEFT);
    }

    /** The offset that stands at x. */
    double offsetAt(double x) {
        return (x - LEFT) / (RIGHT - LEFT) * 2 * halfDeg - halfDeg;
    }

    double y(double degrees) {
        return bottom() - PLOT * Math.max(-1, degrees) / highestDeg;
    }

    Point at(double offset, double degrees) {
        return new Point(x(offset), y(degrees));
    }
}
