package understorey.packing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.LEGS;
import static understorey.Samples.MACRO;
import static understorey.Samples.POLARISER;
import static understorey.Samples.RING;
import static understorey.Samples.ZOOM;
import static understorey.Samples.fullFrame;
import static understorey.Samples.picture;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import understorey.Glass;
import understorey.Samples;
import understorey.advice.Advice;
import understorey.advice.BagAdvice;
import understorey.advice.HelpAdvice;
import understorey.exposure.Conditions;
import understorey.exposure.Exposure;
import understorey.exposure.Fits;
import understorey.exposure.Metering;
import understorey.exposure.Settings;
import understorey.kit.Darkening;
import understorey.kit.Intent;
import understorey.kit.ShotFit;
import understorey.kit.SmallestBag;
import understorey.kit.Verdict;
import understorey.kit.WholeBag;
import understorey.plan.Bag;
import understorey.plan.Body;
import understorey.plan.Lens;
import understorey.plan.Sensor;
import understorey.plan.Viewpoint;
import understorey.visit.HeadTorchHours;

class PackingTest {

    private static final Samples.Picture VIEW = picture("View").equivalent(50).sharp(10, 40);
    private static final Samples.Picture STAR = picture("Star").wide(0.036).deep(0.001).polarised();

    private static Bag full() {
        Bag bag = Samples.bag(fullFrame(24), Samples.prime(135), ZOOM, MACRO);
        bag = Samples.with(Samples.with(bag, LEGS, Samples.BEANBAG), RING, POLARISER, Samples.tube(12));
        return new Bag(bag.name(), null, bag.bodies(), bag.lenses(), bag.supports(), bag.filters(), false, List.of(), 0,
                List.of(new Bag.Extra("Mat", 200.0), new Bag.Extra("Torch", null)));
    }

    private static final ZonedDateTime NOON = ZonedDateTime.of(2027, 5, 8, 12, 0, 0, 0, Samples.zone());
    private static final HeadTorchHours LIGHT = new HeadTorchHours(NOON, null, null, NOON.plusHours(3), false);
    private static final HeadTorchHours DARK = new HeadTorchHours(NOON, NOON.plusHours(1), null, NOON.plusHours(3), false);

    private static Packing pack(Bag bag, double contrastStops, Samples.Picture... pictures) {
        return pack(bag, 9, contrastStops, null, LIGHT, pictures);
    }

    private static Packing pack(Bag bag, double ev, double contrastStops, Double celsius, HeadTorchHours lamp,
                                Samples.Picture... pictures) {
        List<Intent> intents = new ArrayList<>();
        for (Samples.Picture picture : pictures) {
            intents.add(picture.intent());
        }
        SmallestBag smallest = SmallestBag.of(bag, List.of(), intents);
        List<Packing.Use> uses = new ArrayList<>();
        List<Advice> helps = new ArrayList<>();
        for (ShotFit fit : smallest.fits()) {
            Settings settings = Exposure.of(fit.best(), Darkening.of(bag, fit.best()),
                    new Conditions(ev, contrastStops, null, 0, 0, null, Metering.GROUND, 2));
            if (fit.best().verdict().and(settings.verdict()) != Verdict.CANNOT) {
                uses.add(new Packing.Use(fit.best(), settings, settings.dimming()));
            }
            helps.addAll(fit.helps());
        }
        return Packing.of(smallest, uses, helps, new Outdoors(celsius, lamp, false, false));
    }

    private static List<String> names(List<Packing.Item> items) {
        return items.stream().map(Packing.Item::name).toList();
    }

    @Test
    void takesWhatAnyPictureUsesInTheOrderOfTheBagAndLeavesTheRest() {
        Packing packing = pack(full(), 0, STAR, VIEW);
        assertEquals(List.of("Main body", "Short zoom", "Close-up prime", "Legs", "Ring 62 to 72", "Polariser", "Mat",
                "Torch"), names(packing.take()));
        assertEquals(List.of("Prime 135.0", "Beanbag", "Tube 12.0"), names(packing.leave()));
        assertEquals(List.of("Star", "View"), packing.take().get(0).shots());
        assertEquals(List.of("Star"), packing.take().get(2).shots());
        assertEquals(List.of(BagAdvice.HelpCard.class, BagAdvice.HelpRelease.class), Samples.kinds(packing.missing()));
    }

    @Test
    void weighsWhatItTakesAndCountsWhatNobodyWeighed() {
        Packing packing = pack(full(), 0, STAR, VIEW);
        assertEquals(660 + 430 + 600 + 1350 + 10 + 25 + 200, packing.weightG(), 1e-9);
        assertEquals(1, packing.unweighed());
    }

