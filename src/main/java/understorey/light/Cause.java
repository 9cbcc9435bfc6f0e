package understorey.light;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.LightAdvice;

/** Cause that most decides whether the light of a moment is what a picture wishes for. */
enum Cause {
    SUN_IS_LOW, SUN_TOO_HIGH, SUN_NOT_YET_UP, SUN_BEHIND_LAND, SUN_BEHIND_CLOUD, FLECKS_TOO_FEW, AHEAD_AS_WISHED,
    ASIDE_AS_WISHED, BEHIND_YOU_AS_WISHED, SUN_OFF_THE_SIDE_WISHED, FACE_INTO_SUN, FACE_ACROSS_SUN, FACE_AWAY_FROM_SUN,
    SUN_TOO_STEEP, SUN_IS_HIGH, SUN_NOT_HIGH, SOFT_WITHOUT_SUN, SOFT_UNDER_CLOUD, SOFT_UNDER_LEAVES, HARSH, MIST_LIKELY,
    MIST_POSSIBLE, MIST_UNLIKELY, MIST_NOT_JUDGED, DROPS_THERE, DROPS_DRYING, DROPS_GONE, DROPS_NOT_JUDGED,
    TWILIGHT_NOW, NOT_TWILIGHT, LIGHT_GONE;

    private static final double HALF_CIRCLE = 180;

    /** True if the sun itself is hidden by the land or below the horizon. */
    boolean sunHidden() {
        return this == SUN_BEHIND_LAND || this == SUN_NOT_YET_UP;
    }

    /**
     * The cause at a moment, in figures.
     *
     * @param facingDeg bearing of the lens axis; null for a picture without one
     */
    Advice advice(Moment moment, @Nullable Double facingDeg) {
        double altitude = moment.sun().altitudeDeg();
        double bearing = moment.sun().azimuthDeg();
        return switch (this) {
            case SUN_IS_LOW -> new LightAdvice.SunIsLow(altitude);
            case SUN_TOO_HIGH -> new LightAdvice.SunTooHigh(altitude);
            case SUN_NOT_YET_UP -> new LightAdvice.SunNotYetUp();
            case SUN_BEHIND_LAND -> new LightAdvice.SunBehindLand();
            case SUN_BEHIND_CLOUD -> new LightAdvice.SunBehindCloud(moment.okta());
            case FLECKS_TOO_FEW -> new LightAdvice.FlecksTooFew(moment.fleckShare());
            case AHEAD_AS_WISHED -> new LightAdvice.AheadAsWished(offAxisDeg(moment, facingDeg));
            case ASIDE_AS_WISHED -> new LightAdvice.AsideAsWished(offAxisDeg(moment, facingDeg));
            case BEHIND_YOU_AS_WISHED -> new LightAdvice.BehindYouAsWished(offAxisDeg(moment, facingDeg));
            case SUN_OFF_THE_SIDE_WISHED -> new LightAdvice.SunOffTheSideWished(offAxisDeg(moment, facingDeg));
            case FACE_INTO_SUN -> new LightAdvice.FaceIntoSun(bearing);
            case FACE_ACROSS_SUN -> new LightAdvice.FaceAcrossSun((bearing + 90) % 360);
            case FACE_AWAY_FROM_SUN -> new LightAdvice.FaceAwayFromSun((bearing + HALF_CIRCLE) % 360);
            case SUN_TOO_STEEP -> new LightAdvice.SunTooSteep(altitude);
            case SUN_IS_HIGH -> new LightAdvice.SunIsHigh(altitude);
            case SUN_NOT_HIGH -> new LightAdvice.SunNotHigh(altitude);
            case SOFT_WITHOUT_SUN -> new LightAdvice.SoftWithoutSun();
            case SOFT_UNDER_CLOUD -> new LightAdvice.SoftUnderCloud(moment.okta());
            case SOFT_UNDER_LEAVES -> new LightAdvice.SoftUnderLeaves();
            case HARSH -> new LightAdvice.Harsh(moment.contrastStops());
            case MIST_LIKELY -> new LightAdvice.MistLikely();
            case MIST_POSSIBLE -> new LightAdvice.MistPossible();
            case MIST_UNLIKELY -> new LightAdvice.MistUnlikely();
            case MIST_NOT_JUDGED -> new LightAdvice.MistNotJudged();
            case DROPS_THERE -> new LightAdvice.DropsThere();
            case DROPS_DRYING -> new LightAdvice.DropsDrying();
            case DROPS_GONE -> new LightAdvice.DropsGone();
            case DROPS_NOT_JUDGED -> new LightAdvice.DropsNotJudged();
            case TWILIGHT_NOW -> new LightAdvice.TwilightNow();
            case NOT_TWILIGHT -> new LightAdvice.NotTwilight();
            case LIGHT_GONE -> new LightAdvice.LightGone(moment.floorEv());
        };
    }

    /** Only a picture with a bearing has one of the causes that need it. */
    private static double offAxisDeg(Moment moment, @Nullable Double facingDeg) {
        return Wish.offAxisDeg(moment, Objects.requireNonNull(facingDeg));
    }
}
