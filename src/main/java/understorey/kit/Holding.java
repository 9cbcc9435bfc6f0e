package understorey.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.SupportAdvice;
import understorey.kit.camera.Camera;
import understorey.kit.camera.Shortfall;
import understorey.kit.camera.Things;
import understorey.plan.Bag;
import understorey.plan.Support;
import understorey.plan.Viewpoint;

/**
 * Support that holds the camera for a picture, and its height.
 *
 * @param support    null for the hands
 * @param heightM    of the lens axis above the ground
 * @param reasons    against each support before it
 * @param shortfalls in the order of the reasons
 */
record Holding(@Nullable Support support, double heightM, List<Advice> reasons, List<Shortfall> shortfalls) {

    /** Legs spread a little wider, and a bag gives: common practice, no source. */
    private static final double GIVES_M = 0.01;
    /** Share by which a height that the author leaves open gives way: common practice, no source. */
    private static final double OPEN_HEIGHT = 1 / 3.0;
    /** Order of choice: legs hold any picture, then come supports on the ground, then a monopod. */
    private static final List<Support.Kind> ORDER = List.of(Support.Kind.TRIPOD, Support.Kind.GROUND_PLATE,
            Support.Kind.BEANBAG, Support.Kind.MONOPOD);

    /**
     * What holds the camera, of the supports that are carried. A phone without a support is braced, which misses nothing.
     *
     * @param whole   every support of the author, each with what speaks against it
     * @param carried a part of it
     * @param tilt    of the camera, with the height that the picture asks for
     */
    static Holding of(Bag whole, Bag carried, Camera camera, Tilt tilt) {
        List<Advice> against = new ArrayList<>();
        List<Shortfall> shortfalls = new ArrayList<>();
        for (Support support : inOrder(whole)) {
            double heightM = reach(support, tilt);
            Advice obstacle = obstacle(support, camera, heightM);
            if (obstacle != null) {
                against.add(obstacle);
                shortfalls.add(reaches(support, heightM) ? new Shortfall.Overloaded() : new Shortfall.NoSupport());
            } else if (whole == carried || Things.among(carried.supports(), support)) {
                return new Holding(support, heightM, List.copyOf(against), List.copyOf(shortfalls));
            } else {
                against.add(new SupportAdvice.SupportAtHome(support.name()));
                shortfalls.add(new Shortfall.NoSupport());
            }
        }
        if (whole.supports().isEmpty() && !camera.lens().oneAperture()) {
            against.add(new SupportAdvice.NoSupport());
            shortfalls.add(new Shortfall.NoSupport());
        }
        return new Holding(null, tilt.heightM(), List.copyOf(against), List.copyOf(shortfalls));
    }

    /** Every support of the bag that can hold the camera there, the first choice first; reasons are left out. */
    static List<Holding> all(Bag bag, Camera camera, Tilt tilt) {
        return inOrder(bag).stream().map(support -> new Holding(support, reach(support, tilt), List.of(), List.of()))
                .filter(held -> held.support() != null && reaches(held.support(), held.heightM()) && !overloads(held.support(), camera))
                .toList();
    }

    private static List<Support> inOrder(Bag bag) {
        return bag.supports().stream().sorted(Comparator.comparing(support -> ORDER.indexOf(support.kind()))).toList();
    }

    /** Steadiness: 2 for a support that needs no hand, 1 for a monopod, 0 for the hands. */
    static int steadiness(@Nullable Support support) {
        return support == null ? 0 : steady(support) ? 2 : 1;
    }

    /** True when it keeps the camera still for seconds; hands and a monopod do not. */
    static boolean steady(@Nullable Support support) {
        return support != null && support.kind() != Support.Kind.MONOPOD;
    }

    /**
     * A stance gives way to the support by a little, and a height that the author leaves open by a third, as far as the camera need
     * not be tilted much for it; a height in figures only by what the support itself gives.
     */
    private static double reach(Support support, Tilt tilt) {
        Intent intent = tilt.intent();
        double wantedM = tilt.heightM();
        Viewpoint viewpoint = intent.viewpoint();
        double reachedM = Math.max(lowestM(support), Math.min(highestM(support), wantedM));
        if (intent.assumed().contains("viewpoint") && Math.abs(reachedM / wantedM - 1) <= OPEN_HEIGHT && tilt.natural(reachedM)) {
            return reachedM;
        }
        if (viewpoint == Viewpoint.Stance.STANDING && highestM(support) > Intent.KNEELING_M) {
            return Math.min(wantedM, highestM(support));
        }
        if (viewpoint == Viewpoint.Stance.GROUND && lowestM(support) < 2 * Intent.GROUND_M) {
            return Math.max(Math.min(wantedM, highestM(support)), lowestM(support));
        }
        return wantedM < lowestM(support) && wantedM >= lowestM(support) - GIVES_M ? lowestM(support) : wantedM;
    }

    /** What keeps the support from holding the camera there; null if nothing does. */
    private static @Nullable Advice obstacle(Support support, Camera camera, double heightM) {
        if (!reaches(support, heightM)) {
            return heightM < lowestM(support) ? new SupportAdvice.SupportTooTall(support.name(), lowestM(support), heightM)
                    : new SupportAdvice.SupportTooShort(support.name(), highestM(support), heightM);
        }
        return support.carriesKg() != null && overloads(support, camera)
                ? new SupportAdvice.SupportOverloaded(support.name(), support.carriesKg(), camera.weightG() / 1000) : null;
    }

    private static boolean reaches(Support support, double heightM) {
        return heightM >= lowestM(support) - 1e-9 && heightM <= highestM(support) + 1e-9;
    }

    private static boolean overloads(Support support, Camera camera) {
        return support.carriesKg() != null && camera.weightG() / 1000 > support.carriesKg();
    }

    /** Lowest height, metres; where the bag gives none, common practice, no source. */
    private static double lowestM(Support support) {
        if (support.lowestM() != null) {
            return support.lowestM();
        }
        return switch (support.kind()) {
            case TRIPOD -> 0.4;
            case MONOPOD -> 0.5;
            case BEANBAG, GROUND_PLATE -> 0.1;
        };
    }

    private static double highestM(Support support) {
        if (support.highestM() != null) {
            return support.highestM();
        }
        return switch (support.kind()) {
            case TRIPOD, MONOPOD -> 1.5;
            case BEANBAG, GROUND_PLATE -> 0.2;
        };
    }
}
