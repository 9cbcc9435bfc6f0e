package understorey.kit.camera;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.plan.Bag;
import understorey.plan.Body;
import understorey.plan.Filter;
import understorey.plan.Lens;
import understorey.plan.Support;

/** Bodies, lenses, supports and filters of a bag. Two may be alike or have one name, so identity tells them apart. */
public final class Things {

    private Things() {
    }

    /** Bodies, lenses, supports, filters: what pictures choose from, in file order. */
    public static List<Object> of(Bag bag) {
        List<Object> things = new ArrayList<>(bag.bodies());
        things.addAll(bag.lenses());
        things.addAll(bag.supports());
        things.addAll(bag.filters());
        return things;
    }

    /** The bag with those things only; what is no such thing stays as it is. */
    public static Bag only(Bag bag, List<Object> things) {
        return new Bag(bag.name(), bag.slug(), both(bag.bodies(), things), both(bag.lenses(), things),
                both(bag.supports(), things), both(bag.filters(), things), bag.remoteRelease(), bag.cardsGb(),
                bag.batteries(), bag.extras());
    }

    private static <T> List<T> both(List<T> some, List<Object> others) {
        return some.stream().filter(one -> among(others, one)).toList();
    }

    public static boolean among(List<?> things, Object thing) {
        return things.stream().anyMatch(one -> one == thing);
    }

    /** The first of some that is not among the things; null if all are. */
    public static @Nullable Object firstNotAmong(List<?> things, List<?> some) {
        return some.stream().filter(one -> !among(things, one)).findFirst().orElse(null);
    }

    /** Name of a thing. */
    public static String name(Object thing) {
        return thing instanceof Body body ? body.name() : thing instanceof Lens lens ? lens.name()
                : thing instanceof Support support ? support.name() : ((Filter) thing).name();
    }

    /** Weight of a thing, grams; null if it is not given. */
    public static @Nullable Double weightG(Object thing) {
        return thing instanceof Body body ? body.weightG() : thing instanceof Lens lens ? lens.weightG()
                : thing instanceof Support support ? support.weightG() : ((Filter) thing).weightG();
    }
}
