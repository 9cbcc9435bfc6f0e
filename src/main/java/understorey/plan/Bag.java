package understorey.plan;

import java.util.List;

/**
 * A bag: cameras, lenses and everything else to photograph with.
 *
 * @param slug          name of its page; null for a bag written inside a trip
 * @param remoteRelease whether there is a remote release
 * @param cardsGb       gigabytes of each card
 * @param batteries     charged batteries; 0 if not given
 */
public record Bag(String name, String slug, List<Body> bodies, List<Lens> lenses, List<Support> supports,
                  List<Filter> filters, boolean remoteRelease, List<Double> cardsGb, int batteries,
                  List<Extra> extras) {

    /** Anything else to carry; the weight is null if not given. */
    public record Extra(String name, Double weightG) {
    }
}
