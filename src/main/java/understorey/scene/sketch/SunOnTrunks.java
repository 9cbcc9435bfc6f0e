package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;

/**
 * Which side of a trunk is lit. A trunk is an upright cylinder and the sun far away: of its width, from −1 on the left to 1
 * on the right, a sun that is φ to the right of the view lights what lies beyond cos φ (geometry: the normal of the bark
 * faces the sun). Without a sun the light comes from all around, and a trunk is a little darker on one side.
 */
record SunOnTrunks(@Nullable Double besideDeg, boolean direct) {

    /** A shade narrower than this share of the width is not drawn. */
    private static final double LEAST = 0.08;
    private static final double SHADED_PX = 2.5;
    private static final double BARK_PX = 7;

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

    void marks(List<Trunk> trunks, int tone, List<Mark> marks) {
        double[] shade = shade();
        if (shade[1] - shade[0] > LEAST && shade[1] - shade[0] < 2 - LEAST) {
            Trunks.curves("trunk-shade", trunks.stream().filter(trunk -> trunk.half() > SHADED_PX)
                    .map(trunk -> trunk.strip(shade[0], shade[1], 0)).toList(), 0, marks);
        }
        List<List<Point>> cracks = new ArrayList<>();
        for (Trunk trunk : trunks) {
            for (int i = 0; trunk.half() > BARK_PX && i < Math.min(9, trunk.half() * 0.5); i++) {
                double turn = i * 2.39996 + trunk.bow() * 9;
                cracks.add(trunk.crack(0.9 * Math.sin(turn), 0.05 + 0.8 * (turn % 1), 0.05 + 0.1 * (turn * 3 % 1)));
            }
        }
        Trunks.curves("bark", cracks, 0, marks);
        if (direct && besideDeg != null && Math.abs(besideDeg) < 90) {
            double side = besideDeg >= 0 ? 0.92 : -0.92;
            Trunks.curves("rim", trunks.stream().filter(trunk -> trunk.half() > SHADED_PX).map(trunk -> trunk.edge(side)).toList(),
                    0, marks);
        }
    }
}
