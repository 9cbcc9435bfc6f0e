package understorey.kit;

import java.util.ArrayList;
import java.util.List;
import understorey.kit.camera.Polarising;
import understorey.plan.Bag;

/**
 * One way to take a picture: a camera, with the polariser that was asked for or without it.
 *
 * @param trial   of the camera with the whole bag
 * @param parts   that have to be carried for it; what holds the camera comes apart
 */
record Way(LensFit trial, Verdict verdict, double penalty, List<Object> parts, boolean polarised) {

    /** Every way, the best first; equals in the order of the bag. The first that a part of the bag allows is its best. */
    static List<Way> of(Bag bag, List<LensFit> trials) {
        List<Way> ways = new ArrayList<>();
        for (LensFit trial : trials) {
            List<Object> camera = trial.camera().parts();
            if (trial.filters().isEmpty()) {
                ways.add(new Way(trial, trial.verdict(), trial.penalty(), camera, false));
                continue;
            }
            for (List<?> filters : Polarising.ways(bag, trial.camera().lens())) {
                List<Object> parts = new ArrayList<>(camera);
                parts.addAll(filters);
                ways.add(new Way(trial, trial.verdict(), trial.penalty(), parts, true));
            }
            ways.add(new Way(trial, trial.verdict().and(Verdict.COMPROMISE),
                    trial.penalty() + LensTrial.WITHOUT_POLARISER, camera, false));
        }
        ways.sort((one, other) -> LensFit.compare(one.verdict, one.penalty, other.verdict, other.penalty));
        return ways;
    }
}
