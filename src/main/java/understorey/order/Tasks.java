package understorey.order;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import understorey.light.Outlook.Grade;
import understorey.plan.Shot;
import understorey.visit.Day;
import understorey.visit.DayCurve;
import understorey.visit.Hours;

/** Turns the author's wishes into plain numbers for the search of the best order. */
final class Tasks {

    /** Minutes: common practice, no source. */
    static final int LENS_CHANGE = 2;
    /** Quality is rounded to 1/20: less is not worth a wait or a walk (common practice, no source). */
    private static final double FINEST = 20;

    private Tasks() {
    }

    /** The visit for some pictures, in the author's order. */
    static Visit visit(Day day, List<Candidate> candidates) {
        Hours hours = day.hours();
        List<ZonedDateTime> times = IntStream.range(0, steps(hours)).mapToObj(step -> hours.at(step * Task.STEP)).toList();
        double[] daylight = daylight(times, day.darkest());
        List<String> mounted = candidates.stream().map(Candidate::mounted).toList();
        List<Task> tasks = new ArrayList<>();
        for (Candidate candidate : candidates) {
            Shot shot = candidate.shot();
            int pin = shot.start() == null ? Task.ANY : hours.minute(shot.start());
            tasks.add(new Task(day.walks().index(shot.spot()), candidate.minutes(), candidate.priority(), pin, before(candidates, tasks.size()),
                    RunningOrder.SET_UP_MIN, mounted.indexOf(candidate.mounted()), value(hours, times, candidate, pin, daylight)));
        }
        return new Visit(hours.from(), hours.to(), 0, day.walks().times(), LENS_CHANGE, List.copyOf(tasks));
    }

    /**
     * The expected value of each start: graded under each sky that may come, then the mean. So light that may come counts as
     * what it would be, not as something between.
     */
    private static double[] value(Hours hours, List<ZonedDateTime> times, Candidate candidate, int pin, double[] daylight) {
        double[] value = new double[pin == Task.ANY ? daylight.length : 1];
        boolean[] lit = new boolean[value.length];
        boolean[] possible = new boolean[value.length];
        for (Quality sky : candidate.skies()) {
            double[] light = means(hours, times, pin, candidate.minutes(), sky::at, Tasks::wholeLight, Tasks::light);
            double[] feasibility = means(hours, times, pin, candidate.minutes(), sky::feasibility, Tasks::mean, Tasks::rounded);
            for (int i = 0; i < value.length; i++) {
                lit[i] |= pin != Task.ANY || light[i] > 0 || daylight[i] > 0 || candidate.priority() == Task.MUST;
                possible[i] |= pin != Task.ANY || feasibility[i] > 0;
                double quality = pin == Task.ANY && light[i] == 0 ? daylight[i] : light[i];
                double kept = pin == Task.ANY ? sky.kept(times.get(i)) : 1;
                value[i] += kept * Task.value(quality, feasibility[i]) / candidate.skies().size();
            }
        }
        for (int i = 0; i < value.length; i++) {
            value[i] = !lit[i] ? Task.TOO_DARK : possible[i] ? value[i] : Task.NO_SETTING;
        }
        return value;
    }

    /** What a picture gets of each start of the day, or of the fixed one. */
    private static double[] means(Hours hours, List<ZonedDateTime> times, int pin, int minutes, ToDoubleFunction<ZonedDateTime> of,
                                  ToDoubleFunction<double[]> whole, DoubleUnaryOperator rounding) {
        double[] means = pin == Task.ANY ? overDay(hours, times, minutes, of, whole) : new double[] {whole.applyAsDouble(samples(hours, pin, minutes, of))};
        return Arrays.stream(means).map(rounding).toArray();
    }

    /** Mean over a picture that starts at a minute. */
    static double mean(Hours hours, int start, int minutes, ToDoubleFunction<ZonedDateTime> of) {
        return mean(samples(hours, start, minutes, of));
    }

