package understorey.light;

import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.DirectionAdvice;
import understorey.optics.Direction;
import understorey.optics.Projection;
import understorey.sky.Interval;
import understorey.sky.SunAt;

/**
 * Direction of the sun relative to the axis of a picture, even if land or cloud hides it.
 *
 * @param bearingDeg          of the sun from the axis, −180 to 180, positive to the right
 * @param angleDeg            in space between axis and sun: 0 looking into it, 180 with it behind the camera
 * @param apparentAltitudeDeg of the sun, as the air lifts it
 * @param side                where its light comes from
 * @param part                of the frame with the sun in it; null if it is outside, or the frame is unknown
 * @param offFrameDeg         in space from the frame's nearest edge, 0 inside; null if the frame is unknown
 */
public record SunDirection(double bearingDeg, double angleDeg, double apparentAltitudeDeg, Side side, @Nullable Part part,
        @Nullable Double offFrameDeg) {

    /** Apparent altitude below which not even the upper edge of the disc is seen. */
    private static final double DOWN_DEG = -0.3;
    /** Angle from the frame within which sun on the front lens flares: common practice, no source. */
    private static final double FLARE_DEG = 15;

    /** The frame by thirds, from the top left. */
    public enum Part {
        TOP_LEFT, TOP, TOP_RIGHT, LEFT, MIDDLE, RIGHT, BOTTOM_LEFT, BOTTOM, BOTTOM_RIGHT;

        static Part of(Projection.Place place) {
            return values()[3 * third(-place.y()) + third(place.x())];
        }

        private static int third(double along) {
            return along < -1 / 3.0 ? 0 : along <= 1 / 3.0 ? 1 : 2;
        }
    }

    /** Position of the sun relative to the frame. */
    public enum Where { IN_FRAME, JUST_OUTSIDE, AWAY }

    private enum Hand { LEFT, RIGHT }

    /** A stretch of the day in which the light comes from one side. */
    public record Stretch(Side side, Interval time) {
    }

    /** Direction for a camera with a known frame; null if the sun is down, below −0.3° of apparent altitude. */
    public static @Nullable SunDirection of(SunAt sun, Projection camera) {
        double apparentDeg = sun.apparentAltitudeDeg();
        SunDirection plain = of(sun, camera.axis());
        if (plain == null) {
            return null;
        }
        Projection.Place place = camera.place(sun.azimuthDeg(), apparentDeg);
        Part part = place != null && place.inFrame() ? Part.of(place) : null;
        return new SunDirection(plain.bearingDeg, plain.angleDeg, apparentDeg, plain.side, part,
                camera.offFrameDeg(sun.azimuthDeg(), apparentDeg));
    }

    /** Direction for a level axis with only a bearing; null if the sun is down. */
    public static @Nullable SunDirection of(SunAt sun, double facingDeg) {
        return of(sun, new Direction(facingDeg, 0));
    }

    private static @Nullable SunDirection of(SunAt sun, Direction axis) {
        double apparentDeg = sun.apparentAltitudeDeg();
        if (apparentDeg < DOWN_DEG) {
            return null;
        }
        double bearingDeg = Math.IEEEremainder(sun.azimuthDeg() - axis.bearingDeg(), 360);
        return new SunDirection(bearingDeg, axis.angleDeg(new Direction(sun.azimuthDeg(), apparentDeg)), apparentDeg,
                Side.of(bearingDeg, apparentDeg), null, null);
    }

    /**
     * Stretches of the day in which the light comes from one side, in order, while the sun is above the skyline. Their
     * ends are right to a few seconds on a track of 15 minutes.
     *
     * @param track  even steps over the day, three or more
     * @param sunlit in order of time, none over another
     */
    public static List<Stretch> over(List<SunAt> track, double facingDeg, List<Interval> sunlit) {
        return new SidesOfDay(track, facingDeg).within(sunlit);
    }

    /** Whether the sun is in the frame; null if the frame is unknown. */
    public @Nullable Where where() {
        if (offFrameDeg == null) {
            return null;
        }
        if (offFrameDeg == 0) {
            return Where.IN_FRAME;
        }
        return offFrameDeg <= FLARE_DEG ? Where.JUST_OUTSIDE : Where.AWAY;
    }

    /**
     * Advice on where the light comes from and whether it flares. A sun behind the skyline does neither.
     *
     * @param clear  the sun is above the skyline
     * @param shines cloud and leaves let it through
     */
    public List<Advice> reasons(boolean clear, boolean shines) {
        if (!clear) {
            return List.of(new DirectionAdvice.SunHiddenByLand(Math.abs(bearingDeg), hand()));
        }
        if (!shines) {
            return List.of(new DirectionAdvice.SunVeiled(Math.abs(bearingDeg), hand()));
        }
        if (part != null) {
            return List.of(light(), new DirectionAdvice.SunInFrame(part));
        }
        return offFrameDeg != null && where() == Where.JUST_OUTSIDE
                ? List.of(light(), new DirectionAdvice.SunNearFrame(Math.max(1, offFrameDeg))) : List.of(light());
    }

    private Advice light() {
        double up = Math.max(0, apparentAltitudeDeg);
        return switch (side) {
            case BACK -> new DirectionAdvice.SunAhead(angleDeg, up);
            case SIDE -> new DirectionAdvice.SunBeside(Math.abs(bearingDeg), hand(), up);
            case FRONT -> new DirectionAdvice.SunBehindYou(up);
            case OVERHEAD -> new DirectionAdvice.SunOverhead(up);
        };
    }

    private Hand hand() {
        return bearingDeg < 0 ? Hand.LEFT : Hand.RIGHT;
    }
}
