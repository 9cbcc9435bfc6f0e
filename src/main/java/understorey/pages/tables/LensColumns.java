package understorey.pages.tables;

import static understorey.pages.tables.Column.data;
import static understorey.pages.words.Words.ifKnown;

import java.util.List;
import understorey.advice.Advice;
import understorey.advice.Measure;
import understorey.brief.TimedShot;
import understorey.kit.CoverChoice;
import understorey.kit.LensFit;
import understorey.optics.AngleOfView;
import understorey.pages.words.LensWords;
import understorey.plan.Filter;
import understorey.plan.Support;

/** The lenses of a bag on one picture, and how dense the flowers look through each. */
public final class LensColumns {

    /** What takes the picture. */
    public static final List<Column<LensFit>> CAMERA = List.of(
            data("body", fit -> fit.camera().body().name()),
            data("lens", fit -> fit.camera().lens().name()),
            data("support", fit -> ifKnown(fit.support(), Support::name)),
            data("attachment", fit -> ifKnown(fit.camera().attachment(), Filter::name)),
            data("crop_times", Measure.RATIO, LensFit::cropTimes));

    /** On the lens, nearest first. */
    public static final Column<LensFit> FILTERS = data("filters", fit -> fit.filters().stream().map(Filter::name).toList());

    private static final List<Column<AngleOfView>> VIEW = List.of(
            data("angle_of_view_deg.horizontal", Measure.DEGREES, AngleOfView::horizontalDeg),
            data("angle_of_view_deg.vertical", Measure.DEGREES, AngleOfView::verticalDeg),
            data("angle_of_view_deg.diagonal", Measure.DEGREES, AngleOfView::diagonalDeg));

    /** How it frames. */
    public static final List<Column<LensFit>> FRAMING = Column.all(
            List.of(data("focal_mm", Measure.MILLIMETRES, LensFit::focalMm),
                    data("equivalent_mm", Measure.MILLIMETRES, LensFit::equivalentMm)),
            Column.part(VIEW, LensFit::view),
            List.of(data("tilt_deg", Measure.DEGREES, LensFit::tiltDeg),
                    data("distance_m", Measure.METRES, LensFit::distanceM),
                    data("frame_width_m", Measure.METRES, LensFit::frameWidthM),
                    data("frame_height_m", Measure.METRES, LensFit::frameHeightM),
                    data("magnification", Measure.MAGNIFICATION, LensFit::magnification)));

    private static final List<Column<LensFit>> TRIED = Column.all(
            List.of(Column.text("Lens", Measure.WORD, (fit, wording) -> LensWords.cameraAndFocal(fit)),
                    Column.of("verdict", "In one frame", Measure.WORD, LensFit::verdict)),
            CAMERA, FRAMING,
            List.of(FILTERS, Column.of("reasons", "Why", Measure.WORD, LensFit::reasons,
                    (fit, wording) -> wording.of(why(fit), Measure.WORD))));

    /** Lenses compared by the cover of flowers, by rising focal length. */
    public static final List<Column<CoverChoice>> COVER = List.of(
            data("lens", choice -> choice.fit().camera().lens().name()),
            data("equivalent_mm", Measure.MILLIMETRES, CoverChoice::equivalentMm),
            data("planned", CoverChoice::planned),
            data("nearest_m", Measure.METRES, CoverChoice::nearestM),
            data("farthest_m", Measure.METRES, choice -> choice.typical().farthestM()),
            data("cover", Measure.SHARE, choice -> choice.typical().cover()),
            data("cover_near", Measure.SHARE, choice -> choice.typical().near()),
            data("cover_middle", Measure.SHARE, choice -> choice.typical().middle()),
            data("cover_far", Measure.SHARE, choice -> choice.typical().far()),
            data("cover_thick", Measure.SHARE, choice -> choice.thick().cover()),
            data("ground_share", Measure.SHARE, choice -> choice.typical().ground()),
            data("flower_share", Measure.SHARE, choice -> choice.typical().flowers()),
            data("trunk_scale", Measure.SHARE, CoverChoice::trunkScale));

    private LensColumns() {
    }

    /** The lenses tried, the best first; without those that need an attachment, except for the best. */
    public static Table<LensFit> tried(TimedShot shot) {
        return new Table<>(TRIED, shot.fit().tried().stream().filter(fit -> fit.camera().attachment() == null || fit == shot.fit().best()).toList());
    }

    private static Advice why(LensFit fit) {
        return fit.objection() != null ? fit.objection() : fit.reasons().get(0);
    }
}
