package understorey.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class LetteringTest {

    @Property(tries = 300)
    void shortensToTheLongestBeginningThatFits(@ForAll String text, @ForAll @DoubleRange(min = 20, max = 300) double width) {
        String shortened = Lettering.shortened(text, width);
        if (Lettering.width(text) <= width) {
            assertEquals(text, shortened);
            return;
        }
        assertTrue(Lettering.width(shortened) <= width, shortened);
        int end = text.length();
        while (Lettering.width(text.substring(0, end) + "…") > width) {
            end = text.offsetByCodePoints(end, -1);
        }
        assertEquals(text.substring(0, end).stripTrailing() + "…", shortened);
    }

    @Test
    void shortensATextOfFortyThousandCharactersAThousandTimes() {
        String text = "The floor ".repeat(4000);
        assertTimeout(Duration.ofSeconds(20), () -> {
            for (int i = 0; i < 1000; i++) {
                assertEquals("The floor The floor…", Lettering.shortened(text, 190));
            }
        });
    }
}
