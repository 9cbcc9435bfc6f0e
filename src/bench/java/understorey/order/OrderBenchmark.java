package understorey.order;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import understorey.order.Schedule;
import understorey.order.SmallTrips;
import understorey.order.Visit;

/** The order of the day without a pin, exact for six and twelve pictures over eight spots and beyond twelve by moving them: warm, one core. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class OrderBenchmark {

    @Param({"6", "12", "16"})
    public int pictures;

    @Param({"240", "720"})
    public int minutes;

    private Visit visit;

    @Setup
    public void makeUp() {
        visit = SmallTrips.free(new SmallTrips(6).visit(pictures, minutes, 8));
    }

    @Benchmark
    public Object order() {
        return Schedule.best(visit);
    }
}
