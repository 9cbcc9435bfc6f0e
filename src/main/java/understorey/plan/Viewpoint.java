package understorey.plan;

/** From how high: in words, or the height of the lens axis. */
public sealed interface Viewpoint {

    enum Stance implements Viewpoint { STANDING, KNEELING, GROUND }

    /** Lens axis above the ground, metres. */
    record Height(double heightM) implements Viewpoint {
    }
}