    /** Twenty frames a picture: common practice, no source. */
    @Test
    void countsCardsAndBatteriesByTheFrame() {
        Packing single = pack(full(), 0, STAR, VIEW);
        assertEquals(40, single.frames());
        assertEquals(40 * 0.028, single.cardGb(), 1e-9);
        assertEquals(1, single.batteries());
        Packing bracketed = pack(full(), 5, STAR, VIEW);
        assertEquals(120, bracketed.frames());
        assertEquals(120 * 0.028, bracketed.cardGb(), 1e-9);
    }

    @Test
    void needsNoSecondBatteryForExactlyOneCharge() {
        Samples.Picture[] pictures = new Samples.Picture[20];
        for (int i = 0; i < pictures.length; i++) {
            pictures[i] = picture("View " + i).equivalent(50).sharp(10, 40);
        }
        assertEquals(400, pack(full(), 0, pictures).frames());
        assertEquals(1, pack(full(), 0, pictures).batteries());
    }

    @Test
    void takesABatteryForEachBody() {
        Body second = new Body("Second body", Sensor.FULL_FRAME, 24, "B", 100, 3200, 0, 20.0, 300, null, List.of());
        Lens only = new Lens("Other macro", "B", null, 90, 90, 2.8, 2.8, 22.0, 0.28, 1.0, null, 0, null);
        Bag bag = new Bag("Two", null, List.of(fullFrame(24), second), List.of(ZOOM, only), List.of(), List.of(), false,
                List.of(), 0, List.of());
        Packing packing = pack(bag, 0, VIEW, picture("Star").wide(0.036).deep(0.001));
        assertEquals(2, packing.batteries());
        assertEquals(20 * 0.028 + 20 * 0.020, packing.cardGb(), 1e-9);
    }

    /** f/1.4 in EV 15 is shorter than 1/8000 s. */
    @Test
    void takesTheNeutralDensityFilterThatALightAsksFor() {
        Lens fast = new Lens("Fast", "A", null, 50, 50, 1.4, 1.4, 16.0, 0.5, null, 62.0, 0, null);
        Bag bag = Samples.with(Samples.with(Samples.bag(fullFrame(24), fast), LEGS), RING, Glass.neutralDensity(72, 3));
        Samples.Picture plant = picture("Plant").wide(0.72).deep(0.001);
        Packing bright = pack(bag, 15, 0, null, LIGHT, plant);
        assertTrue(names(bright.take()).containsAll(List.of("Ring 62 to 72", "ND 3.0")), names(bright.take()).toString());
        Packing shade = pack(bag, 9, 0, null, LIGHT, plant);
        assertEquals(List.of("Ring 62 to 72", "ND 3.0"), names(shade.leave()));
    }

    /** Five runs of every frame of the stack: common practice, no source. */
    @Test
    void countsTheFramesOfAStackWhereTheCameraStands() {
        Samples.Picture deep = picture("Deep star").wide(0.036).deep(0.01).from(Viewpoint.Stance.GROUND);
        Packing stacked = pack(full(), 0, deep);
        int stack = Fits.settings(WholeBag.fit(deep.intent(), full()).best(), 9, 0, null).stackFrames();
        assertTrue(stack > 2);
        assertEquals(5 * stack, stacked.frames());
        // Without legs the camera comes down to the flower and is held out: nothing is sharp at life size, five stops short.
        Samples.Picture kneeling = picture("Deep star").wide(0.036).deep(0.01).from(Viewpoint.Stance.KNEELING);
        assertEquals(0, pack(Samples.bag(fullFrame(24), MACRO), 0, kneeling).frames());
    }

    /** A hundredth a degree below 20 °C: from memory and common practice. */
    @Test
    void countsTheColdAgainstTheBatteries() {
        Samples.Picture[] pictures = new Samples.Picture[17];
        for (int i = 0; i < pictures.length; i++) {
            pictures[i] = picture("View " + i).equivalent(50).sharp(10, 40);
        }
        Bag bag = supplied(List.of(8.0), 1);
        assertEquals(1, pack(bag, 9, 0, 20.0, LIGHT, pictures).batteries());
        Packing cold = pack(bag, 9, 0, 0.0, LIGHT, pictures);
        assertEquals(3, cold.batteries(), "two, and one to spare");
        assertEquals(List.of(BagAdvice.HelpCards.class, BagAdvice.BatteriesCold.class), supplies(cold));
        assertEquals(10, Samples.the(BagAdvice.HelpCards.class, cold.missing()).needed());
        assertEquals(List.of(BagAdvice.HelpCards.class, BagAdvice.HelpBatteries.class), supplies(pack(bag, 9, 5, 20.0, LIGHT, pictures)));
        assertEquals(List.of(), supplies(pack(supplied(List.of(8.0, 8.0), 3), 9, 0, 0.0, LIGHT, pictures)));
        assertEquals(List.of(), supplies(pack(supplied(List.of(), 0), 9, 0, 0.0, LIGHT, pictures)));
    }

