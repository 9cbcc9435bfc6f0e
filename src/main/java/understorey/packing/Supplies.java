package understorey.packing;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.BagAdvice;
import understorey.plan.Bag;
import understorey.plan.Body;

/**
 * Frames of the pictures, with the cards and batteries that they need.
 *
 * @param frames    tries × frames of a bracket × frames of a focus stack, over all pictures
 * @param cardGb    of the RAW frames; null if no body gives the size of a RAW file
 * @param batteries for the frames, per body, with a spare in the cold and for long exposures; null if no body gives the frames per battery
 * @param lacking   things that the bag has too few of; empty if it does not say what it has
 */
record Supplies(int frames, @Nullable Double cardGb, @Nullable Integer batteries, List<Advice> lacking) {

    /** Frames per picture until one is right, without brackets: common practice, no source. */
    static final int FRAMES_A_PICTURE = 20;
    /** Runs of a focus stack per picture: common practice, no source. */
    static final int RUNS_A_STACK = 5;

    /** In the cold, and for exposures beyond the camera's own scale, people take a spare battery: common practice, no source. */
    private static final double COLD_C = 10;
    private static final double BULB_S = 30;

    static Supplies of(Bag bag, List<Packing.Use> uses, @Nullable Double coldestC) {
        int frames = 0;
        double gigabytes = 0;
        boolean sized = false;
        Map<Body, Integer> byBody = new IdentityHashMap<>();
        List<Body> bodies = new ArrayList<>();
        for (Packing.Use use : uses) {
            int here = frames(use);
            Body body = use.fit().camera().body();
            frames += here;
            sized |= body.rawSizeMb() != null;
            gigabytes += body.rawSizeMb() == null ? 0 : here * body.rawSizeMb() / 1000;
            Integer before = byBody.put(body, byBody.getOrDefault(body, 0) + here);
            if (before == null) {
                bodies.add(body);
            }
        }
        Double cards = sized ? Double.valueOf(gigabytes) : null;
        boolean cold = coldestC != null && coldestC < COLD_C;
        boolean longFrames = uses.stream().anyMatch(use -> use.settings().shutterS() > BULB_S);
        Integer warm = spared(batteries(bodies, byBody, null), longFrames);
        Integer batteries = spared(batteries(bodies, byBody, coldestC), cold || longFrames);
        return new Supplies(frames, cards, batteries, lacking(bag, cards, warm, batteries, coldestC));
    }

    private static @Nullable Integer spared(@Nullable Integer batteries, boolean spare) {
        return batteries == null || !spare ? batteries : Integer.valueOf(batteries + 1);
    }

    private static int frames(Packing.Use use) {
        int stack = use.settings().stackFrames();
        int tries = stack > 1 ? RUNS_A_STACK : FRAMES_A_PICTURE;
        return tries * use.settings().bracketStops().size() * stack;
    }

    private static @Nullable Integer batteries(List<Body> bodies, Map<Body, Integer> frames, @Nullable Double celsius) {
        int batteries = 0;
        boolean known = false;
        for (Body body : bodies) {
            if (body.batteryFrames() != null) {
                known = true;
                batteries += (int) Math.ceil(frames.getOrDefault(body, 0) / (body.batteryFrames() * Cold.batteryShare(celsius)));
            }
        }
        return known ? Integer.valueOf(batteries) : null;
    }

    private static List<Advice> lacking(Bag bag, @Nullable Double cardGb, @Nullable Integer warm, @Nullable Integer batteries,
                                        @Nullable Double celsius) {
        List<Advice> lacking = new ArrayList<>();
        double haveGb = 0;
        for (double card : bag.cardsGb()) {
            haveGb += card;
        }
        if (cardGb != null && cardGb > 0 && bag.cardsGb().isEmpty()) {
            lacking.add(new BagAdvice.HelpCard(Math.ceil(cardGb)));
        } else if (cardGb != null && cardGb > haveGb) {
            lacking.add(new BagAdvice.HelpCards(Math.ceil(cardGb), haveGb));
        }
        if (warm != null && batteries != null && bag.batteries() > 0 && batteries > bag.batteries()) {
            lacking.add(batteries > warm
                    ? new BagAdvice.BatteriesCold(batteries, celsius == null ? Cold.WARM_C : celsius, bag.batteries())
                    : new BagAdvice.HelpBatteries(batteries, bag.batteries()));
        }
        return lacking;
    }
}
