package understorey.season.model;

/**
 * Mean temperatures day by day.
 *
 * @param firstDay of the row, on any scale of days
 * @param celsius  of each day, °C; not a number if it is missing
 */
public record DailyMeans(int firstDay, double[] celsius) {

    /** Mean temperature of a day, °C; not a number without a measurement. */
    public double at(int day) {
        int i = day - firstDay;
        return i < 0 || i >= celsius.length ? Double.NaN : celsius[i];
    }

    /** The last day of the row; the day before the first if it is empty. */
    public int lastDay() {
        return firstDay + celsius.length - 1;
    }

    /** Mean of the days from one to another, both included, °C; not a number if one is missing. */
    public double mean(int from, int to) {
        double sum = 0;
        for (int day = from; day <= to; day++) {
            sum += at(day);
        }
        return sum / (to - from + 1);
    }

    /** These days counted from another day, which becomes 0. */
    DailyMeans from(int zero) {
        return new DailyMeans(firstDay - zero, celsius);
    }
}
