package understorey.packing;

import understorey.reason.Reason;

/** What can hurt someone or the place. Local rules and signs always come first. */
public enum Caution implements Reason.Kind {
    LOCAL_RULES,
    DARK_ON_THE_WAY_IN,
    DARK_ON_THE_WAY_OUT,
    DARK_ALL_THE_TIME,
    KEEP_TO_THE_PATHS,
    TICKS,
    BRANCHES_IN_WIND,
    /** Gusts from 14 m/s: twigs and branches break. */
    GUSTS_BREAK_BRANCHES,
    /** Gusts from 20 m/s: stay away. */
    GUSTS_TOO_STRONG,
    SUN_THROUGH_A_LENS,
    TELL_SOMEONE,
    /** What the catalogue says of a subject. */
    CARE_FOR_SUBJECT
}
