package understorey.brief;

import understorey.reason.Reason;

/** Findings that no single package could make. */
public enum BriefReason implements Reason.Kind {
    /** Several days were offered, and the best of them is planned. */
    BEST_DAY_PLANNED,
    /** The day lies outside the subject's months. */
    OUT_OF_SEASON,
    /** By what is known of this wood the flowers are hardly full on the day. */
    HARDLY_IN_FLOWER,
    MONTHS_UNKNOWN,
    /** Nobody described the trees: open ground is assumed. */
    CANOPY_UNKNOWN,
    CLOCKS_GO_FORWARD,
    CLOCKS_GO_BACK,
    SUN_DOES_NOT_RISE,
    SUN_DOES_NOT_SET,
    /** Nobody said what the sky will be. */
    SKY_UNKNOWN,
    /** The forecast does not reach the time of this picture, and no word on the sky stands in. */
    FORECAST_SILENT,
    /** A clearing is of no use without the height of the trees round it. */
    CLEARING_WITHOUT_HEIGHT,
    /** The light wished for is poor at the time planned, and better at another. */
    LIGHT_POOR_NOW,
    /** It is poor all day. */
    LIGHT_POOR_ALL_DAY,
    SHOT_CANNOT,
    SHOT_COMPROMISE,
    /** The lens fits, but hand or wind leave the time too long. */
    SHOT_AT_ITS_LIMIT,
    /** The tilt leaves nothing of the carpet's ground in the frame. */
    NO_GROUND_IN_FRAME
}
