package understorey;

import java.util.ArrayList;
import java.util.List;
import understorey.RandomValues.Block;

/**
 * A trip whose values lie at the limits that the readers allow, with a bag and a site of the same kind in it. Most
 * of these plans are odd but allowed; in the rest two values contradict each other.
 */
public final class RandomPlan {

    /** A day that is odd somewhere: it does not exist, or has 23, 24, 25, 26 or 47 hours, or no midnight. */
    private record Day(String zone, double latitude, double longitude, String date) {
    }

    private static final List<Day> DAYS = List.of(
            new Day("Europe/London", 52.337, -3.548, "2027-05-08"), new Day("Europe/London", 52.337, -3.548, "2027-03-28"),
            new Day("Europe/London", 52.337, -3.548, "2027-10-31"), new Day("Pacific/Apia", -13.8, -171.8, "2011-12-30"),
            new Day("Pacific/Apia", -13.8, -171.8, "2011-12-29"), new Day("Pacific/Kwajalein", 9.1, 167.4, "1969-09-30"),
            new Day("Pacific/Kwajalein", 9.1, 167.4, "1993-08-21"), new Day("Pacific/Kiritimati", 1.9, -157.4, "1995-01-01"),
            new Day("Pacific/Kiritimati", 1.9, -157.4, "1994-12-31"), new Day("Antarctica/Troll", -72.01, 2.53, "2027-10-31"),
            new Day("Antarctica/Troll", -72.01, 2.53, "2027-03-28"), new Day("America/Sao_Paulo", -23.5, -46.6, "2018-11-04"),
            new Day("America/Sao_Paulo", -23.5, -46.6, "2018-02-17"), new Day("Asia/Beirut", 33.9, 35.5, "2027-03-28"),
            new Day("America/Havana", 23.1, -82.4, "2027-03-14"), new Day("Australia/Lord_Howe", -31.6, 159.1, "2027-04-04"),
            new Day("Australia/Lord_Howe", -31.6, 159.1, "2027-10-03"), new Day("Arctic/Longyearbyen", 78.2, 15.6, "2027-06-21"),
            new Day("Arctic/Longyearbyen", 78.2, 15.6, "2027-12-21"), new Day("Europe/Oslo", 66.5622, 14, "2027-06-21"),
            new Day("Antarctica/South_Pole", -90, 0, "2027-03-20"), new Day("Etc/UTC", 90, 180, "2027-09-23"),
            new Day("Etc/GMT-14", 0, 180, "2100-12-31"), new Day("Etc/GMT+12", 0, -180, "1900-01-01"),
            new Day("Pacific/Chatham", -44, -176.5, "2024-02-29"), new Day("Asia/Kathmandu", 27.7, 85.3, "1986-01-01"),
            new Day("Africa/Monrovia", 6.3, -10.8, "1972-01-07"), new Day("Europe/Amsterdam", 52.4, 4.9, "1937-07-01"),
            new Day("America/Adak", 51.9, -176.6, "2027-11-07"), new Day("Asia/Gaza", 31.5, 34.5, "2027-10-30"));

    private final RandomValues r;
    private final Day day;
    private final int spots;
    private final boolean severalDays;

    private RandomPlan(long seed) {
        r = new RandomValues(seed);
        day = r.any(DAYS);
        spots = r.upTo(3);
        severalDays = r.chance(6);
    }

    /** The text of a trip's file. */
    public static String yaml(long seed) {
        return new RandomPlan(seed).trip();
    }

    private String trip() {
        Block trip = r.block().put("trip", "Any trip").seldom(4, "series", "Any series").put("site", site());
        when(trip);
        trip.maybe("arrive", r.clock()).maybe("leave", r.clock());
        trip.put("gear", r.chance(3) ? "phone" : new RandomBag(r).bag());
        if (r.chance(4)) {
            trip.put("companions", List.of(r.block().put("name", "Another").put("gear",
                    r.chance(2) ? "phone" : new RandomBag(r).bag())));
        }
        trip.seldom(4, "contact", r.block().put("tell", "my sister").maybe("back_by", r.clock()));
        trip.maybe("sky", r.any("clear", "scattered", "broken", "overcast")).maybe("forecast", forecast());
        trip.seldom(4, "story", "From **far** to near.").put("shots", shots());
        trip.seldom(3, "share", r.block().maybe("audience", r.any("private", "party", "public"))
                .maybe("position", r.any("exact", "coarse", "hidden")));
        return trip.lines();
    }

