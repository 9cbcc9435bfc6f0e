package understorey.visit;

/**
 * When a walk ends that begins at some minute, by day, by lamp, or into dawn or dusk: each minute of it covers the share
 * of the way that its light allows. Who sets out later never arrives earlier.
 */
public final class TravelTimes {

    private final int[][] lit;
    private final int[][] dark;
    private final boolean[] night;
    /** Dark minutes before each minute. */
    private final int[] nightBefore;

    /**
     * Walks among some places.
     *
     * @param lit   minutes from place to place by day
     * @param dark  minutes by lamp, no fewer
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

    /** The minute of arriving. */
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

    /** The last minute at which one may set out and arrive by a given one. */
    public int leaveBy(int from, int to, int arriving) {
        int leaving = arriving - lit[from][to];
        while (arrive(from, to, leaving) > arriving) {
            leaving--;
        }
        return leaving;
    }

    /** It is dark at that minute. */
    public boolean night(int minute) {
        return night[Math.max(0, Math.min(night.length - 1, minute))];
    }

    /** Beyond the ends of the day it stays as it is there. */
    private int nightsBefore(int minute) {
        if (minute < 0) {
            return night[0] ? minute : 0;
        }
        int past = minute - night.length;
        return past <= 0 ? nightBefore[minute] : nightBefore[night.length] + (night[night.length - 1] ? past : 0);
    }
}
