package understorey.yaml.value;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityTest {

    /**
     * Units by definition: inch 25.4 mm, foot 0.3048 m, yard 0.9144 m, mile 1609.344 m, pound 453.592 37 g
     * (international yard and pound agreement, 1959); knot 1852 m/h, hour 3600 s (SI brochure, 9th edition,
     * 2019, table 8 and the tables before it). Speeds and temperatures are worked by hand from these.
     */
    @ParameterizedTest
    @CsvSource({
        "LENGTH, 0.4 m, 0.4", "LENGTH, 0.4m, 0.4", "LENGTH, 45 mm, 0.045", "LENGTH, 12 cm, 0.12", "LENGTH, 1.2 km, 1200",
        "LENGTH, 16 in, 0.4064", "LENGTH, 5 ft 3 in, 1.6002", "LENGTH, 10 yd, 9.144", "LENGTH, 1 mi, 1609.344",
        "LENGTH, -3 m, -3", "LENGTH, −3 m, -3", "LENGTH, .5 m, 0.5",
        "SMALL_LENGTH, 50 mm, 50", "SMALL_LENGTH, 3 in, 76.2", "SMALL_LENGTH, 0.7 cm, 7",
        "MASS, 1.4 kg, 1400", "MASS, 3 lb, 1360.77711", "MASS, 1 oz, 28.349523125", "MASS, 1 lb 2 oz, 510.29141625",
        "TEMPERATURE, 6 °C, 6", "TEMPERATURE, 6 C, 6", "TEMPERATURE, 212 °F, 100", "TEMPERATURE, -40 F, -40",
        "TEMPERATURE, 32F, 0",
        "SPEED, 3 m/s, 3", "SPEED, 36 km/h, 10", "SPEED, 10 mph, 4.4704", "SPEED, 18 kn, 9.26",
        "SHARE, 92 %, 0.92", "SHARE, 92%, 0.92", "STOPS, 1 stop, 1", "STOPS, 2.5 stops, 2.5", "PIXELS, 24 Mpx, 24",
        "FILE_SIZE, 28 MB, 28", "CARD_SIZE, 64 GB, 64", "CARD_SIZE, 1 TB, 1000",
        "DURATION, 25 min, 1500", "DURATION, 1 h 20 min, 4800", "DURATION, 90 s, 90", "FRAMES, 400 frames, 400",
        "DIOPTRES, 2 dpt, 2", "DIOPTRES, 2 D, 2", "DENSITY, 80 /m2, 80", "DENSITY, 80/m², 80",
        "DENSITY, 1 /ft2, 10.763910416709722"})
    void turnsUnitsIntoTheOneThatIsHeld(Dimension dimension, String written, double held) {
        Quantity read = Quantity.read(written, dimension);
        assertNotNull(read.value(), () -> written + " " + read.fault());
        assertEquals(held, read.value(), Math.abs(held) * 1e-14);
    }

    @Test
    void saysWhichUnitsFitABareNumber() {
        Quantity read = Quantity.read("0.38", Dimension.LENGTH);
        assertNull(read.value());
        assertEquals("needs a unit after 0.38", read.fault());
        assertEquals("add a unit: m, mm, cm, km, in, ft, yd or mi", read.help());
        assertEquals("write 24 Mpx", Quantity.read("24", Dimension.PIXELS).help());
    }

    @Test
    void suggestsAPointForADecimalComma() {
        Quantity read = Quantity.read("0,38 m", Dimension.LENGTH);
        assertEquals("has a decimal comma", read.fault());
        assertEquals("write 0.38 m", read.help());
        assertEquals("write 0.38", Quantity.read("0,38", Dimension.LENGTH).help());
    }

    @Test
    void suggestsTheUnitThatWasMeant() {
        assertEquals("did you mean 'km/h'?", Quantity.read("12 kmh", Dimension.SPEED).help());
        assertEquals("did you mean 'Mpx'?", Quantity.read("24 mpx", Dimension.PIXELS).help());
    }

    @Test
    void doesNotTakeAUnitOfAnotherKindForASlip() {
        assertEquals("use m, mm, cm, km, in, ft, yd or mi", Quantity.read("2 kg", Dimension.LENGTH).help());
    }

    @ParameterizedTest
    @CsvSource({"near", "m", "'5 m and more'", "1e3 m", "0x1F m", "NaN m", "1..2 m", "'- 3 m'", "1_000 m", "1 m m"})
    void refusesWhatIsNoQuantity(String written) {
        Quantity read = Quantity.read(written, Dimension.LENGTH);
        assertNull(read.value());
        assertNotNull(read.fault());
    }

    @Test
    void addsNoTemperatures() {
        assertNull(Quantity.read("6 °C 3 °C", Dimension.TEMPERATURE).value());
    }

    @Property(tries = 300)
    void neverThrowsAndNeverAnswersWithBoth(@ForAll String text, @ForAll Dimension dimension) {
        Quantity read = Quantity.read(text, dimension);
        assertEquals(read.value() == null, read.fault() != null);
    }
}
