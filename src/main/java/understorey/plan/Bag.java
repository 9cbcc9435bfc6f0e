package understorey.plan;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A bag: cameras, lenses and everything else to photograph with.
 *
 * @param slug          name of its page; null for a bag written inside a trip
 * @param remoteRelease whether there is a remote release
 * @param cardsGb       gigabytes of each card
 * @param batteries     charged batteries; 0 if not given
 */
public record Bag(String name, @Nullable String slug, List<Body> bodies, List<Lens> lenses, List<Support> supports,
                  List<Filter> filters, boolean remoteRelease, List<Double> cardsGb, int batteries,
                  List<Extra> extras) {

    /** Anything else to carry. */
    public record Extra(String name, @Nullable Double weightG) {
    }
}
