package understorey.brief;

import understorey.scene.Drawing;
import understorey.visit.Place;

/** The light at a place, with its drawings. */
public record SpotLight(Place place, Drawing dayLight, Drawing skyline) {
}
