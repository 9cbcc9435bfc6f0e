package understorey.advice;

import static understorey.advice.Measure.METRES;
import static understorey.advice.Measure.MILLIMETRES;
import static understorey.advice.Measure.SHARE;

/** How dense the flowers look, and how another lens or height changes that. */
public sealed interface CoverAdvice extends Advice {

    record CoverPlanned(@In(SHARE) double typical, @In(SHARE) double thick, @In(METRES) double nearest,
            @In(METRES) double farthest) implements CoverAdvice {
    }

    record CoverLonger(@In(MILLIMETRES) double focal, @In(METRES) double nearest, @In(SHARE) double cover,
            @In(METRES) double behind, @In(SHARE) double before, @In(SHARE) double trunk) implements CoverAdvice {
    }

    record CoverWider(@In(MILLIMETRES) double focal, @In(METRES) double nearest, @In(SHARE) double cover,
            @In(METRES) double behind, @In(SHARE) double before, @In(SHARE) double trunk) implements CoverAdvice {
    }

    record CoverLowered(@In(METRES) double height, @In(SHARE) double cover) implements CoverAdvice {
    }
}
