package understorey.scene.sketch;

import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.scene.Drawing.Mark;

/**
 * Which side of a trunk is lit. A trunk is an upright cylinder and the sun far away: of its width, from −1 on the left to 1
 * on the right, a sun that is φ to the right of the view lights what lies beyond cos φ (geometry: the normal of the bark
 * faces the sun). Without a sun the light comes from all around, and a trunk is a little darker on one side.
 */
record SunOnTrunks(@Nullable Double besideDeg, boolean direct) {

    /** A shade narrower than this share of the width is not drawn. */
    private static final double LEAST = 0.08;
    private static final double SHADED_PX = 3.5;

    static SunOnTrunks of(Setup setup) {
        Double facingDeg = setup.fit().intent().shot().facingDeg();
        return setup.sun() == null || facingDeg == null ? new SunOnTrunks(null, false)
                : new SunOnTrunks(turned(setup.sun().azimuthDeg() - facingDeg), setup.air().sunlit());
    }

    private static double turned(double deg) {
        return ((deg + 180) % 360 + 360) % 360 - 180;
    }

    /** Where the shade of a trunk begins and ends across its width. */
    double[] shade() {
        if (besideDeg == null) {
            return new double[] {0.25, 1};
        }
        double edge = Math.cos(Math.toRadians(besideDeg));
        return besideDeg >= 0 ? new double[] {-1, edge} : new double[] {-edge, 1};
    }

    void marks(List<Trunk> trunks, List<Mark> marks) {
        double[] shade = shade();
        if (shade[1] - shade[0] > LEAST && shade[1] - shade[0] < 2 - LEAST) {
            Trunks.curves("trunk-shade", trunks.stream().filter(trunk -> trunk.half() > SHADED_PX)
                    .map(trunk -> trunk.strip(shade[0], shade[1], 0)).toList(), 0, marks);
        }
        if (direct && besideDeg != null && Math.abs(besideDeg) < 90) {
            double side = besideDeg >= 0 ? 0.92 : -0.92;
            Trunks.curves("rim", trunks.stream().filter(trunk -> trunk.half() > SHADED_PX).map(trunk -> trunk.edge(side)).toList(),
                    0, marks);
        }
    }
}
