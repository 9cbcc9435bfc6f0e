package understorey.brief;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import understorey.advice.Advice;
import understorey.advice.In;
import understorey.advice.Measure;
import understorey.advice.WaitAdvice;
import understorey.light.SunDirection;
import understorey.order.Leg;
import understorey.plan.Trip;

/**
 * The grid to which a brief rounds its times, half up. The brief of a spared place gives no time to the minute. Whole
 * records are rounded, so that a time added to one of them later is rounded too.
 */
final class ClockGrid {

    /** What the author wrote and what is drawn stay as they are; the records of any other package can hold computed times. */
    private static final Set<String> EXACT = Set.of("understorey.plan", "understorey.scene");

    /** 0 for times as they are. */
    private final int stepMin;

    private ClockGrid(int stepMin) {
        this.stepMin = stepMin;
    }

    /** Exact but for a trip that spares its place. */
    static ClockGrid of(Trip trip) {
        return new ClockGrid(trip.sparesThePlace() ? Trip.clockStepMin(trip.precision()) : 0);
    }

    /** The same with every time on the grid; what has none is handed back itself. */
    @SuppressWarnings("unchecked")
    <T> T round(T value) {
        return stepMin == 0 ? value : (T) rounded(value);
    }

    private Object rounded(Object value) {
        if (value instanceof ZonedDateTime time) {
            return rounded(time);
        }
        if (value instanceof List<?> list) {
            return rounded(list);
        }
        return value instanceof Record && !EXACT.contains(value.getClass().getPackageName()) ? record(value) : value;
    }

    private ZonedDateTime rounded(ZonedDateTime time) {
        ZonedDateTime hour = time.truncatedTo(ChronoUnit.HOURS);
        long seconds = ChronoUnit.SECONDS.between(hour, time);
        return hour.plusMinutes(steps(seconds / 60.0));
    }

    /** Drops a leg or a side of the light that shrinks to nothing, but no leg with a picture. */
    private List<?> rounded(List<?> list) {
        List<Object> rounded = new ArrayList<>();
        boolean changed = false;
        for (Object item : list) {
            Object other = rounded(item);
            changed |= other != item;
            if (!empty(other)) {
                rounded.add(other instanceof Leg leg ? withItsLength(leg) : other);
            }
        }
        return changed ? List.copyOf(rounded) : list;
    }

    private static boolean empty(Object stretch) {
        return stretch instanceof Leg leg && leg.what() != Leg.What.SHOOT && leg.from().isEqual(leg.to())
                || stretch instanceof SunDirection.Stretch side && side.time().length().isZero();
    }

    /** A rounded length differs from the time between rounded ends. */
    private static Leg withItsLength(Leg leg) {
        return !(leg.why() instanceof WaitAdvice.WaitWithRoom room) ? leg : new Leg(leg.from(), leg.to(), leg.what(), leg.spot(),
                leg.shot(), new WaitAdvice.WaitWithRoom(leg.minutes(), room.why()));
    }

    /** Advice tells clock times without a date and spans in minutes, too. */
    private Object told(RecordComponent component, Object value) {
        if (value instanceof LocalTime time) {
            return LocalTime.MIDNIGHT.plusMinutes(steps(time.toSecondOfDay() / 60.0));
        }
        boolean minutes = component.isAnnotationPresent(In.class) && component.getAnnotation(In.class).value() == Measure.MINUTES;
        return !minutes ? rounded(value) : component.getType() == double.class ? (Object) (double) steps((double) value)
                : component.getType() == long.class ? (Object) steps((long) value) : (Object) (int) steps((int) value);
    }

    /** Minutes on the grid. */
    private long steps(double minutes) {
        return Math.round(minutes / stepMin) * stepMin;
    }

    private Object record(Object record) {
        try {
            RecordComponent[] components = record.getClass().getRecordComponents();
            Class<?>[] types = new Class<?>[components.length];
            Object[] values = new Object[components.length];
            boolean changed = false;
            for (int i = 0; i < components.length; i++) {
                types[i] = components[i].getType();
                components[i].getAccessor().setAccessible(true);
                Object value = components[i].getAccessor().invoke(record);
                values[i] = record instanceof Advice ? told(components[i], value) : rounded(value);
                changed |= values[i] != value;
            }
            Constructor<?> constructor = record.getClass().getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return changed ? constructor.newInstance(values) : record;
        } catch (ReflectiveOperationException fault) {
            throw new IllegalStateException(fault);
        }
    }
}
