package understorey.story;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.StoryAdvice;
import understorey.kit.Intent;
import understorey.plan.Orientation;

/** Finds pictures of one story that look too much alike. */
final class Variety {

    /** Number of pictures alike, with none of another kind, that is a repetition: common practice, no source. */
    private static final int MANY = 3;

    private static final double FULL_TURN_DEG = 360;

    /** Makes the advice for what is repeated, how often, and what is missing. */
    private interface Alike {
        Advice of(int count, Enum<?> alike, Enum<?> missing);
    }

    private Variety() {
    }

    /**
     * What is repeated and what is missing, and pictures that do not differ at all from an earlier one.
     *
     * @param views that the bag has lenses for; no other is called missing
     */
    static List<Advice> of(List<Intent> intents, List<Look> looks, Set<Look.View> views) {
        List<Advice> reasons = new ArrayList<>();
        repeated(StoryAdvice.HeightsAlike::new, looks, Look::height, Look.Height.values(), reasons);
        repeated(StoryAdvice.DistancesAlike::new, looks, Look::distance, Look.Distance.values(), reasons);
        List<Advice> alike = new ArrayList<>();
        repeated(StoryAdvice.ViewsAlike::new, looks, Look::view, Look.View.values(), alike);
        alike.stream().filter(one -> one instanceof StoryAdvice.ViewsAlike view && views.contains(view.missing())).forEach(reasons::add);
        repeated(StoryAdvice.OrientationsAlike::new, looks, Look::orientation, Orientation.values(), reasons);
        oneWay(looks, reasons);
        for (int i = 1; i < looks.size(); i++) {
            int later = i;
            IntStream.range(0, i).filter(earlier -> alike(intents, looks, earlier, later)).findFirst().ifPresent(earlier ->
                    reasons.add(new StoryAdvice.PicturesAlike(intents.get(earlier).shot().name(), intents.get(later).shot().name())));
        }
        return reasons;
    }

    private static boolean alike(List<Intent> intents, List<Look> looks, int one, int other) {
        return looks.get(one).unlike(looks.get(other)) == 0 && looks.get(one).scaledAs(looks.get(other))
                && sameSubject(intents.get(one), intents.get(other));
    }

    private static boolean sameSubject(Intent one, Intent other) {
        return one.shot().subject().key().equals(other.shot().subject().key())
                && Objects.equals(one.shot().spot(), other.shot().spot());
    }

    /**
     * Reports that every picture faces within {@link Look#ONE_WAY_DEG} of one direction: the middle of the smallest arc that
     * holds all facings, which is the circle without its widest gap.
     */
    private static void oneWay(List<Look> looks, List<Advice> reasons) {
        double[] facings = looks.stream().map(Look::facingDeg).filter(Objects::nonNull).mapToDouble(Double::doubleValue).sorted()
                .toArray();
        if (facings.length < Math.max(MANY, looks.size())) {
            return;
        }
        double from = facings[0];
        double arc = facings[facings.length - 1] - from;
        for (int i = 1; i < facings.length; i++) {
            double without = FULL_TURN_DEG - (facings[i] - facings[i - 1]);
            if (without < arc) {
                from = facings[i];
                arc = without;
            }
        }
        if (arc / 2 < Look.ONE_WAY_DEG) {
            reasons.add(new StoryAdvice.FacingsAlike(facings.length, Math.round(from + arc / 2) % FULL_TURN_DEG));
        }
    }

    /** Reports the most frequent kind of at least three, and the end of the scale without a picture, the farther one if both. */
    private static <K extends Enum<K>> void repeated(Alike alike, List<Look> looks, Function<Look, @Nullable K> of, K[] kinds,
                                                     List<Advice> reasons) {
        int[] count = new int[kinds.length];
        int most = 0;
        for (Look look : looks) {
            K kind = of.apply(look);
            if (kind == null) {
                return;
            }
            count[kind.ordinal()]++;
        }
        for (int i = 0; i < kinds.length; i++) {
            most = count[i] > count[most] ? i : most;
        }
        int missing = most;
        for (int i = 0; i < kinds.length; i += kinds.length - 1) {
            missing = count[i] == 0 && Math.abs(i - most) > Math.abs(missing - most) ? i : missing;
        }
        if (count[most] >= MANY && missing != most) {
            reasons.add(alike.of(count[most], kinds[most], kinds[missing]));
        }
    }
}
