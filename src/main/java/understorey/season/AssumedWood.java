package understorey.season;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import understorey.plan.Canopy;
import understorey.plan.FieldGuide;
import understorey.plan.Foliage;
import understorey.plan.Shot;
import understorey.plan.Subject;
import understorey.plan.Trip;

/**
 * The wood that a woodland flower grows in, for a site whose trees are not described: the trees and the leaves that the
 * catalogue gives for its flowering.
 *
 * @param trip    with these trees at its site
 * @param subject of the first picture with a subject from the catalogue
 */
public record AssumedWood(Trip trip, Subject subject, FieldGuide.Setting setting) {

    /** The wood of a trip; null if its trees are described or its subject does not grow in woods. */
    public static @Nullable AssumedWood of(Trip trip) {
        Subject subject = trip.site().canopy() != null ? null
                : trip.shots().stream().map(Shot::subject).filter(shown -> shown.guide() != null).findFirst().orElse(null);
        if (subject == null || subject.guide() == null || subject.guide().setting().ground() != FieldGuide.Ground.WOODLAND) {
            return null;
        }
        FieldGuide.Setting setting = subject.guide().setting();
        Canopy canopy = new Canopy(setting.trees(), leaves(trip, subject, setting), null);
        return new AssumedWood(trip.at(trip.site().under(canopy)), subject, setting);
    }

    /** From the first flowers to the last; the later stage if the season is unknown; null below evergreens. */
    private static @Nullable Foliage leaves(Trip trip, Subject subject, FieldGuide.Setting setting) {
        if (setting.leavesFrom() == null || setting.leavesTo() == null) {
            return null;
        }
        LocalDate day = trip.when().days().get(0);
        FloweringWindow window = FloweringWindow.of(trip.site(), subject, day, trip.wishes().springWarmerC());
        return window == null ? setting.leavesTo()
                : new Foliage.Growing(window.first().day(), setting.leavesFrom(), window.over().day(), setting.leavesTo());
    }
}