    private void when(Block trip) {
        if (!severalDays) {
            trip.put("date", r.chance(5) ? r.any(DAYS).date() : day.date());
            return;
        }
        if (r.chance(2)) {
            trip.put("dates", List.of(day.date(), day.date().substring(0, 8) + "15"));
        } else {
            trip.put("dates", r.block().put("from", day.date()).put("to", day.date()));
        }
        trip.seldom(3, "weekdays", List.of("sat", "sun")).seldom(3, "avoid", List.of(day.date()))
                .maybe("spring", r.any("warmer", "cooler") + " by " + r.of(0, 6, "°C"));
    }

    private Block site() {
        boolean odd = r.chance(4);
        Block site = r.block().put("site", "Any wood")
                .put("latitude", odd ? r.number(-90, 90) : day.latitude())
                .put("longitude", odd ? r.number(-180, 180) : day.longitude()).put("time_zone", day.zone())
                .maybe("elevation", r.of(-450, 9000, "m")).maybe("skyline", skyline()).maybe("canopy", canopy())
                .seldom(3, "edges", edges()).seldom(3, "country", r.any("GB", "JP", "NZ", "CL"));
        site.put("spots", spotList(odd)).put("walks", walks());
        site.seldom(4, "opening", r.block().put("from", r.clock()).put("to", r.clock()));
        site.seldom(4, "parking", r.block().maybe("spot", spot()).maybe("closes", r.clock()).maybe("fee", "none"));
        site.seldom(3, "season", List.of(season())).seldom(4, "access", "By the path.")
                .seldom(5, "sensitive", "yes").seldom(4, "cautions", List.of("Stay on the path."))
                .maybe("public_name", "A wood");
        return site;
    }

    private List<Block> spotList(boolean odd) {
        List<Block> list = new ArrayList<>();
        for (int i = 0; i < spots; i++) {
            Block spot = r.block().put("name", "Spot " + i);
            spot.maybe("at", List.of(odd ? r.number(-90, 90) : Math.max(-90, Math.min(90, day.latitude() + 0.001 * i)),
                    odd ? r.number(-180, 180) : day.longitude()));
            list.add(spot.maybe("elevation", r.of(-450, 9000, "m")).seldom(3, "canopy", canopy())
                    .seldom(3, "skyline", skyline()).seldom(3, "edges", edges())
                    .maybe("slope", r.block().put("angle", r.number(0, 80)).put("faces", r.bearing()))
                    .seldom(3, "clearing", r.block().put("radius", r.of(0.5, 2000, "m"))));
        }
        return list;
    }

    private List<Block> walks() {
        List<Block> walks = new ArrayList<>();
        for (int i = 1; i < spots; i++) {
            if (r.chance(2)) {
                walks.add(r.block().put("from", "Spot " + (i - 1)).put("to", "Spot " + i)
                        .put("duration", r.of(1, 86_400, "s")));
            }
        }
        return walks;
    }

    private String spot() {
        return spots == 0 ? null : "Spot " + r.upTo(spots - 1);
    }

    private List<Block> skyline() {
        List<Block> points = new ArrayList<>();
        for (int i = r.upTo(4); i > 0; i--) {
            points.add(r.block().put("bearing", i * r.number(1, 89)).put("angle", r.number(-30, 89)));
        }
        return points;
    }

    private List<Block> edges() {
        return r.chance(4) ? List.of() : List.of(r.block().put("bearing", r.bearing()).put("distance", r.of(1, 5000, "m")));
    }

    private Object canopy() {
        if (r.chance(4)) {
            return "none";
        }
        Block canopy = r.block().maybe("trees", r.any("deciduous", "evergreen", "mixed"))
                .maybe("height", r.of(0.5, 120, "m")).seldom(3, "base", r.of(0, 0.4, "m"))
                .seldom(3, "stems", r.of(1, 100_000, "per ha")).seldom(3, "diameter", r.of(0.01, 10, "m"));
        return switch (r.upTo(3)) {
            case 0 -> canopy.put("stage", r.any("leafless", "bud-burst", "half-leaf", "full-leaf"));
            case 1 -> canopy.put("leaf_out", r.any(DAYS).date());
            case 2 -> canopy.put("plant_area_index", r.number(0, 12));
            default -> canopy;
        };
    }

    private Block season() {
        List<Block> records = new ArrayList<>();
        for (int i = r.upTo(8); i > 0; i--) {
            int year = r.chance(4) ? r.any(1900, 2100) : 2026 - i;
            records.add(r.block().maybe("first", year + "-04-0" + r.any(1, 9)).put("full", year + "-05-0" + r.any(1, 9))
                    .maybe("over", year + "-06-0" + r.any(1, 9)));
        }
        Block season = r.block().put("subject", "ramsons").put("records", records);
        return season.seldom(3, "seen", List.of(r.block().put("date", r.chance(2) ? day.date() : "2027-05-01")
                .put("stage", r.any("in bud", "first flowers", "full flower", "fading", "over"))));
    }

