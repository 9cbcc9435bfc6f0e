package understorey.plan;

/** The light that the author hopes for. */
public enum LightWish {
    LOW_SUN(true), BACKLIGHT(true), SIDELIGHT(true), FRONTLIGHT(true), OVERHEAD(true),
    SOFT(false), MIST(false), AFTER_RAIN(false), TWILIGHT(false);

    private final boolean needsSun;

    LightWish(boolean needsSun) {
        this.needsSun = needsSun;
    }

    /** Whether the sun itself must shine on the subject. */
    public boolean needsSun() {
        return needsSun;
    }
}
