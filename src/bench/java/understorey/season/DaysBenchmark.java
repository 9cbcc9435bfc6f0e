package understorey.season;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import understorey.plan.Shot;
import understorey.plan.Trip;
import understorey.reading.PlansReader;
import understorey.sky.Interval;
import understorey.sky.SunDay;

/** Sixty days of a trip of ten pictures, warm, one core; and what dawn costs of it where nobody says when to arrive. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
public class DaysBenchmark {

    private Trip trip;
    private Trip undecided;
    private List<LocalDate> days;

    @Setup
    public void read() {
        Trip full = PlansReader.read(Path.of("plans")).trips().stream().filter(one -> one.shots().size() > 4)
                .findFirst().orElseThrow();
        List<Shot> shots = new ArrayList<>(full.shots());
        while (shots.size() < 10) {
            shots.add(full.shots().get(shots.size() % full.shots().size()));
        }
        trip = of(full, shots, true);
        undecided = of(full, shots, false);
        days = LocalDate.of(2027, 4, 10).datesUntil(LocalDate.of(2027, 6, 9)).toList();
    }

    private static Trip of(Trip full, List<Shot> shots, boolean hours) {
        return new Trip(full.title(), full.slug(), null, full.site(), full.when(), hours ? full.arrive() : null,
                hours ? full.leave() : null, full.gear(), List.of(), null, null, List.of(), null,
                shots.subList(0, 10), null);
    }

    @Benchmark
    public DayRanking sixtyDaysOfTenPictures() {
        return DayRanking.of(trip, days);
    }

    @Benchmark
    public DayRanking theSameFromCivilDawn() {
        return DayRanking.of(undecided, days);
    }

    @Benchmark
    public SunDay oneDawn() {
        return SunDay.of(trip.site().position(), Interval.day(days.get(0), trip.site().zone()));
    }
}
