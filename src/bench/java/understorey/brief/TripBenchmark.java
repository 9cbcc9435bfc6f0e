package understorey.brief;

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

/**
 * A trip of six pictures, from the plan that was read to the brief with its drawings, all on one core: warm. Most of it are
 * the orders of the day, for the sky expected and for others; {@link PicturesBenchmark} and {@link SketchBenchmark} time
 * the pictures alone.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-XX:ActiveProcessorCount=1")
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
public class TripBenchmark {

    private Trip trip;

    @Setup
    public void read() {
        trip = SixPictures.trip();
    }

    @Benchmark
    public Brief brief() {
        return Planner.brief(trip);
    }
}
