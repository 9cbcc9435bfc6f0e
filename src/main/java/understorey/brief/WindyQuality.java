package understorey.brief;

import java.time.ZonedDateTime;
import understorey.advice.Advice;
import understorey.kit.Intent;
import understorey.outing.Quality;

/** The quality of the light, taken down where stems smear. A wide view sways by less than a blur and keeps its quality. */
final class WindyQuality implements Quality {

    /** What smeared stems leave of a picture, so that the best is poor: common practice, no source. */
    private static final double SMEARED = 0.25;

    private final Quality calm;
    private final StemSmear smear;

    /** Of the light as it is wherever the wind blows. */
    WindyQuality(Quality calm, StemSmear smear) {
        this.calm = calm;
        this.smear = smear;
    }

    @Override
    public double at(Intent intent, ZonedDateTime time) {
        double quality = calm.at(intent, time);
        return quality > 0 && smear.at(intent, time) ? quality * SMEARED : quality;
    }

    @Override
    public Advice worthTheWait(Intent intent, ZonedDateTime from, ZonedDateTime start) {
        return calm.worthTheWait(intent, from, start);
    }
}
