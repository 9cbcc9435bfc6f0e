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
import understorey.order.Leg;
import understorey.plan.Trip;

/**
 * The grid on which a brief gives its times, half up: of a place to be spared, no time is told to the minute. It goes
 * through whole records, so that no time which a room adds one day is forgotten.
 */
final class ClockGrid {

    /** Rooms whose records hold computed times; what the author wrote and what is drawn stay as they are. */
    private static final Set<String> ROOMS = Set.of("understorey.sky", "understorey.light", "understorey.visit",
            "understorey.order", "understorey.advice", "understorey.exposure", "understorey.packing", "understorey.season", "understorey.brief");

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
        return value instanceof Record && ROOMS.contains(value.getClass().getPackageName()) ? record(value) : value;
    }

    private ZonedDateTime rounded(ZonedDateTime time) {
        ZonedDateTime hour = time.truncatedTo(ChronoUnit.HOURS);
        long seconds = ChronoUnit.SECONDS.between(hour, time);
        return hour.plusMinutes(steps(seconds / 60.0));
    }

    /** A leg that shrinks to nothing is gone, unless a picture is taken in it. */
    private List<?> rounded(List<?> list) {
        List<Object> rounded = new ArrayList<>();
        boolean changed = false;
        for (Object item : list) {
            Object other = rounded(item);
            changed |= other != item;
            boolean nothing = other instanceof Leg leg && leg.what() != Leg.What.SHOOT && leg.from().isEqual(leg.to());
            if (!nothing) {
                rounded.add(other);
            }
        }
        return changed ? List.copyOf(rounded) : list;
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
