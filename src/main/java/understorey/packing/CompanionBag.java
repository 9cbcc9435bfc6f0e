package understorey.packing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import understorey.kit.LensFit;
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
        Map<String, Set<String>> needed = new LinkedHashMap<>();
        for (ShotFit shot : bag.fits()) {
            LensFit fit = shot.best();
            if (fit != null && fit.verdict() != Verdict.CANNOT) {
                Packing.need(fit, needed);
            }
        }
        List<Packing.Item> take = new ArrayList<>();
        double weightG = 0;
        int unweighed = 0;
        for (Packing.Item item : Packing.items(bag.whole())) {
            Set<String> shots = needed.get(item.name());
            if (shots != null) {
                take.add(new Packing.Item(item.name(), List.copyOf(shots), item.weightG(), null));
                weightG += item.weightG() == null ? 0 : item.weightG();
                unweighed += item.weightG() == null ? 1 : 0;
            }
        }
        return new CompanionBag(name, List.copyOf(take), weightG, unweighed);
    }
}
