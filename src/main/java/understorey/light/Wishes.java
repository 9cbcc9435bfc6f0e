package understorey.light;

import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.LightAdvice;
import understorey.plan.LightWish;
import understorey.plan.Shot;

/**
 * The light that a picture wishes for: all of its wishes together.
 *
 * @param facingDeg bearing of the lens axis; null for a picture without one
 */
public record Wishes(List<LightWish> wishes, @Nullable Double facingDeg) {

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
        return new Wishes(shot.light(), shot.facingDeg());
    }

    /** How well a moment gives the light wished for, 0 to 1: the product of the wishes; 1 without wishes. */
    public double quality(Moment moment) {
        double product = 1;
        for (LightWish wish : wishes) {
            product *= at(wish, moment).value();
        }
        return product;
    }

    /** What decides each wish at a moment, the weakest first; what decides several of them is given once. */
    public List<Advice> because(Moment moment) {
        return wishes.stream().map(wish -> at(wish, moment)).sorted(Comparator.comparingDouble(Wish::value))
                .<Advice>map(Wish::because).distinct().toList();
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
        return wishes.stream().map(wish -> at(wish, moment)).min(Comparator.comparingDouble(Wish::value)).orElseThrow();
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
        for (LightWish wish : wishes) {
            Change change = new Change(at(wish, before), at(wish, then));
            if (change.gain() > (greatest == null ? 0 : greatest.gain()) && change.to.value() >= least) {
                greatest = change;
            }
        }
        return greatest;
    }

    /** A picture of twilight is meant to be dim. */
    private Wish at(LightWish wish, Moment moment) {
        Wish light = Wish.of(wish, moment, facingDeg);
        return wishes.contains(LightWish.TWILIGHT) ? light : light.brightEnough(moment);
    }

    private static boolean hidesTheSun(LightAdvice why) {
        return why instanceof LightAdvice.SunBehindLand || why instanceof LightAdvice.SunNotYetUp;
    }
}
