package understorey.plan;

import java.util.Collection;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** How readers see figures and times of day. Programs always get metric figures and 24 hours. */
public record Display(UnitSystem units, Clock clock) {

    public enum UnitSystem {
        METRIC,
        /** Feet and inches, pounds and ounces, degrees Fahrenheit, miles per hour. */
        IMPERIAL
    }

    public enum Clock {
        HOURS_24, HOURS_12
    }

    /** Metric, in 24 hours. */
    public static final Display USUAL = new Display(UnitSystem.METRIC, Clock.HOURS_24);

    /** This, in another system of units where one is asked for. */
    public Display in(@Nullable UnitSystem asked) {
        return asked == null ? this : new Display(asked, clock);
    }

    /** What all have in common; the usual units and the usual clock where they differ. */
    public static Display shared(Collection<Display> all) {
        return new Display(same(all.stream().map(Display::units), USUAL.units), same(all.stream().map(Display::clock), USUAL.clock));
    }

    private static <T> T same(Stream<T> values, T usual) {
        return values.distinct().reduce((one, other) -> usual).orElse(usual);
    }
}
