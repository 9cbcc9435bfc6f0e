package understorey.plan;

import java.util.List;

/**
 * What there is to photograph with.
 *
 * @param slug          of its page; null for a bag written inside a trip
 * @param remoteRelease whether the shutter can be let go without touching the camera
 * @param cardsGb       gigabytes, a card each
 * @param batteries     charged; 0 when not given
 */
public record Bag(String name, String slug, List<Body> bodies, List<Lens> lenses, List<Support> supports,
                  List<Filter> filters, boolean remoteRelease, List<Double> cardsGb, int batteries,
                  List<Extra> extras) {

    /** Anything else that is carried; the weight is null when not given. */
    public record Extra(String name, Double weightG) {
    }
}
