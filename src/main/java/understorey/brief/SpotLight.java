package understorey.brief;

import understorey.scene.Scene;
import understorey.visit.Place;

/** The light at a place, with its drawings. */
public record SpotLight(Place place, Scene skyline) {
}
