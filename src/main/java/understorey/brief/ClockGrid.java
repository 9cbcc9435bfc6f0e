package understorey.brief;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import understorey.order.Leg;
import understorey.plan.Trip;
import understorey.reason.Figure;
import understorey.reason.Reason;

/**
 * The grid on which a brief gives its times, half up: of a place to be spared, no time is told to the minute. It goes
 * through whole records, so that no time which a room adds one day is forgotten.
 */
final class ClockGrid {

    /** Rooms whose records hold computed times; what the author wrote and what is drawn stay as they are. */
    private static final Set<String> ROOMS = Set.of("understorey.sky", "understorey.light", "understorey.visit",
            "understorey.order", "understorey.exposure", "understorey.packing", "understorey.season", "understorey.brief");

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
        if (value instanceof Figure figure) {
            return rounded(figure);
        }
        if (value instanceof Reason reason) {
            return rounded(reason);
        }
        return value instanceof Record && ROOMS.contains(value.getClass().getPackageName()) ? record(value) : value;
    }

    private ZonedDateTime rounded(ZonedDateTime time) {
        ZonedDateTime hour = time.truncatedTo(ChronoUnit.HOURS);
        long seconds = ChronoUnit.SECONDS.between(hour, time);
        return hour.plusMinutes(Math.round(seconds / (60.0 * stepMin)) * stepMin);
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

    private Figure rounded(Figure figure) {
        Object value = figure.value() instanceof LocalTime time && figure.measure() == Figure.Measure.CLOCK
                ? LocalTime.MIDNIGHT.plusMinutes(Math.round(time.toSecondOfDay() / (60.0 * stepMin)) * stepMin)
                : figure.measure() == Figure.Measure.MINUTES && figure.value() instanceof Double minutes
                ? Double.valueOf(Math.round(minutes / stepMin) * stepMin) : rounded(figure.value());
        return value == figure.value() ? figure : new Figure(value, figure.measure());
    }

    private Reason rounded(Reason reason) {
        Map<String, Figure> figures = new LinkedHashMap<>();
        boolean changed = false;
        for (Map.Entry<String, Figure> figure : reason.figures().entrySet()) {
            Figure other = rounded(figure.getValue());
            changed |= other != figure.getValue();
            figures.put(figure.getKey(), other);
        }
        return changed ? new Reason(reason.kind(), figures) : reason;
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
                values[i] = rounded(value);
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
