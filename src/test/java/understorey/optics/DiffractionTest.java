package understorey.optics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class DiffractionTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/airy-disc.csv")
    void spreadsAPointToTheAiryDisc(double fNumber, double wavelengthNm, double diameterMicrometres) {
        double discMm = Diffraction.airyMm(fNumber, wavelengthNm * 1e-6);
        assertEquals(diameterMicrometres, discMm * 1000, diameterMicrometres * 0.005);
    }

    /** f/16 at 550 nm makes 21.47 micrometres (table above), so a circle of that size allows f/16. */
    @Test
    void allowsTheFNumberWhoseDiscFillsTheCircle() {
        assertEquals(16, Diffraction.largestUsefulFNumber(0.02147, 0), 0.005);
    }

    /** The working f-number at life size is twice the marked one. */
    @Test
    void allowsHalfTheMarkedFNumberAtLifeSize() {
        assertEquals(8, Diffraction.largestUsefulFNumber(0.02147, 1), 0.005);
    }
}
