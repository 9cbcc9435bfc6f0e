package understorey.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static understorey.Glass.neutralDensity;
import static understorey.Samples.MACRO;
import static understorey.Samples.POLARISER;
import static understorey.Samples.RING;
import static understorey.Samples.ZOOM;

import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.plan.Bag;
import understorey.plan.Filter;
import understorey.plan.Lens;

class DarkeningTest {

    private static List<String> names(Lens lens, boolean polarised, Filter... filters) {
        Bag bag = Samples.with(Samples.bag(Samples.fullFrame(24), lens), filters);
        Samples.Picture picture = Samples.picture("a").wide(0.3);
        LensFit fit = WholeBag.fit((polarised ? picture.polarised() : picture).intent(), bag).best();
        return Darkening.of(bag, fit).stream().map(way -> String.join(" + ", way.filters().stream().map(Filter::name).toList()))
                .toList();
    }

    @Test
    void goesStraightOnOrByARing() {
        assertEquals(List.of("ND 3.0"), names(ZOOM, false, neutralDensity(72, 3)));
        assertEquals(List.of("Ring 62 to 72 + ND 3.0"), names(MACRO, false, neutralDensity(72, 3), RING));
        assertEquals(List.of(), names(MACRO, false, neutralDensity(72, 3)));
        assertEquals(List.of(), names(ZOOM, false, neutralDensity(62, 3)));
    }

    /** A polariser takes a stop and a half of any light; a second one would cross the first. */
    @Test
    void isAPolariserToo() {
        assertEquals(List.of("ND 3.0", "Polariser"), names(ZOOM, false, POLARISER, neutralDensity(72, 3)));
        assertEquals(List.of(), names(ZOOM, true, POLARISER));
    }

    /** Filters of one thread screw into each other. */
    @Test
    void goesOnThePolariserThatIsOnAlready() {
        assertEquals(List.of("ND 3.0"), names(MACRO, true, POLARISER, RING, neutralDensity(72, 3)));
        assertEquals(List.of(), names(MACRO, true, POLARISER, RING, neutralDensity(62, 3)));
    }

    @Test
    void findsNoThreadOnAPhone() {
        Bag bag = Samples.with(Samples.bag(Samples.phone()), neutralDensity(72, 3));
        assertEquals(List.of(), Darkening.of(bag, WholeBag.fit(Samples.picture("a").equivalent(25).intent(), bag).best()));
    }
}
