package understorey.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static understorey.Samples.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import understorey.advice.StoryAdvice;
import understorey.kit.Intent;
import understorey.plan.Orientation;

/** Pictures that all look one way. */
class VarietyTest {

    /** Pictures that differ in height, so that nothing else is told of three of them; a null faces nobody knows where. */
    private static List<StoryAdvice.FacingsAlike> told(Double... facingsDeg) {
        List<Intent> intents = new ArrayList<>();
        List<Look> looks = new ArrayList<>();
        for (int i = 0; i < facingsDeg.length; i++) {
            intents.add(picture("p" + i).at("Spot " + i).intent());
            looks.add(new Look(null, Look.Height.values()[i % 3], null, Orientation.values()[i % 2], facingsDeg[i], null));
        }
        return Variety.of(intents, looks, Set.of()).stream().filter(StoryAdvice.FacingsAlike.class::isInstance)
                .map(StoryAdvice.FacingsAlike.class::cast).toList();
    }

    private static double bearing(Double... facingsDeg) {
        return told(facingsDeg).get(0).bearing();
    }

    @Test
    void namesThreePicturesThatLookOneWayRoundNorthToo() {
        assertEquals(List.of(new StoryAdvice.FacingsAlike(3, 5)), told(350.0, 10.0, 20.0));
        assertEquals(90.0, bearing(67.5, 90.0, 112.5));
        assertEquals(0.0, bearing(350.0, 0.0, 9.5), "rounds to north, never to 360°");
        assertEquals(180.0, bearing(180.0, 180.0, 180.0));
    }

    @Test
    void namesNoneWhereOneTurnsRoundOrIsAQuarterTurnAway() {
        assertEquals(List.of(), told(350.0, 10.0, 20.0, 180.0));
        assertEquals(List.of(), told(350.0, 10.0, 80.0));
        assertEquals(1, told(350.0, 10.0, 79.0).size());
    }

    /** Who does not know where one of them looks cannot say that it looks as the others do. */
    @Test
    void namesNoneWhereAFacingIsUnknownOrTheyAreFew() {
        assertEquals(List.of(), told(350.0, 10.0, 20.0, null));
        assertEquals(List.of(), told(350.0, 10.0));
    }

    /** Against trying every direction to half a degree, which the middle of an arc between whole degrees is. */
    @Property(tries = 2000)
    void findsACommonDirectionWhereThereIsOne(@ForAll @Size(min = 3, max = 5) List<@IntRange(max = 110) Integer> spread,
                                              @ForAll @IntRange(max = 359) int turn) {
        Double[] facings = new Double[spread.size()];
        for (int i = 0; i < facings.length; i++) {
            facings[i] = (double) ((spread.get(i) + turn) % 360);
        }
        double least = 360;
        for (int half = 0; half < 720; half++) {
            double direction = half / 2.0;
            double most = Arrays.stream(facings).mapToDouble(facing -> Math.abs(Math.IEEEremainder(facing - direction, 360))).max().orElseThrow();
            least = Math.min(least, most);
        }
        List<StoryAdvice.FacingsAlike> told = told(facings);
        assertEquals(least < 45 ? 1 : 0, told.size());
        for (StoryAdvice.FacingsAlike alike : told) {
            for (double facing : facings) {
                assertEquals(0, Math.max(0, Math.abs(Math.IEEEremainder(facing - alike.bearing(), 360)) - least), 0.5, "rounded to a degree");
            }
        }
    }
}
