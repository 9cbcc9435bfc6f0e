package understorey.exposure;

/** How long the hand holds a camera still. */
public final class HandHeld {

    private HandHeld() {
    }

    /**
     * Longest hand-held time 2^stops / (focal length × crop), seconds, focal length in mm. Common practice, no
     * source: meant for a print looked at whole and a steady hand; hands differ by two stops either way, and
     * close up, from about a tenth of life size on, all of them do worse.
     *
     * @param crop            1 for full frame
     * @param stabilisedStops of body and lens together; 0 for none
     */
    public static double longestS(double focalMm, double crop, double stabilisedStops) {
        return Math.pow(2, stabilisedStops) / (focalMm * crop);
    }
}
