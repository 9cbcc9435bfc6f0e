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
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import understorey.exposure.Conditions;
import understorey.exposure.Exposure;
import understorey.exposure.Metering;
import understorey.kit.CoverTrade;
import understorey.kit.Darkening;
import understorey.kit.Intent;
import understorey.kit.ShotFit;
import understorey.kit.SmallestBag;
import understorey.light.LightAt;
import understorey.plan.Trip;
import understorey.visit.ExpectedSky;
import understorey.weather.Weather;

/**
 * What is worked out of six pictures before they are taken: every lens on each, the smallest bag, flower cover lens by
 * lens, settings in five lights. Without drawings, light tables and the order of the day; warm, one core.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-XX:ActiveProcessorCount=1")
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class PicturesBenchmark {

    private static final double OKTA = 3;

    private Trip trip;
    private Weather weather;
    private final List<LightAt> lights = new ArrayList<>();

    @Setup
    public void read() {
        trip = SixPictures.trip();
        Brief brief = Planner.brief(trip);
        List<LightAt> day = brief.day().light();
        for (int row = 24; row < 44; row += 4) {
            lights.add(day.get(row));
        }
        weather = new ExpectedSky(trip).weather(lights.get(0).time());
    }

    @Benchmark
    public List<Object> pictures() {
        List<Object> worked = new ArrayList<>();
        List<Intent> intents = Intent.of(trip.shots(), trip.site());
        for (ShotFit fit : SmallestBag.of(trip.gear(), trip.companions(), intents).fits()) {
            worked.add(CoverTrade.of(fit, null));
            for (LightAt light : lights) {
                worked.add(Exposure.of(fit.best(), Darkening.of(trip.gear(), fit.best()),
                        Conditions.of(light, Metering.of(fit.best(), light, OKTA), OKTA, weather, null, null)));
            }
        }
        return worked;
    }
}
