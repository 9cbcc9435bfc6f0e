package understorey.scene.sketch;

/** How much ink a thing gets by its blur: full where it is sharp, less where it is soft, least where it dissolves. */
enum Tone {
    SHARP(""), SOFT("-soft"), FAINT("-faint");

    /** A blur wider than this share of the frame leaves no outline: our choice, by eye. */
    private static final double NO_OUTLINE = 0.022;

    final String suffix;

    Tone(String suffix) {
        this.suffix = suffix;
    }

    static Tone of(Focus focus, double depthM) {
        return focus.sharp(depthM) ? SHARP : focus.blurShare(depthM) < NO_OUTLINE ? SOFT : FAINT;
    }
}
