package understorey.light;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.LightAdvice;
import understorey.plan.FieldGuide;
import understorey.plan.FieldGuide.Closing;
import understorey.plan.LightWish;
import understorey.plan.Shot;

/**
 * The light that a picture wishes for: all of its wishes together, and open flowers.
 *
 * @param facingDeg bearing of the lens axis; null for a picture without one
 * @param closing   when the flowers of the picture close; null if they do not, or it is unknown
 */
public record Wishes(List<LightWish> wishes, @Nullable Double facingDeg, @Nullable Closing closing) {

    /**
     * What a later moment has over an earlier one.
     *
     * @param sun whether that is the sun itself
     * @param why the earlier one is worse
     */
    public record Gain(boolean sun, Advice why) {
    }

    /** The wishes of a picture. */
    public static Wishes of(Shot shot) {
        FieldGuide guide = shot.subject().guide();
        return new Wishes(shot.light(), shot.facingDeg(),
                guide == null || guide.closing().triggers().isEmpty() ? null : guide.closing());
    }

    /**
     * How well a moment gives the light wished for, 0 to 1: the product of what decides the wishes, 1 without wishes. What
     * decides several of them, such as a cloud before the sun, counts once.
     */
    public double quality(Moment moment) {
        Map<Class<?>, Double> factors = new HashMap<>();
        all(moment).forEach(wish -> wish.factors().forEach((means, factor) -> factors.merge(means, factor, Math::min)));
        return factors.values().stream().mapToDouble(Double::doubleValue).reduce(1, (a, b) -> a * b);
    }

    private Stream<Wish> all(Moment moment) {
        Stream<Wish> light = wishes.stream().map(wish -> at(wish, moment));
        return closing == null || wishes.isEmpty() ? light
                : Stream.concat(light, Stream.of(new OpenFlowers(closing).at(moment, wishes.contains(LightWish.TWILIGHT))));
    }

    /**
     * What decides each wish at a moment, the weakest first; what decides several of them is given once. Where each wish alone is
     * good and all together are not, what limits the weakest comes first.
     */
    public List<Advice> because(Moment moment) {
        List<Wish> sorted = all(moment).sorted(Comparator.comparingDouble(Wish::value)).toList();
        boolean together = Outlook.Grade.of(quality(moment)) != Outlook.Grade.GOOD
                && sorted.stream().allMatch(wish -> Outlook.Grade.of(wish.value()) == Outlook.Grade.GOOD);
        return Stream.concat(sorted.stream().limit(together ? 1 : 0).map(Wish::limits), sorted.stream().map(Wish::because))
                .<Advice>map(why -> why).distinct().toList();
    }

    /** The wish that gains most from an earlier moment to a later one; null if none of them is spoilt earlier. */
    public @Nullable Gain gained(Moment before, Moment then) {
        Change change = greatest(before, then, Outlook.Grade.FAIR.least());
        return change == null || Outlook.Grade.of(change.from.least()) == Outlook.Grade.GOOD ? null
                : new Gain(hidesTheSun(change.lost()), change.lost());
    }

    /** What makes a moment worse than the better one beside it. */
    LightAdvice lost(Moment moment, Moment better) {
        Change change = greatest(moment, better, 0);
        return change == null ? weakest(moment).limits() : change.lost();
    }

    /** The wish that a moment fulfils least. */
    Wish weakest(Moment moment) {
        return all(moment).min(Comparator.comparingDouble(Wish::value)).orElseThrow();
    }

    private record Change(Wish from, Wish to) {

        double gain() {
            return to.value() - from.value();
        }

        LightAdvice lost() {
            return from.lostAgainst(to);
        }
    }

    /** The wish that gains most and is at least so well fulfilled then; null if none gains. */
    private @Nullable Change greatest(Moment before, Moment then, double least) {
        Change greatest = null;
        int i = 0;
        List<Wish> later = all(then).toList();
        for (Wish earlier : all(before).toList()) {
            Change change = new Change(earlier, later.get(i++));
            if (change.gain() > (greatest == null ? 0 : greatest.gain()) && change.to.value() >= least) {
                greatest = change;
            }
        }
        return greatest;
    }

    /** A picture of twilight is meant to be dim. */
    private Wish at(LightWish wish, Moment moment) {
        Wish light = Wish.of(wish, moment, facingDeg).inRain(moment, wish);
        return wishes.contains(LightWish.TWILIGHT) ? light : light.brightEnough(moment);
    }

    private static boolean hidesTheSun(LightAdvice why) {
        return why instanceof LightAdvice.SunBehindLand || why instanceof LightAdvice.SunNotYetUp;
    }
}
