package understorey.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class VerdictTest {

    @Test
    void isTheWorseOfTwo() {
        assertEquals(Verdict.CANNOT, Verdict.FITS.and(Verdict.CANNOT));
        assertEquals(Verdict.CANNOT, Verdict.CANNOT.and(Verdict.COMPROMISE));
        assertEquals(Verdict.COMPROMISE, Verdict.COMPROMISE.and(Verdict.FITS));
        assertEquals(Verdict.FITS, Verdict.FITS.and(Verdict.FITS));
    }
}
