package understorey.brief;

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
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import understorey.plan.Trip;
import understorey.scene.Drawing;
import understorey.scene.sketch.Air;
import understorey.scene.sketch.Setup;
import understorey.scene.sketch.SideView;
import understorey.scene.sketch.Stage;
import understorey.scene.sketch.Surroundings;
import understorey.scene.sketch.ViewfinderSketch;

/** The drawings alone of six pictures, a sketch and a side view each: warm, one core. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class SketchBenchmark {

    private static final double F_NUMBER = 8;

    private final List<Setup> setups = new ArrayList<>();

    /** At one aperture, under the canopy of the spot, sharp from half the distance framed to twice it. */
    @org.openjdk.jmh.annotations.Setup
    public void read() {
        Trip trip = SixPictures.trip();
        for (TimedShot shot : Planner.brief(trip).timed()) {
            if (shot.fit().best() != null) {
                double distanceM = shot.fit().best().distanceM();
                setups.add(new Setup(shot.fit().best(), F_NUMBER, 0.5 * distanceM, 2 * distanceM, null,
                        trip.site().canopyAt(trip.site().spot(shot.intent().shot().spot())), null, null,
                        Air.CLEAR, Stage.FULL, Surroundings.BARE));
            }
        }
    }

    @Benchmark
    public List<Drawing> drawings() {
        List<Drawing> drawings = new ArrayList<>();
        for (Setup setup : setups) {
            drawings.add(ViewfinderSketch.of(setup).drawing(fact -> ""));
            drawings.add(SideView.of(setup).drawing(fact -> ""));
        }
        return drawings;
    }
}
