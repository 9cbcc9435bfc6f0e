package understorey.reading;

import java.util.Map;

/** How keys that a block owes may be written. */
final class Examples {

    private static final Map<String, String> VALUES = Map.ofEntries(
            Map.entry("subject", "ramsons"), Map.entry("date", "2027-05-08"), Map.entry("gear", "phone"),
            Map.entry("trip", "Ramsons at first light"), Map.entry("latitude", "52.3361"),
            Map.entry("longitude", "-3.5502"), Map.entry("time_zone", "Europe/London"),
            Map.entry("focal", "24-70 mm"), Map.entry("aperture", "f/4"), Map.entry("closest", "0.4 m"),
            Map.entry("pixels", "24 Mpx"), Map.entry("sensor", "aps-c"), Map.entry("duration", "5 min"),
            Map.entry("bearing", "ENE"), Map.entry("faces", "ENE"), Map.entry("angle", "8"),
            Map.entry("radius", "12 m"), Map.entry("time", "\"06:00\""), Map.entry("near", "0.5 m"),
            Map.entry("far", "3 m"));

    private Examples() {
    }

    /** Null for a key whose value depends too much on what the author has. */
    static String of(String key, String what) {
        if (key.equals("gear") && what.equals("this bag")) {
            return "give the bag a name, such as gear: Small bag";
        }
        String value = VALUES.get(key);
        return value == null ? null : "such as " + key + ": " + value;
    }
}
