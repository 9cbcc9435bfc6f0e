package understorey.scene.sketch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.pages.Briefs;
import understorey.plan.FieldGuide;
import understorey.plan.Subject;
import understorey.reading.subject.SubjectCatalogue;
import understorey.scene.Drawing.Point;

/** A head is one solid thing: what a camera sees of it follows from where it looks from. */
class FlowerHeadTest {

    private static FlowerHead head(String key) {
        return FlowerHead.of(SubjectCatalogue.builtIn().find(key), 1, Stage.FULL);
    }

    private static List<Floret.Petal> petals(String key, double aboveDeg) {
        Floret.View view = Floret.View.of(0, 0, 1, aboveDeg);
        return head(key).florets().stream().flatMap(floret -> floret.petals(view, false).stream())
                .filter(petal -> petal.tone().startsWith("petal")).toList();
    }

    private static double high(List<Floret.Petal> petals) {
        List<Double> rows = petals.stream().flatMap(petal -> petal.outline().stream()).map(Point::y).toList();
        return rows.stream().max(Double::compare).orElseThrow() - rows.stream().min(Double::compare).orElseThrow();
    }

    private static long lit(List<Floret.Petal> petals) {
        return petals.stream().filter(petal -> petal.tone().equals("petal")).count();
    }

    /** A flower that opens at 52° over the level is round for a camera on its axis and an ellipse for others: cos of the angle between. */
    @Test
    void anOpenFlowerIsForeshortenedByTheCosine() {
        double round = high(petals("wood-anemone", 52));
        assertEquals(round * Math.cos(Math.toRadians(52)), high(petals("wood-anemone", 0)), 0.17 * round);
        assertTrue(high(petals("wood-anemone", -30)) < 0.5 * round);
    }

    @Test
    void anOpenFlowerShowsItsFaceFromAboveAndItsBackFromBelow() {
        assertEquals(6, lit(petals("wood-anemone", 52)));
        assertEquals(0, lit(petals("wood-anemone", -60)));
    }

    /** A hanging bell shows its outside from the level, and its inside from below. */
    @Test
    void aHangingBellShowsItsInsideFromBelow() {
        List<Floret.Petal> below = petals("snowdrop", -60);
        assertTrue(below.size() - lit(below) > lit(below), lit(below) + " of " + below.size());
        assertTrue(lit(petals("snowdrop", 20)) >= 3);
    }

    @Test
    void everyFormAndEverySubjectOfTheCatalogueHasAHead() {
        for (FieldGuide.Form form : FieldGuide.Form.values()) {
            assertTrue(form == FieldGuide.Form.CAP || Flora.BUILT_IN.head(form.name()) != null, form.name());
        }
        for (Subject subject : Briefs.demo().subjects()) {
            FlowerHead head = FlowerHead.of(subject, 1, Stage.FULL);
            assertTrue(!head.florets().isEmpty() && head.stem().size() % 2 == 1, subject.key());
        }
    }
}
