package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.scene.Drawing.Curves;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.sky.SunAt;

/**
 * Shadows of trunks on the ground where the sun reaches it: strips as wide as the trunk that run away from the sun, as long as
 * the tree is high over the tangent of the sun's altitude, but for the far part that the crowns hide.
 */
final class Shadows {

    private static final double MOST_M = 26;
    private static final double LEAST_DEPTH_M = 0.6;
    private static final double LEAST_ALTITUDE_DEG = 1;

    private final Perspective perspective;
    private final @Nullable SunAt sun;
    private final double towardsRad;
    private final List<List<Point>> outlines = new ArrayList<>();

    Shadows(Setup setup, Perspective perspective) {
        this.perspective = perspective;
        Double facingDeg = setup.fit().intent().shot().facingDeg();
        sun = facingDeg != null && setup.air().sunlit() ? setup.sun() : null;
        towardsRad = sun == null || facingDeg == null ? 0 : Math.toRadians(sun.azimuthDeg() - facingDeg + 180);
    }

    void add(double rightM, double aheadM, double thickM, double highM) {
        if (sun == null || sun.apparentAltitudeDeg() < LEAST_ALTITUDE_DEG) {
            return;
        }
        double reach = Math.min(MOST_M, highM / Math.tan(Math.toRadians(sun.apparentAltitudeDeg())));
        double toRight = Math.sin(towardsRad) * reach;
        double toAhead = Math.cos(towardsRad) * reach;
        double share = toAhead < 0 ? Math.min(1, Math.max(0, (LEAST_DEPTH_M - aheadM) / toAhead)) : 1;
        double asideX = Math.cos(towardsRad) * thickM / 2;
        double asideY = -Math.sin(towardsRad) * thickM / 2;
        List<Point> corners = List.of(ground(rightM - asideX, aheadM - asideY), ground(rightM + asideX, aheadM + asideY),
                ground(rightM + asideX + share * toRight, aheadM + asideY + share * toAhead),
                ground(rightM - asideX + share * toRight, aheadM - asideY + share * toAhead));
        List<Point> run = new ArrayList<>(List.of(corners.get(0)));
        for (int i = 1; i <= corners.size(); i++) {
            Point from = corners.get(i - 1);
            Point to = corners.get(i % corners.size());
            run.add(new Point(Math.round((from.x() + to.x()) / 2), Math.round((from.y() + to.y()) / 2)));
            run.add(to);
        }
        outlines.add(run);
    }

    private Point ground(double right, double ahead) {
        double depth = Math.max(0.3, perspective.depthM(ahead, 0));
        return new Point(Math.round(Math.max(-900, Math.min(1400, perspective.x(right, depth)))),
                Math.round(Math.max(-50, Math.min(900, perspective.y(ahead, 0, depth)))));
    }

    List<Mark> marks() {
        return outlines.isEmpty() ? List.of() : List.of(new Curves("shadow", 0, outlines));
    }
}
