package understorey.packing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static understorey.Samples.MACRO;
import static understorey.Samples.ZOOM;
import static understorey.Samples.bag;
import static understorey.Samples.fullFrame;
import static understorey.Samples.phone;
import static understorey.Samples.picture;
import static understorey.Samples.prime;

import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.kit.Intent;
import understorey.kit.SmallestBag;
import understorey.plan.Bag;
import understorey.plan.Support;

class CompanionBagTest {

    private static final Intent VIEW = picture("View").equivalent(50).sharp(10, 40).intent();
    private static final Intent STAR = picture("Star").wide(0.036).deep(0.001).intent();

    private static CompanionBag of(Bag bag, Intent... intents) {
        return CompanionBag.of("Friend", SmallestBag.of(bag, List.of(), List.of(intents)));
    }

    @Test
    void takesOnlyWhatAPictureNeedsAndSaysForWhich() {
        Bag bag = bag(fullFrame(24), prime(135), ZOOM, MACRO);
        CompanionBag carried = of(bag, VIEW, STAR);
        assertEquals(List.of(fullFrame(24).name(), ZOOM.name(), MACRO.name()), names(carried));
        assertEquals(List.of(List.of("View", "Star"), List.of("View"), List.of("Star")),
                carried.take().stream().map(Packing.Item::shots).toList());
    }

    @Test
    void weighsWhatIsWeighedAndCountsTheRest() {
        CompanionBag carried = of(Samples.with(bag(fullFrame(24), MACRO), Samples.LEGS), STAR);
        double weighed = carried.take().stream().filter(item -> item.weightG() != null).mapToDouble(Packing.Item::weightG).sum();
        assertEquals(weighed, carried.weightG());
        assertEquals(carried.take().stream().filter(item -> item.weightG() == null).count(), carried.unweighed());
    }

    @Test
    void leavesOutWhatCannotTakeThePicture() {
        assertEquals(List.of(), names(of(bag(fullFrame(24)), VIEW, STAR)), "a body without a lens");
        assertEquals(1, of(bag(phone()), picture("View").equivalent(25).intent()).take().size());
    }

    @Test
    void tellsTwoThingsOfOneNameApart() {
        Support low = new Support(ZOOM.name(), Support.Kind.BEANBAG, null, null, null, 500.0);
        CompanionBag carried = of(Samples.with(bag(fullFrame(24), ZOOM), low), VIEW);
        assertEquals(List.of(fullFrame(24).name(), ZOOM.name()), names(carried));
        assertEquals(660 + 430, carried.weightG());
    }

    private static List<String> names(CompanionBag bag) {
        return bag.take().stream().map(Packing.Item::name).toList();
    }
}
