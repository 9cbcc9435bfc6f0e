package understorey.exposure;

import java.util.List;
import understorey.kit.Verdict;
import understorey.reason.Reason;

/**
 * Where to begin: the settings of one picture in one light.
 *
 * @param ev100        of the light, EV at ISO 100
 * @param fNumber      as marked
 * @param shutterS     as marked, seconds
 * @param iso          as marked
 * @param lossStops    that filters and closeness take
 * @param bracketStops one frame each; {@code [0]} for a single frame
 * @param hyperfocalM  at this aperture
 * @param sharpFromM   nearest sharp point, from the lens
 * @param sharpToM     farthest sharp point; positive infinity for the horizon
 * @param verdict      whether light and wind allow the picture
 * @param reasons      in the order aperture, ISO, time, bracket
 */
public record Settings(double ev100, double fNumber, double shutterS, int iso, double lossStops,
                       List<Integer> bracketStops, double hyperfocalM, double sharpFromM, double sharpToM,
                       Verdict verdict, List<Reason> reasons) {
}
