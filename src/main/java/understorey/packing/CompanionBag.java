package understorey.packing;

import java.util.List;
import understorey.kit.ShotFit;
import understorey.kit.SmallestBag;
import understorey.kit.Verdict;

/**
 * Packing list of a companion: the smallest part of their bag that takes each picture as well as the whole bag.
 *
 * @param take      in the order of the bag; empty if it takes no picture. Extras are the companion's own choice
 * @param weightG   of the things taken; those without a given weight count as 0
 * @param unweighed number of things without a given weight
 */
public record CompanionBag(String name, List<Packing.Item> take, double weightG, int unweighed) {

    public static CompanionBag of(String name, SmallestBag bag) {
        List<Packing.Item> take = Packing.taken(bag.whole(), Packing.needed(bag.fits().stream().map(ShotFit::best)
                .filter(fit -> fit != null && fit.verdict() != Verdict.CANNOT)));
        return new CompanionBag(name, take, Packing.weightG(take), Packing.unweighed(take));
    }
}
