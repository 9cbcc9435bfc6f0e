package understorey.kit;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import understorey.plan.Frame;
import understorey.plan.Orientation;
import understorey.plan.Role;
import understorey.plan.Sharp;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.Spot;
import understorey.plan.Subject;
import understorey.plan.Viewpoint;

/**
 * One intended picture with nothing left open: what the author wrote, and the defaults for the rest.
 *
 * <p>The defaults are common practice, no source: a flower floor from standing height at 50 mm, the way
 * in from the knees at 28 mm, one plant at half the frame's height, one head at six tenths of it.
 *
 * @param focalEquivalentMm full-frame equivalent; null if the frame decides
 * @param frame             null if the focal length decides
 * @param riseDeg           of the ground ahead, degrees; negative where it falls, 0 for level ground
 * @param assumed           the names, as in the plan's format, of what the author left out, in one order always
 */
public record Intent(Shot shot, Role role, Viewpoint viewpoint, Orientation orientation, Sharp sharp,
                     @Nullable Double focalEquivalentMm, @Nullable Frame frame, boolean polariser, Duration duration, int priority,
                     double riseDeg, Set<String> assumed) {

    static final double STANDING_M = 1.5;
    static final double KNEELING_M = 0.9;
    static final double GROUND_M = 0.15;

    private static final Duration DURATION = Duration.ofMinutes(15);
    private static final double FLOOR_EQUIVALENT_MM = 50;
    private static final double APPROACH_EQUIVALENT_MM = 28;
    private static final double LOW_EQUIVALENT_MM = 20;
    static final double DETAIL_FILLS = 0.5;
    /** Share of the frame's shorter side that one flower head takes, with a margin around it: common practice, no source. */
    public static final double HEAD_FILLS = 0.6;
    private static final double UNKNOWN_HEAD_M = 0.04;
    static final double UNKNOWN_PLANT_M = 0.3;

    /**
     * The intents of all shots; a first shot without a role opens the story, any other is an extra.
     *
     * @param site whose spots may slope; null for level ground everywhere
     */
    public static List<Intent> of(List<Shot> shots, @Nullable Site site) {
        boolean opened = shots.stream().anyMatch(shot -> shot.role() == Role.OPENING);
        List<Intent> intents = new ArrayList<>();
        for (Shot shot : shots) {
            Spot spot = site == null ? null : site.spot(shot.spot());
            intents.add(of(shot, intents.isEmpty() && !opened ? Role.OPENING : Role.EXTRA,
                    CoverTrade.alongViewDeg(spot == null ? null : spot.slope(), shot.facingDeg())));
        }
        return List.copyOf(intents);
    }

    private static Intent of(Shot shot, Role otherwise, double riseDeg) {
        Set<String> assumed = new LinkedHashSet<>();
        Role role = or(shot.role(), otherwise, "role", assumed);
        Viewpoint viewpoint = or(shot.viewpoint(), viewpoint(role, shot, riseDeg), "viewpoint", assumed);
        Orientation orientation = or(shot.orientation(), Orientation.LANDSCAPE, "orientation", assumed);
        Frame frame = shot.frame();
        Double focal = shot.focalEquivalentMm();
        if (frame == null && (focal == null || shot.sharp() instanceof Sharp.Depth)) {
            if (role == Role.DETAIL || role == Role.CLOSING || shot.sharp() instanceof Sharp.Depth) {
                frame = frame(role, shot.subject(), orientation);
                assumed.add("frame");
            } else {
                focal = viewEquivalentMm(role, viewpoint);
                assumed.add("focal_equivalent");
            }
        }
        if (shot.spot() == null) {
            assumed.add("spot");
        }
        if (shot.tiltDeg() == null) {
            assumed.add("tilt");
        }
        Sharp sharp = or(shot.sharp(), new ProposedSharp(shot, viewpoint, orientation, riseDeg).of(role, frame, focal), "sharp", assumed);
        return new Intent(shot, role, viewpoint, orientation, sharp, focal, frame,
                or(shot.polariser(), false, "polariser", assumed),
                or(shot.duration(), DURATION, "duration", assumed),
                or(shot.priority(), 2, "priority", assumed), riseDeg, Collections.unmodifiableSet(assumed));
    }

    /** The focal length of a picture that the frame does not decide. */
    double givenEquivalentMm() {
        return Objects.requireNonNull(focalEquivalentMm, "the frame decides");
    }

    /**
     * Focal length for a view, full-frame equivalent: 50 mm for a carpet, 28 mm for the way in; from below the knees evenly
     * less, to 20 mm for the one flower that dominates from the ground. Common practice, no source.
     */
    static double viewEquivalentMm(Role role, Viewpoint viewpoint) {
        double lowered = Math.max(GROUND_M, Math.min(KNEELING_M, nominalHeightM(viewpoint))) / KNEELING_M;
        double kneelingMm = role == Role.APPROACH ? APPROACH_EQUIVALENT_MM : FLOOR_EQUIVALENT_MM;
        return kneelingMm * Math.pow(lowered, Math.log(kneelingMm / LOW_EQUIVALENT_MM) / Math.log(KNEELING_M / GROUND_M));
    }

    private static <T> T or(@Nullable T written, T otherwise, String name, Set<String> assumed) {
        if (written == null) {
            assumed.add(name);
        }
        return written == null ? otherwise : written;
    }

    private static Viewpoint viewpoint(Role role, Shot shot, double riseDeg) {
        Double plantM = shot.subject().heightM();
        return Overhead.isOverhead(shot, riseDeg) ? Viewpoint.Stance.STANDING : switch (role) {
            case OPENING, EXTRA -> Viewpoint.Stance.STANDING;
            case APPROACH -> Viewpoint.Stance.KNEELING;
            case DETAIL, CLOSING -> isScene(shot) ? Viewpoint.Stance.KNEELING
                    : plantM == null ? Viewpoint.Stance.GROUND : new Viewpoint.Height(plantM);
        };
    }

    /** True for a frame of plants in their place, not of one: common practice, no source. */
    private static boolean isScene(Shot shot) {
        return shot.frame() != null && shot.frame().widthM() != null && shot.frame().widthM() > ProposedSharp.SCENE_M;
    }

    private static Frame frame(Role role, Subject subject, Orientation orientation) {
        if (role != Role.CLOSING) {
            return subject.heightM() == null
                    ? new Frame(null, UNKNOWN_PLANT_M / DETAIL_FILLS, null, null)
                    : new Frame(null, null, DETAIL_FILLS, null);
        }
        double head = subject.headWidthMm() == null ? UNKNOWN_HEAD_M : subject.headWidthMm() / 1000;
        return orientation == Orientation.LANDSCAPE ? new Frame(null, head / HEAD_FILLS, null, null)
                : new Frame(head / HEAD_FILLS, null, null, null);
    }

    static double nominalHeightM(Viewpoint viewpoint) {
        if (viewpoint instanceof Viewpoint.Height height) {
            return height.heightM();
        }
        return switch ((Viewpoint.Stance) viewpoint) {
            case STANDING -> STANDING_M;
            case KNEELING -> KNEELING_M;
            case GROUND -> GROUND_M;
        };
    }

    /** Height of the picture at the subject, metres, for a frame that is not given by its width. */
    static double heightM(Frame frame, Subject subject) {
        if (frame.heightM() != null) {
            return frame.heightM();
        }
        double plant = subject.heightM() == null ? UNKNOWN_PLANT_M : subject.heightM();
        return plant / Objects.requireNonNull(frame.fills(), "a frame has a width, a height or a share");
    }
}
