package understorey.pages.json;

import understorey.light.LightAt;
import understorey.pages.words.Figures;

/** The light at an instant as members of a JSON object. */
final class LightJson {

    private LightJson() {
    }

    static void write(Json json, LightAt light) {
        json.time("time", light.sun().time())
                .number("sun_azimuth_deg", Figures.azimuthDeg(light.sun().azimuthDeg()))
                .number("sun_altitude_deg", Figures.altitudeDeg(light.sun().altitudeDeg()))
                .number("shadow_per_height", Figures.ratio(light.shadowPerHeight()))
                .truth("above_skyline", light.aboveSkyline())
                .number("fleck_share", Figures.share(light.fleckShare()))
                .object("open_ev100", light.open(), LightJson::open)
                .object("floor_ev100", light.floor(), LightJson::floor)
                .count("colour_temperature_k", light.colourTemperatureK())
                .number("moon_ev100", Figures.ev100(light.moonEv()))
                .number("plant_area_index", Figures.ratio(light.plantAreaIndex()));
    }

    /** What differs from spot to spot: the sun and the open ground stand in the site's own table. */
    static void onFloor(Json json, LightAt light) {
        json.time("time", light.sun().time()).truth("above_skyline", light.aboveSkyline())
                .number("fleck_share", Figures.share(light.fleckShare()))
                .object("floor_ev100", light.floor(), LightJson::floor);
    }

    private static void open(Json json, LightAt.OpenEv open) {
        json.number("sun", Figures.ev100(open.sun())).number("shade", Figures.ev100(open.shade()))
                .number("broken", Figures.ev100(open.broken())).number("overcast", Figures.ev100(open.overcast()));
    }

    private static void floor(Json json, LightAt.FloorEv floor) {
        json.number("fleck", Figures.ev100(floor.fleck())).number("shade", Figures.ev100(floor.shade()))
                .number("broken", Figures.ev100(floor.broken())).number("overcast", Figures.ev100(floor.overcast()));
    }
}