    private static Bag supplied(List<Double> cardsGb, int batteries) {
        return new Bag("Bag", null, List.of(fullFrame(24)), List.of(ZOOM), List.of(LEGS), List.of(), true, cardsGb,
                batteries, List.of());
    }

    private static List<Class<?>> supplies(Packing packing) {
        List<Class<?>> kinds = new ArrayList<>(Samples.kinds(packing.missing()));
        kinds.retainAll(List.of(BagAdvice.HelpCards.class, BagAdvice.HelpBatteries.class, BagAdvice.BatteriesCold.class));
        return kinds;
    }

    @Test
    void asksForAReleaseWhereALongTimeStandsOnLegs() {
        Bag bag = Samples.with(Samples.bag(fullFrame(24), ZOOM), LEGS);
        assertTrue(Samples.kinds(pack(bag, 2, 0, null, LIGHT, VIEW).missing()).contains(BagAdvice.HelpRelease.class));
        assertFalse(Samples.kinds(pack(Samples.released(bag), 2, 0, null, LIGHT, VIEW).missing()).contains(BagAdvice.HelpRelease.class));
        assertFalse(Samples.kinds(pack(bag, 12, 0, null, LIGHT, VIEW).missing()).contains(BagAdvice.HelpRelease.class));
    }

    @Test
    void asksForALampOnlyWhereAWayIsDarkAndNoExtraIsOne() {
        Bag none = Samples.bag(fullFrame(24), ZOOM);
        assertTrue(Samples.kinds(pack(none, 9, 0, null, DARK, VIEW).missing()).contains(BagAdvice.HelpLamp.class));
        assertFalse(Samples.kinds(pack(none, 9, 0, null, LIGHT, VIEW).missing()).contains(BagAdvice.HelpLamp.class));
        assertFalse(Samples.kinds(pack(full(), 9, 0, null, DARK, VIEW).missing()).contains(BagAdvice.HelpLamp.class));
    }

    @Test
    void saysWhyEachThingStaysAtHome() {
        Map<String, Class<?>> why = new HashMap<>();
        pack(full(), 0, STAR, VIEW).leave().forEach(item -> why.put(item.name(), item.why().getClass()));
        assertEquals(BagAdvice.LeftUnasked.class, why.get("Prime 135.0"));
        assertEquals(BagAdvice.LeftAsWell.class, why.get("Tube 12.0"));
        Packing dark = pack(Samples.bag(fullFrame(24), ZOOM), -8, 0, null, LIGHT, VIEW);
        assertEquals(List.of("Main body", "Short zoom"), names(dark.leave()));
        assertInstanceOf(BagAdvice.LeftNoLight.class, dark.leave().get(0).why());
    }

    @Test
    void knowsNothingOfCardsAndBatteriesOfAPhone() {
        Packing packing = pack(Samples.bag(Samples.phone()), 0, VIEW);
        assertNull(packing.cardGb());
        assertNull(packing.batteries());
        assertEquals(List.of("Pocket phone"), names(packing.take()));
    }

    @Test
    void namesOnceWhatWouldHaveHelped() {
        Packing packing = pack(Samples.with(Samples.bag(fullFrame(24), ZOOM, MACRO), POLARISER), 0, STAR,
                picture("Star again").wide(0.036).deep(0.001).polarised());
        assertEquals(1, Samples.kinds(packing.missing()).stream().filter(HelpAdvice.HelpStepUpRing.class::equals).count());
    }

    @Test
    void takesOnlyTheExtrasWhenNothingIsToBePhotographed() {
        Packing packing = Packing.of(SmallestBag.of(full(), List.of(), List.of()), List.of(), List.of(), new Outdoors(null, LIGHT, false, false));
        assertEquals(List.of("Mat", "Torch"), names(packing.take()));
        assertEquals(0, packing.frames());
        assertNull(packing.batteries());
    }
}