    private static double[] samples(Hours hours, int start, int minutes, ToDoubleFunction<ZonedDateTime> of) {
        return IntStream.range(0, steps(minutes)).mapToDouble(step -> of.applyAsDouble(hours.at(start + step * Task.STEP))).toArray();
    }

    private static int steps(int minutes) {
        return (minutes + Task.STEP - 1) / Task.STEP;
    }

    /** From every step of the day on; 0 for steps too far from the visit to matter. */
    private static double[] overDay(Hours hours, List<ZonedDateTime> times, int minutes, ToDoubleFunction<ZonedDateTime> of,
                                    ToDoubleFunction<double[]> whole) {
        int first = (hours.from() - LeftOut.MOST_CHANGE) / Task.STEP;
        int last = (hours.to() + LeftOut.MOST_CHANGE) / Task.STEP;
        double[] samples = IntStream.range(0, times.size())
                .mapToDouble(i -> i >= first && i < last ? of.applyAsDouble(times.get(i)) : 0).toArray();
        return IntStream.range(0, samples.length)
                .mapToDouble(i -> whole.applyAsDouble(Arrays.copyOfRange(samples, i, Math.min(samples.length, i + steps(minutes))))).toArray();
    }

    private static double mean(double[] samples) {
        return Arrays.stream(samples).average().orElse(0);
    }

    /**
     * The light of a whole picture: the mean, and where its worse half is clearly worse, that of this half. So none begins shortly
     * before its light ends, or before it comes (common practice, no source).
     */
    private static double wholeLight(double[] samples) {
        double mean = mean(samples);
        double worse = Arrays.stream(samples).sorted().limit((samples.length + 1) / 2).average().orElse(0);
        return mean - worse < 1 / FINEST ? mean : worse;
    }

    /** By step of the day: quality of a time without the light that a picture wishes for, 0 in the dark, where only a must is taken. */
    private static double[] daylight(List<ZonedDateTime> times, DayCurve curve) {
        return times.stream().mapToDouble(time -> curve.up(time) ? Task.SUN_IS_UP : curve.dim(time) ? 0 : Task.DUSK).toArray();
    }

    private static int steps(Hours hours) {
        return Math.max(hours.to(), hours.closes()) / Task.STEP + 1;
    }

    private static double rounded(double quality) {
        return Math.round(Math.max(0, Math.min(1, quality)) * FINEST) / FINEST;
    }

    /** The light of a start, rounded, but never to a better grade than it has. */
    private static double light(double mean) {
        return Grade.of(rounded(mean)) == Grade.of(mean) ? rounded(mean) : Math.floor(mean * FINEST) / FINEST;
    }

    /** The author's order: as written, each picture moved after the one that it must follow. */
    static List<Candidate> inOrder(List<Candidate> candidates) {
        List<Candidate> order = new ArrayList<>();
        List<Candidate> waiting = new ArrayList<>(candidates);
        Set<String> done = new HashSet<>();
        while (!waiting.isEmpty()) {
            int next = 0;
            for (int i = waiting.size() - 1; i >= 0; i--) {
                String after = waiting.get(i).shot().after();
                next = after == null || done.contains(after) ? i : next;
            }
            Candidate candidate = waiting.remove(next);
            order.add(candidate);
            done.add(candidate.name());
        }
        return order;
    }

    /** All pictures that a picture waits for. Pictures that wait for each other in a cycle keep the order and do not wait. */
    private static Set<Integer> before(List<Candidate> order, int picture) {
        Set<Integer> before = new HashSet<>();
        int last = picture;
        int next = after(order, picture);
        while (next >= 0 && next < last) {
            before.add(next);
            last = next;
            next = after(order, next);
        }
        return Set.copyOf(before);
    }

    /** The picture that a picture waits for; −1 for none. */
    private static int after(List<Candidate> order, int picture) {
        String after = order.get(picture).shot().after();
        for (int i = 0; i < order.size(); i++) {
            if (order.get(i).name().equals(after)) {
                return i;
            }
        }
        return -1;
    }
}
