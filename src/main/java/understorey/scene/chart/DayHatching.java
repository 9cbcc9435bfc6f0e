package understorey.scene.chart;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import understorey.scene.Drawing;
import understorey.scene.Drawing.Anchor;
import understorey.scene.Drawing.Hatch;
import understorey.scene.Drawing.Label;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.scene.Drawing.Upright;
import understorey.scene.Fact;
import understorey.scene.Lettering;
import understorey.scene.Lettering.Stretch;
import understorey.scene.Wording;
import understorey.sky.Interval;
import understorey.sky.SunDay;

/**
 * What the sun does, in textures and words that survive a black-and-white printer: night closely ruled, twilight
 * widely; in the foot of the frame low sun hatched, and a measure line for each stretch of sun over the land.
 */
final class DayHatching {

    private static final Duration NO_GAP = Duration.ofMinutes(5);
    private static final double ROW = 20;
    /** Half the height of a hatched strip, and of the ticks that end a measure line. */
    private static final double HALF = 6;
    private static final double NIGHT_RULE = 4;
    private static final double DUSK_RULE = 32 / 3.0;
    private static final double SLANT = 5;
    private static final double ASIDE = 6;
    private static final double BESIDE = 2.2;
    /** A hanging line may stand between a strip and its word. */
    private static final double FARTHEST_ASIDE = 60;
    /** Of strip on both sides of a word in it, px. */
    private static final double LEAST_STRIPS = 48;

    private final DayFrame frame;
    private final Wording words;
    private final String lowSunSays;
    private final String sunlitSays;
    private final List<Interval> lowSun;
    private final List<Interval> overLand;

    DayHatching(DayFrame frame, SunDay sun, List<Interval> sunlit, boolean level, Wording words) {
        this.frame = frame;
        this.words = words;
        this.lowSunSays = words.of(Fact.Word.LOW_SUN);
        this.sunlitSays = words.of(new Fact.SunAbove(level ? Fact.Word.LEVEL_HORIZON : Fact.Word.SKYLINE));
        this.lowSun = lowSun(sun).stream().filter(frame::shows).toList();
        List<Interval> seen = sunlit.stream().filter(frame::shows).toList();
        boolean ends = sunlit.stream().anyMatch(time -> time.from().isAfter(frame.from()) || time.to().isBefore(frame.to()));
        this.overLand = ends ? seen : List.of();
    }

    /** In the morning and in the evening; one stretch where the sun stays low between. */
    private static List<Interval> lowSun(SunDay sun) {
        Interval morning = sun.lowSunMorning();
        Interval evening = sun.lowSunEvening();
        if (morning == null || evening == null) {
            return Stream.of(Optional.ofNullable(morning), Optional.ofNullable(evening)).flatMap(Optional::stream).toList();
        }
        boolean oneStretch = !evening.from().isAfter(morning.to().plus(NO_GAP)) && !evening.from().isBefore(morning.from());
        return oneStretch ? List.of(new Interval(morning.from(), evening.to())) : List.of(morning, evening);
    }

    /** Height of the foot, px: a row for each thing that the sun does within the frame. */
    double foot() {
        int rows = (lowSun.isEmpty() ? 0 : 1) + (overLand.isEmpty() ? 0 : 1);
        return rows == 0 ? 0 : rows * ROW + 6;
    }

    /**
     * Surfaces and rules of the dark hours, and their words: across where all of them fit so, else upwards.
     * Returns where the words stand, from left to right.
     *
     * @param said words that stand there already
     */
    List<Stretch> dark(List<Darkness.Hours> dark, List<Stretch> said, Lettering lettering, List<Mark> marks) {
        List<Darkness.Hours> seen = dark.stream().filter(hours -> frame.shows(hours.time())).toList();
        boolean across = seen.stream().allMatch(hours -> frame.column(hours.time()).width() > Lettering.width(word(hours)) + 2 * ASIDE);
        List<Stretch> places = new ArrayList<>();
        for (Darkness.Hours hours : seen) {
            Stretch column = frame.column(hours.time());
            marks.add(new Drawing.Box(hours.night() ? "night" : "dusk", column.left(), column.top(), column.width(),
                    column.bottom() - column.top()));
            List<Stretch> plain = new ArrayList<>(said);
            if (across) {
                across(word(hours), column, lettering, places, marks);
                plain.addAll(places);
                plain.sort(Comparator.comparingDouble(Stretch::left));
            } else if (upwards(word(hours), column, lettering, places, marks)) {
                plain.add(new Stretch(column.left(), column.top(), column.right(), places.get(places.size() - 1).bottom()));
            }
            marks.add(Hatching.ruled(hours.night() ? "night-rules" : "dusk-rules", column,
                    hours.night() ? NIGHT_RULE : DUSK_RULE, plain));
        }
        return places;
    }

