package understorey.kit.camera;

import java.util.List;
import understorey.optics.AngleOfView;
import understorey.plan.Bag;
import understorey.plan.Lens;

/**
 * Angles of view and greatest magnification of a camera of the bag.
 *
 * @param widestViewDeg    horizontal, at the wide end, focused at infinity
 * @param narrowestViewDeg horizontal, at the long end
 * @param magnification    greatest
 */
public record CameraFigures(Camera camera, double shortestEquivalentMm, double longestEquivalentMm,
                            double widestViewDeg, double narrowestViewDeg, double magnification) {

    /** Every body with every lens that fits it, without attachments, in file order. */
    public static List<CameraFigures> of(Bag bag) {
        return Camera.of(bag).stream().filter(camera -> camera.attachment() == null).map(CameraFigures::of).toList();
    }

    private static CameraFigures of(Camera camera) {
        Lens lens = camera.lens();
        double crop = camera.sensor().crop();
        double widthMm = camera.sensor().widthMm();
        double heightMm = camera.sensor().heightMm();
        return new CameraFigures(camera, lens.shortestMm() * crop, lens.longestMm() * crop,
                AngleOfView.of(lens.shortestMm(), widthMm, heightMm).horizontalDeg(),
                AngleOfView.of(lens.longestMm(), widthMm, heightMm).horizontalDeg(),
                Reach.of(camera, lens.longestMm()).alone());
    }
}
