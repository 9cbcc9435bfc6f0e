package understorey.kit;

import java.util.List;
import understorey.kit.camera.Camera;
import understorey.kit.camera.Things;
import understorey.plan.Bag;

/** A bag that is carried whole, with no companion to borrow from. */
public final class WholeBag {

    private WholeBag() {
    }

    public static ShotFit fit(Intent intent, Bag bag) {
        return Picture.of(bag, Camera.of(bag), intent).carrying(bag, Things.of(bag), List.of());
    }
}
