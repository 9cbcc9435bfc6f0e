package understorey.packing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.LEGS;
import static understorey.Samples.MACRO;
import static understorey.Samples.POLARISER;
import static understorey.Samples.RING;
import static understorey.Samples.ZOOM;
import static understorey.Samples.fullFrame;
import static understorey.Samples.picture;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.exposure.Exposure;
import understorey.kit.ShotFit;
import understorey.plan.Bag;
import understorey.plan.Body;
import understorey.plan.Lens;
import understorey.plan.Sensor;
import understorey.reason.Reason;

class PackingTest {

    private static final Samples.Picture VIEW = picture("View").equivalent(50).sharp(10, 40);
    private static final Samples.Picture STAR = picture("Star").wide(0.036).deep(0.001).polarised();

    private static Bag full() {
        Bag bag = Samples.bag(fullFrame(24), Samples.prime(135), ZOOM, MACRO);
        bag = Samples.with(Samples.with(bag, LEGS, Samples.BEANBAG), RING, POLARISER, Samples.tube(12));
        return new Bag(bag.name(), null, bag.bodies(), bag.lenses(), bag.supports(), bag.filters(), false, List.of(), 0,
                List.of(new Bag.Extra("Mat", 200.0), new Bag.Extra("Torch", null)));
    }

    private static Packing pack(Bag bag, double contrastStops, Samples.Picture... pictures) {
        List<Packing.Use> uses = new ArrayList<>();
        List<Reason> helps = new ArrayList<>();
        for (Samples.Picture picture : pictures) {
            ShotFit fit = ShotFit.of(picture.intent(), bag);
            uses.add(new Packing.Use(fit.best(), Exposure.of(fit.best(), 9, contrastStops, null)));
            helps.addAll(fit.helps());
        }
        return Packing.of(bag, uses, helps);
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
        assertTrue(packing.missing().isEmpty());
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
        Packing.Use one = use(Samples.bag(fullFrame(24), ZOOM));
        Packing.Use two = use(Samples.bag(second, new Lens("Other zoom", "B", null, 24, 70, 4, 4, 22.0,
                0.38, 0.3, null, 0, null)));
        Packing packing = Packing.of(full(), List.of(one, two), List.of());
        assertEquals(2, packing.batteries());
        assertEquals(20 * 0.028 + 20 * 0.020, packing.cardGb(), 1e-9);
    }

    private static Packing.Use use(Bag bag) {
        ShotFit fit = ShotFit.of(VIEW.intent(), bag);
        return new Packing.Use(fit.best(), Exposure.of(fit.best(), 9, 0, null));
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
        assertEquals(1, Samples.kinds(packing.missing()).stream().filter("HELP_STEP_UP_RING"::equals).count());
    }

    @Test
    void takesOnlyTheExtrasWhenNothingIsToBePhotographed() {
        Packing packing = Packing.of(full(), List.of(), List.of());
        assertEquals(List.of("Mat", "Torch"), names(packing.take()));
        assertEquals(0, packing.frames());
        assertNull(packing.batteries());
    }
}