    private String word(Darkness.Hours hours) {
        return words.of(hours.night() ? Fact.Word.NIGHT : Fact.Word.TWILIGHT);
    }

    /** Between the hairlines of 16 and 12 EV, and of 12 and 8 where others stand there. */
    private static void across(String word, Stretch column, Lettering lettering, List<Stretch> places, List<Mark> marks) {
        for (double y = column.top() + 37; y < column.top() + 80; y += 32) {
            Label label = new Label("words", Anchor.MIDDLE, new Point(column.middle(), y), word);
            if (lettering.place(label)) {
                places.add(Stretch.of(label));
                marks.add(label);
                return;
            }
        }
    }

    /** At the head of the column, which is left plain as far as the word reaches; false where there is no room. */
    private static boolean upwards(String word, Stretch column, Lettering lettering, List<Stretch> places, List<Mark> marks) {
        Upright label = new Upright("words", new Point(column.middle() + 5, column.top() + 9), word);
        Stretch letters = Stretch.of(label);
        if (letters.left() - BESIDE > column.left() && letters.right() + BESIDE < column.right() && lettering.place(label)) {
            places.add(letters);
            marks.add(label);
            return true;
        }
        return false;
    }

    /** The strips in the foot. */
    void sun(Lettering lettering, List<Mark> marks) {
        double middle = frame.floor() + 2 + ROW / 2;
        List<Stretch> unnamed = new ArrayList<>();
        for (Interval interval : lowSun) {
            Stretch column = frame.column(interval);
            if (!namedWithin(column, middle, lettering, marks)) {
                unnamed.add(column);
                strip(column.left(), column.right(), middle, lettering, marks);
            }
        }
        for (Stretch column : unnamed) {
            nameBeside(column, middle, lettering, marks);
        }
        if (!lowSun.isEmpty()) {
            middle += ROW;
        }
        measure(middle, lettering, marks);
    }

    /** A long strip holds its name. */
    private boolean namedWithin(Stretch column, double middle, Lettering lettering, List<Mark> marks) {
        double centre = column.middle();
        double half = Lettering.width(lowSunSays) / 2 + ASIDE;
        Label label = new Label("words", Anchor.MIDDLE, new Point(centre, middle + 5), lowSunSays);
        if (column.width() < 2 * half + LEAST_STRIPS || !lettering.place(label)) {
            return false;
        }
        marks.add(label);
        strip(column.left(), centre - half, middle, lettering, marks);
        strip(centre + half, column.right(), middle, lettering, marks);
        return true;
    }

    /** Towards the middle of the day first. */
    private void nameBeside(Stretch column, double middle, Lettering lettering, List<Mark> marks) {
        double width = Lettering.width(lowSunSays);
        boolean morning = column.left() + column.right() < DayFrame.LEFT + DayFrame.RIGHT;
        for (boolean right : new boolean[] {morning, !morning}) {
            for (double aside = ASIDE; aside < FARTHEST_ASIDE; aside += ASIDE) {
                double x = right ? column.right() + aside : column.left() - aside;
                boolean within = right ? x + width <= DayFrame.RIGHT : x - width >= DayFrame.LEFT;
                Label label = new Label("words", right ? Anchor.START : Anchor.END, new Point(x, middle + 5), lowSunSays);
                if (within && lettering.place(label)) {
                    marks.add(label);
                    return;
                }
            }
        }
    }

    private static void strip(double left, double right, double middle, Lettering lettering, List<Mark> marks) {
        marks.add(Hatching.slanted("low-sun", new Stretch(left, middle - HALF, right, middle + HALF), SLANT));
        lettering.avoid(List.of(new Point(left, middle), new Point(right, middle)));
    }

    /** A line a stretch, with a tick at each end that falls within the frame, and words upon it where they fit. */
    private void measure(double middle, Lettering lettering, List<Mark> marks) {
        List<Point> ends = new ArrayList<>();
        List<Mark> labels = new ArrayList<>();
        for (Interval interval : overLand) {
            Stretch column = frame.column(interval);
            ends.add(new Point(column.left(), middle));
            ends.add(new Point(column.right(), middle));
            if (!interval.from().isBefore(frame.from())) {
                tick(column.left(), middle, ends);
            }
            if (!interval.to().isAfter(frame.to())) {
                tick(column.right(), middle, ends);
            }
            Label label = new Label("line-words", Anchor.MIDDLE,
                    new Point(column.middle(), middle + 5), sunlitSays);
            if (column.width() > Lettering.width(sunlitSays) + 4 * ASIDE && lettering.place(label)) {
                labels.add(label);
            }
        }
        if (!ends.isEmpty()) {
            marks.add(new Hatch("over-land", ends));
        }
        marks.addAll(labels);
    }

    private static void tick(double x, double middle, List<Point> ends) {
        ends.add(new Point(x, middle - HALF));
        ends.add(new Point(x, middle + HALF));
    }
}
