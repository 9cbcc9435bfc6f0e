package understorey.season.model;

import org.jspecify.annotations.Nullable;

/** A model that predicts a season's peak from its temperatures. */
public sealed interface SpringModel {

    /** The first day of a season that it looks at. */
    int from(int season);

    /** The last day that it looks at. */
    int to();

    /** The peak of a season with such a spring, on the season's scale; null if a day is missing or the sum is not reached. */
    @Nullable Prediction peak(int season, DailyMeans spring);

    /** The mean of a window of days, equal in each season. */
    record Window(WindowModel line, int from, int to) implements SpringModel {
        @Override
        public int from(int season) {
            return from;
        }

        @Override
        public @Nullable Prediction peak(int season, DailyMeans spring) {
            double celsius = spring.mean(from, to);
            return Double.isNaN(celsius) ? null : line.at(celsius);
        }
    }

    /** The sum from a date on. */
    record Thermal(ThermalTime sum, SumStart start, int to) implements SpringModel {
        @Override
        public int from(int season) {
            return start.day(season);
        }

        @Override
        public @Nullable Prediction peak(int season, DailyMeans spring) {
            Prediction sinceStart = sum.next(spring.from(from(season)));
            return sinceStart == null ? null : sinceStart.later(from(season));
        }
    }
}
