package understorey.kit;

import understorey.reason.Reason;

/** How thick the flowers look, and what another lens or height would make of them. */
public enum CoverReason implements Reason.Kind {
    COVER_PLANNED,
    COVER_LONGER,
    COVER_WIDER,
    COVER_LOWERED
}
