package understorey.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.Month;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import understorey.Samples;

class FloweringTest {

    private static Flowering on(boolean southern, int first, int last, double latitude, String date) {
        return Flowering.of(Samples.months(southern, first, last), latitude, LocalDate.parse(date));
    }

    @Test
    void includesTheWholeOfItsFirstAndLastMonth() {
        assertFalse(on(false, 4, 6, 52, "2027-03-31").inSeason());
        assertTrue(on(false, 4, 6, 52, "2027-04-01").inSeason());
        assertTrue(on(false, 4, 6, 52, "2027-06-30").inSeason());
        assertFalse(on(false, 4, 6, 52, "2027-07-01").inSeason());
    }

    @Test
    void runsOverTheTurnOfTheYear() {
        assertTrue(on(true, 9, 2, -33, "2027-12-31").inSeason());
        assertTrue(on(true, 9, 2, -33, "2027-02-28").inSeason());
        assertFalse(on(true, 9, 2, -33, "2027-03-01").inSeason());
        assertFalse(on(true, 9, 2, -33, "2027-03-01").shifted());
    }

    @Test
    void movesByHalfAYearInTheOtherHemisphere() {
        Flowering south = on(false, 4, 6, -35, "2027-10-08");
        assertTrue(south.shifted() && south.inSeason());
        assertEquals(Month.OCTOBER, south.first());
        assertEquals(Month.DECEMBER, south.last());
        Flowering north = on(true, 8, 11, 52, "2027-02-01");
        assertTrue(north.shifted() && north.inSeason());
        assertEquals(Month.MAY, north.last());
    }

    @Test
    void knowsNothingWithoutMonths() {
        assertNull(Flowering.of(Samples.months(false, null, 6), 52, Samples.MAY_DAY));
        assertNull(Flowering.of(Samples.months(false, 4, null), 52, Samples.MAY_DAY));
    }

    @Property
    void isInSeasonAsManyMonthsAsTheSeasonHasInEitherHemisphere(@ForAll @IntRange(min = 1, max = 12) int first,
            @ForAll @IntRange(min = 1, max = 12) int last, @ForAll boolean southern, @ForAll boolean siteInTheSouth) {
        int months = 0;
        for (int month = 1; month <= 12; month++) {
            LocalDate date = LocalDate.of(2027, month, 15);
            boolean here = Flowering.of(Samples.months(southern, first, last), siteInTheSouth ? -40 : 40, date).inSeason();
            months += here ? 1 : 0;
        }
        assertEquals(first <= last ? last - first + 1 : last - first + 13, months);
    }
}