    private List<Block> forecast() {
        List<Block> rows = new ArrayList<>();
        for (int hour = r.upTo(5); hour < 24; hour += 1 + r.upTo(8)) {
            double wind = r.number(0, 80);
            Block row = r.block().put("time", String.format("%02d:00", hour)).seldom(severalDays ? 1 : 5, "date", day.date())
                    .maybe("temperature", r.of(-60, 60, "°C")).maybe("humidity", r.of(0, 100, "%"))
                    .seldom(4, "dew_point", r.of(-80, -60, "°C")).maybe("wind", RandomValues.written(wind) + " m/s")
                    .maybe("gust", r.of(wind, 120, "m/s")).maybe("cloud", r.number(0, 8))
                    .maybe("rain", r.of(0, 500, "mm")).maybe("rain_chance", r.of(0, 100, "%"))
                    .seldom(4, "temperature_850", r.of(-60, 60, "°C")).seldom(4, "wind_850", r.of(0, 80, "m/s"));
            rows.add(row);
        }
        return rows;
    }

    private List<Block> shots() {
        List<Block> shots = new ArrayList<>();
        int count = 1 + r.upTo(3);
        for (int i = 0; i < count; i++) {
            Block shot = r.block().put("name", "Shot " + i).put("subject", r.chance(3) ? subject(i) : "ramsons")
                    .maybe("role", r.any("opening", "approach", "detail", "closing", "extra")).maybe("spot", spot())
                    .maybe("viewpoint", r.chance(2) ? r.any("standing", "kneeling", "ground") : r.of(0.01, 30, "m"))
                    .maybe("orientation", r.any("landscape", "portrait")).maybe("sharp", sharp())
                    .seldom(3, "focal_equivalent", r.of(4, 3000, "mm")).seldom(3, "frame", frame())
                    .maybe("facing", r.bearing()).maybe("light", light()).maybe("polariser", r.any("yes", "no"))
                    .maybe("duration", r.of(10, r.any(600, 86_400), "s")).maybe("priority", r.whole(1, 3))
                    .seldom(3, "tilt", r.chance(2) ? r.number(-90, 90) : r.of(0, 90, r.any("° up", "down"))).seldom(12, "start", r.clock())
                    .seldom(3, "print", r.of(0.02, 20, "m")).seldom(4, "otherwise", "Go home.")
                    .seldom(4, "compose", r.block().maybe("foreground", "leaves").maybe("keep_out", List.of("a fence")))
                    .seldom(4, "aperture", "f/" + r.number(0.5, 128)).seldom(4, "shutter", r.of(0.00002, 3600, "s"))
                    .seldom(4, "iso", 1 + r.upTo(100_000)).seldom(4, "stack", r.any("yes", "no"));
            shots.add(i == 0 ? shot : shot.seldom(4, "after", "Shot " + (i - 1)));
        }
        return shots;
    }

    private Block subject(int number) {
        double low = r.number(0.005, 50);
        double sparse = r.number(0, 10_000);
        double index = r.number(0, 10);
        return r.block().put("name", "Flower " + number).maybe("months", List.of(r.whole(1, 12), r.whole(1, 12)))
                .maybe("stems", r.block().put("sparse", RandomValues.written(sparse) + " /m2")
                        .put("typical", RandomValues.written(sparse) + " /m2").put("thick", r.of(sparse, 10_000, "/m2")))
                .maybe("height", r.block().put("low", RandomValues.written(low) + " m").put("high", r.of(low, 50, "m")))
                .maybe("flower_width", r.of(0.5, 1000, "mm")).maybe("flowers_open", r.whole(1, 10_000))
                .maybe("flower_area_index", r.block().put("typical", index).put("thick", r.number(index, 10)))
                .maybe("reflectance", r.any("white", "yellow")).seldom(4, "hemisphere", r.any("north", "south"));
    }

    private Block sharp() {
        if (r.chance(2)) {
            return r.block().put("depth", r.of(0.0001, 1000, "m"));
        }
        double near = r.number(0.001, 100_000);
        return r.block().put("near", RandomValues.written(near) + " m")
                .put("far", r.chance(2) ? "infinity" : r.of(near + 0.001, 1_000_000, "m"));
    }

    private Block frame() {
        Block frame = switch (r.upTo(2)) {
            case 0 -> r.block().put("width", r.of(0.001, 10_000, "m"));
            case 1 -> r.block().put("height", r.of(0.001, 10_000, "m"));
            default -> r.block().put("fills", r.of(1, 100, "%"));
        };
        return frame.maybe("distance", r.of(0.001, 100_000, "m"));
    }

    private List<String> light() {
        return List.of(r.any("low-sun", "backlight", "sidelight", "frontlight"),
                r.any("overhead", "soft", "mist", "after-rain", "twilight"));
    }
}
