package understorey.plan;

/** The light that the author hopes for. */
public enum LightWish { LOW_SUN, BACKLIGHT, SIDELIGHT, FRONTLIGHT, OVERHEAD, SOFT, MIST, AFTER_RAIN, TWILIGHT }
