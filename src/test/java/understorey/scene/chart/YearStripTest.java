package understorey.scene.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import understorey.scene.Lettering;

class YearStripTest {

    private static final YearStrip.Window SPRING = new YearStrip.Window(day(4, 1), day(4, 5), day(4, 14), day(4, 27), day(5, 10), day(5, 16));

    private static LocalDate day(int month, int day) {
        return LocalDate.of(2027, month, day);
    }

    private static YearStrip.Visit visit(LocalDate date) {
        return new YearStrip.Visit(date, date.getDayOfMonth() + " Sept, 100 %");
    }

    @Test
    void beginsAndEndsWithWholeMonths() {
        YearStrip strip = YearStrip.of(List.of(new YearStrip.Bloom(SPRING, List.of(visit(day(6, 15))))));
        assertEquals(List.of(Month.APRIL, Month.MAY, Month.JUNE), strip.months().stream().map(YearStrip.Tick::month).toList());
        // April, May and June have 91 days; the 15th of June is the 76th of them.
        assertEquals(List.of(0.0, 33.0, 67.0), strip.months().stream().map(YearStrip.Tick::left).toList());
        assertEquals(82.4, strip.rows().get(0).uprights().get(0).left());
        YearStrip.Bars bars = strip.rows().get(0).bars();
        assertEquals(new YearStrip.Span(14.3, 15.4), bars.full(), "14 to 27 April, both included: 14 days of 91");
        assertTrue(bars.likely().left() < bars.flowering().left());
    }

    @Test
    void hasARowWithoutBarsWhereTheSeasonIsUnknown() {
        YearStrip strip = YearStrip.of(List.of(new YearStrip.Bloom(null, List.of(visit(day(12, 31))))));
        assertNull(strip.rows().get(0).bars());
        assertEquals(96.8, strip.rows().get(0).uprights().get(0).left());
        assertEquals(YearStrip.Side.LEFT, strip.rows().get(0).uprights().get(0).side());
        assertEquals(new YearStrip(List.of(), List.of()), YearStrip.of(List.of()));
    }

    @Test
    void namesEveryMonthOnADeskAndSomeOnAPhone() {
        YearStrip strip = YearStrip.of(List.of(new YearStrip.Bloom(null, List.of(visit(day(1, 1)), visit(day(12, 31))))));
        assertEquals(12, strip.months().stream().filter(YearStrip.Tick::named).count());
        assertEquals(6, strip.months().stream().filter(YearStrip.Tick::namedOnPhones).count());
    }

    /** On a strip of 340 px; labels have one size, so they are farther apart on a wider one. */
    @Property(tries = 200)
    void keepsLabelsOfOneLaneApart(@ForAll @Size(max = 12) List<@IntRange(max = 364) Integer> days) {
        List<YearStrip.Visit> visits = days.stream().map(day -> visit(day(1, 1).plusDays(day))).toList();
        YearStrip strip = YearStrip.of(List.of(new YearStrip.Bloom(SPRING, visits)));
        List<YearStrip.Upright> named = strip.rows().get(0).uprights().stream().filter(upright -> upright.side() != null).toList();
        for (int i = 0; i < named.size(); i++) {
            YearStrip.Upright one = named.get(i);
            assertTrue(left(one) >= 0 && left(one) + Lettering.width(one.label()) <= 340);
            for (YearStrip.Upright other : named.subList(0, i)) {
                assertTrue(one.lane() != other.lane() || left(one) + Lettering.width(one.label()) < left(other)
                        || left(other) + Lettering.width(other.label()) < left(one), one + " meets " + other);
            }
        }
        assertTrue(days.isEmpty() || !named.isEmpty());
    }

    private static double left(YearStrip.Upright upright) {
        double x = upright.left() * 3.4;
        return upright.side() == YearStrip.Side.RIGHT ? x + 3 : x - 3 - Lettering.width(upright.label());
    }

    @Test
    void leavesALabelOutWhereThereIsNoRoom() {
        List<YearStrip.Visit> visits = IntStream.range(1, 29).mapToObj(day -> visit(day(4, day))).toList();
        List<YearStrip.Upright> uprights = YearStrip.of(List.of(new YearStrip.Bloom(SPRING, visits))).rows().get(0).uprights();
        assertEquals(28, uprights.size());
        assertTrue(uprights.stream().anyMatch(upright -> upright.side() == null));
    }
}
