package understorey.scene.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.pages.DrawingWords;
import understorey.plan.Season;
import understorey.plan.Site;
import understorey.plan.Subject;
import understorey.scene.Drawing;
import understorey.scene.Lettering;
import understorey.season.FloweringWindow;

class SeasonChartTest {

    private static final Subject FLOWER = Samples.months(false, 4, 6);

    private static Site wood(List<Season.Flowering> records, List<Season.Sighting> seen) {
        Site site = Samples.wood();
        return new Site(site.name(), site.slug(), null, site.position(), null, site.zone(), List.of(), null, site.spots(),
                site.walks(), null, null, List.of(new Season(FLOWER.key(), records, null, seen)), List.of(), null, null,
                false, List.of(), null, List.of(), null);
    }

    private static Season.Flowering year(String full) {
        LocalDate day = LocalDate.parse(full);
        return new Season.Flowering(day.minusDays(12), day, day.plusDays(18));
    }

    private static Drawing chart(Site site, LocalDate chosen) {
        return SeasonChart.of(FloweringWindow.of(site, FLOWER, chosen, null), chosen, false).drawing(DrawingWords.BUILT_IN);
    }

    private static final List<Season.Flowering> PAST = List.of(year("2023-05-04"), year("2024-05-01"),
            new Season.Flowering(LocalDate.of(2025, 4, 20), null, null), year("2026-05-06"));

    @Test
    void drawsAStripForEachPastYearAndTheDayChosen() {
        Drawing chart = chart(wood(PAST, List.of()), LocalDate.of(2027, 5, 8));
        assertEquals(3, count(chart, "season-strip"));
        assertEquals(4, count(chart, "season-full"));
        assertEquals(1, count(chart, "season-day"));
        assertEquals(1, count(chart, "light"));
        List<String> words = labels(chart).stream().map(Drawing.Label::text).toList();
        assertTrue(words.containsAll(List.of("2023", "2024", "2025", "2026", "2027", "trip: 8 May", "1 May")), words.toString());
    }

    @Test
    void tellsTheSameInWords() {
        Drawing chart = chart(wood(PAST, List.of(new Season.Sighting(LocalDate.of(2027, 4, 22), Season.Stage.IN_BUD))),
                LocalDate.of(2027, 5, 8));
        assertTrue(chart.says().startsWith("2023: first flowers 22 April, full 4 May, over 22 May. "), chart.says());
        assertTrue(chart.says().contains("2025: first flowers 20 April. "), chart.says());
        assertTrue(chart.says().contains("2027: full flower expected from "), chart.says());
        assertTrue(chart.says().contains("Seen on 22 April: in bud. "), chart.says());
        assertTrue(chart.says().contains("Trip: 8 May, "), chart.says());
    }

    @Test
    void namesSeasonsOverTheTurnOfTheYearByBothYearsSoThatNoTwoAreAlike() {
        Drawing chart = chart(wood(List.of(year("2023-12-28"), year("2025-01-06"), year("2025-12-25")), List.of()),
                LocalDate.of(2026, 12, 31));
        List<String> words = labels(chart).stream().map(Drawing.Label::text).toList();
        assertTrue(words.containsAll(List.of("2023/24", "2024/25", "2025/26", "2026/27")), words.toString());
        assertTrue(chart.says().contains("2026/27: full flower expected from "), chart.says());
    }

    @Test
    void showsTheTwelveLatestYearsOnly() {
        List<Season.Flowering> many = new ArrayList<>();
        for (int year = 2000; year < 2027; year++) {
            many.add(year(year + "-05-04"));
        }
        Drawing chart = chart(wood(many, List.of()), LocalDate.of(2027, 5, 8));
        assertEquals(12, count(chart, "season-strip"));
        assertTrue(labels(chart).stream().anyMatch(label -> label.text().equals("2015")));
    }

    /** Wide seasons of the catalogue and a day far away, as well as narrow ones. */
    @Property(tries = 100)
    void laysNoWordOverAnotherAndNothingOutsideTheSheet(@ForAll @IntRange(min = -170, max = 170) int away,
            @ForAll @IntRange(min = 0, max = 6) int years, @ForAll @IntRange(min = 0, max = 364) int start) {
        LocalDate middle = LocalDate.of(2020, 1, 1).plusDays(start);
        List<Season.Flowering> records = new ArrayList<>();
        for (int i = 0; i < years; i++) {
            records.add(year(middle.plusYears(i).plusDays((i * 7) % 11).toString()));
        }
        Drawing chart = chart(wood(records, List.of()), middle.plusYears(7).plusDays(away));
        List<Drawing.Label> labels = labels(chart);
        for (int i = 0; i < labels.size(); i++) {
            Lettering.Stretch one = Lettering.Stretch.of(labels.get(i));
            assertTrue(one.left() >= 0 && one.right() <= chart.width() && one.bottom() <= chart.height(), labels.get(i).toString());
            for (int k = 0; k < i; k++) {
                assertFalse(one.touches(Lettering.Stretch.of(labels.get(k))), labels.get(i) + " over " + labels.get(k));
            }
        }
    }

    private static List<Drawing.Label> labels(Drawing chart) {
        return chart.marks().stream().filter(mark -> mark instanceof Drawing.Label).map(mark -> (Drawing.Label) mark).toList();
    }

    private static long count(Drawing chart, String style) {
        return chart.marks().stream().filter(mark -> mark.style().equals(style)).count();
    }
}
