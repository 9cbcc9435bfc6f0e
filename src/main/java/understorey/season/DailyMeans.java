package understorey.season;

/**
 * Mean temperatures day by day.
 *
 * @param firstDay of the row, on whatever scale of days is in use
 * @param celsius  of each day, °C; not a number where it is missing
 */
public record DailyMeans(int firstDay, double[] celsius) {

    /** °C; not a number where nobody measured. */
    double at(int day) {
        int i = day - firstDay;
        return i < 0 || i >= celsius.length ? Double.NaN : celsius[i];
    }

    /** The last day of the row; one before the first when it is empty. */
    int lastDay() {
        return firstDay + celsius.length - 1;
    }

    /** Mean of the days from one to another, both included, °C; not a number where one is missing. */
    double mean(int from, int to) {
        double sum = 0;
        for (int day = from; day <= to; day++) {
            sum += at(day);
        }
        return sum / (to - from + 1);
    }

    /** The same days counted from another: that day becomes 0. */
    DailyMeans from(int zero) {
        return new DailyMeans(firstDay - zero, celsius);
    }
}
