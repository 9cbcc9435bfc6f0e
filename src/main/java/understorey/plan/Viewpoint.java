package understorey.plan;

/** Height of the camera: a word, or the height of the lens axis. */
public sealed interface Viewpoint {

    enum Stance implements Viewpoint { STANDING, KNEELING, GROUND }

    /** Height of the lens axis above the ground, metres. */
    record Height(double heightM) implements Viewpoint {
    }
}
