package understorey.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import understorey.visit.TravelTimes;

/** Visits made up at random, the same for the same seed. */
final class SmallTrips {

    private final Random random;

    SmallTrips(long seed) {
        random = new Random(seed);
    }

    /** So many pictures in a visit of so many minutes that begins or ends in the dark, or does not; each fourth picture shuns the dark. */
    Visit visit(int pictures, int minutes, int spots) {
        int from = 300 + random.nextInt(7);
        List<Task> tasks = new ArrayList<>();
        for (int i = 0; i < pictures; i++) {
            Task task = task(i, from, minutes, spots);
            Set<Integer> after = new TreeSet<>(task.after());
            task.after().forEach(other -> after.addAll(tasks.get(other).after()));
            tasks.add(task.after(Set.copyOf(after)));
        }
        return new Visit(from, from + minutes, random.nextInt(spots), ways(spots, from, minutes), random.nextInt(4), List.copyOf(tasks));
    }

    /** The same, in which every picture may be taken at any time, before or after any other: the hardest to order. */
    static Visit free(Visit visit) {
        List<Task> tasks = new ArrayList<>();
        for (Task task : visit.tasks()) {
            double[] value = new double[288];
            for (int t = 0; t < value.length; t++) {
                value[t] = Math.max(0, task.value()[task.pinned() ? 0 : t]);
            }
            tasks.add(new Task(task.spot(), task.minutes(), task.priority(), Task.ANY, Set.of(), task.setUp(), task.lens(), value));
        }
        return visit.with(List.copyOf(tasks));
    }

    /** The same with short pictures and some walks of up to an hour, so that going home by way of another picture may be quicker. */
    Visit farApart(Visit visit) {
        List<Task> tasks = new ArrayList<>();
        for (Task task : visit.tasks()) {
            tasks.add(task.shorterBy(task.minutes() - 1 - random.nextInt(Math.min(6, task.minutes()))));
        }
        int[][] walks = new int[8][8];
        for (int[] row : walks) {
            for (int to = 0; to < row.length; to++) {
                row[to] = random.nextInt(3) == 0 ? 30 + random.nextInt(31) : 1 + random.nextInt(6);
            }
        }
        for (int spot = 0; spot < walks.length; spot++) {
            walks[spot][spot] = 0;
        }
        return new Visit(visit.from(), visit.to(), visit.base(), new TravelTimes(walks, walks, new boolean[1440]),
                visit.lensChange(), List.copyOf(tasks));
    }

    /** Better or worse by the quarter of an hour. */
    private double[] feasibility() {
        double[] feasibility = new double[288];
        for (int t = 0; t < feasibility.length; t++) {
            feasibility[t] = t % 3 == 0 ? random.nextInt(21) / 20.0 : feasibility[t - 1];
        }
        return feasibility;
    }

    private Task task(int i, int from, int minutes, int spots) {
        double[] quality = new double[288];
        double height = random.nextInt(11) / 10.0;
        int middle = (from + random.nextInt(minutes)) / Task.STEP;
        int width = 1 + random.nextInt(8);
        boolean flat = random.nextInt(3) == 0;
        for (int t = 0; t < quality.length; t++) {
            quality[t] = flat ? height : Math.max(0, height - Math.abs(t - middle) / (double) width / 2);
        }
        int pin = random.nextInt(5) == 0 ? from + random.nextInt(minutes) : Task.ANY;
        Set<Integer> after = new TreeSet<>();
        if (i > 0 && random.nextInt(4) == 0) {
            after.add(random.nextInt(i));
        }
        double[] feasibility = feasibility();
        double[] value = pin == Task.ANY ? new double[288] : new double[] {Task.value(height, feasibility[0])};
        for (int t = 0; t < quality.length && pin == Task.ANY; t++) {
            value[t] = i % 4 == 3 && quality[t] == 0 ? Task.TOO_DARK : Task.value(quality[t], feasibility[t]);
        }
        return new Task(random.nextInt(spots), 4 + random.nextInt(18), 1 + random.nextInt(3), pin, Set.copyOf(after), random.nextInt(4),
                random.nextInt(3), value);
    }

    /** Minutes need not keep to the triangle: going round may be quicker. */
    private TravelTimes ways(int spots, int from, int minutes) {
        int[][] lit = new int[spots][spots];
        int[][] dark = new int[spots][spots];
        for (int a = 0; a < spots; a++) {
            for (int b = 0; b < spots; b++) {
                lit[a][b] = a == b ? 0 : 1 + random.nextInt(15);
                dark[a][b] = a == b ? 0 : (int) Math.ceil(lit[a][b] / 0.7);
            }
        }
        boolean[] night = new boolean[1440];
        int dawn = from - 20 + random.nextInt(60);
        int dusk = from + minutes - 40 + random.nextInt(60);
        for (int t = 0; t < night.length; t++) {
            night[t] = t < dawn || t >= dusk;
        }
        return new TravelTimes(lit, dark, night);
    }
}
