package understorey.yaml;

import java.util.Map;

/** Examples of required keys, for fixes. */
final class Examples {

    private static final Map<String, String> VALUES = Map.ofEntries(
            Map.entry("subject", "ramsons"), Map.entry("date", "2027-05-08"), Map.entry("gear", "phone"),
            Map.entry("trip", "Ramsons at first light"), Map.entry("latitude", "52.3361"),
            Map.entry("longitude", "-3.5502"), Map.entry("time_zone", "Europe/London"),
            Map.entry("focal", "24-70 mm"), Map.entry("aperture", "f/4"), Map.entry("closest", "0.4 m"),
            Map.entry("pixels", "24 Mpx"), Map.entry("sensor", "aps-c"), Map.entry("duration", "5 min"),
            Map.entry("bearing", "ENE"), Map.entry("faces", "ENE"), Map.entry("angle", "8"),
            Map.entry("radius", "12 m"), Map.entry("time", "\"06:00\""), Map.entry("near", "0.5 m"),
            Map.entry("far", "3 m"), Map.entry("site", "oak-wood, with a file sites/oak-wood.yaml"),
            Map.entry("tell", "my sister, by text"), Map.entry("thread", "62 mm"), Map.entry("loss", "1.5 stops"),
            Map.entry("length", "20 mm"), Map.entry("stage", "in bud"), Map.entry("mount", "A"),
            Map.entry("distance", "40 m"));

    private Examples() {
    }

    /** Fix for a missing key: an example where one helps. */
    static String of(String key, String what) {
        if (key.equals("gear") && what.equals("this bag")) {
            return "give the bag a name, for example gear: Small bag";
        }
        if (key.equals("name")) {
            return "give " + what + " a name";
        }
        String value = VALUES.get(key);
        return value == null ? "add '" + key + ":' with its value" : "for example " + key + ": " + value;
    }
}
