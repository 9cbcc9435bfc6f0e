package understorey.brief;

import java.nio.file.Path;
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
import understorey.plan.Trip;
import understorey.reading.PlansReader;
import understorey.share.Sharing;

/** The fullest trip of the demo, from the plan that was read to the brief with its drawings: warm, one core. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
public class TripBenchmark {

    private Trip trip;

    @Setup
    public void read() {
        List<Trip> trips = PlansReader.read(Path.of("plans")).trips();
        trip = Sharing.forAudience(trips.stream().filter(one -> one.shots().size() > 4).findFirst().orElseThrow());
    }

    @Benchmark
    public Brief brief() {
        return Planner.brief(trip);
    }
}
