package understorey.visit;

/**
 * Time-dependent travel times: when a walk ends that begins at some minute, by day, by head torch, or through dawn or dusk.
 * Each minute covers the share of the way that its light allows. A later start never arrives earlier.
 */
public final class TravelTimes {

    private final int[][] lit;
    private final int[][] dark;
    private final boolean[] night;
    /** Dark minutes before each minute. */
    private final int[] nightBefore;

    /**
     * Travel times between some places.
     *
     * @param lit   minutes from place to place by day
     * @param dark  minutes by head torch, no fewer
     * @param night of every minute of the day, whether it is dark
     */
    public TravelTimes(int[][] lit, int[][] dark, boolean[] night) {
        this.lit = lit;
        this.dark = dark;
        this.night = night;
        this.nightBefore = new int[night.length + 1];
        for (int i = 0; i < night.length; i++) {
            nightBefore[i + 1] = nightBefore[i] + (night[i] ? 1 : 0);
        }
    }

    /** Minute of arriving. */
    public int arrive(int from, int to, int leaving) {
        int byDay = lit[from][to];
        int byNight = dark[from][to];
        if (byDay == 0 || byDay == byNight || nightsBefore(leaving + byDay) == nightsBefore(leaving)) {
            return leaving + byDay;
        }
        int left = byDay * byNight;
        int minute = leaving;
        while (left > 0) {
            left -= night(minute) ? byDay : byNight;
            minute++;
        }
        return minute;
    }

    /** Minutes from place to place by day. */
    public int byDay(int from, int to) {
        return lit[from][to];
    }

    /** Minutes from place to place by head torch. */
    public int byHeadTorch(int from, int to) {
        return dark[from][to];
    }

    /** Last minute to leave and still arrive by a given minute. */
    public int leaveBy(int from, int to, int arriving) {
        int leaving = arriving - lit[from][to];
        while (arrive(from, to, leaving) > arriving) {
            leaving--;
        }
        return leaving;
    }

    /** Whether it is dark at a minute. */
    public boolean night(int minute) {
        return night[Math.max(0, Math.min(night.length - 1, minute))];
    }

    /** Dark minutes before a minute; beyond the ends of the day the light does not change. */
    private int nightsBefore(int minute) {
        if (minute < 0) {
            return night[0] ? minute : 0;
        }
        int past = minute - night.length;
        return past <= 0 ? nightBefore[minute] : nightBefore[night.length] + (night[night.length - 1] ? past : 0);
    }
}
