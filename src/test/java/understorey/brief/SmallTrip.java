package understorey.brief;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.List;
import understorey.advice.Advice;
import understorey.order.Leg;
import understorey.reading.Plans;
import understorey.reading.PlansReader;
import understorey.yaml.finding.Finding;

/** Trips as a new user writes them: an invented wood, a bag, and what each test adds. */
final class SmallTrip {

    /** Half in leaf, on a level horizon; sunrise 05:26, sunset 20:58 on the date. */
    static final String WOOD = """
            trip: Invented
            site:
              site: Invented Clough
              latitude: 52.337
              longitude: -3.548
              time_zone: Europe/London
              country: GB
              canopy: {trees: deciduous, stage: half-leaf, height: 18 m}
            date: 2027-05-08
            """;

    /** The same wood with its edge to the west. */
    static final String EDGE_TO_THE_WEST = WOOD.replace("country: GB\n", "country: GB\n  edges: [{bearing: WNW, distance: 40 m}]\n");

    static final String FULL_BAG = """
            gear:
              gear: Full bag
              bodies:
                - {name: Main body, sensor: full-frame, pixels: 24 Mpx, mount: A, base_iso: 100, top_iso: 3200, stabilised: 3 stops, weight: 660 g}
              lenses:
                - {name: Short zoom, mount: A, focal: 24-70 mm, aperture: f/4, closest: 0.38 m, magnification: 0.3, thread: 72 mm, weight: 430 g}
                - {name: Long zoom, mount: A, focal: 70-200 mm, aperture: f/4, closest: 1 m, magnification: 0.27, thread: 72 mm, weight: 840 g}
                - {name: Wide prime, mount: A, focal: 20 mm, aperture: f/2.8, closest: 0.2 m, magnification: 0.17, thread: 62 mm, weight: 320 g}
                - {name: Close-up prime, mount: A, focal: 90 mm, aperture: f/2.8, closest: 0.28 m, magnification: 1.0, thread: 62 mm, weight: 600 g}
              supports:
                - {name: Legs, kind: tripod, lowest: 12 cm, highest: 150 cm, carries: 6 kg, weight: 1.35 kg}
              filters:
                - {name: Polariser, kind: polariser, thread: 72 mm, loss: 1.5 stops, weight: 25 g}
                - {name: Ring 62 to 72, kind: step-up ring, lens_thread: 62 mm, filter_thread: 72 mm, weight: 10 g}
              remote_release: yes
            """;

    /** The built-in one, held in the hand. */
    static final String PHONE = "gear: phone\n";

    private SmallTrip() {
    }

    /** The brief of a trip that is written in those parts, without a fault. */
    static Brief planned(Path folder, String... parts) throws IOException {
        Files.writeString(folder.resolve("trip.yaml"), String.join("", parts));
        Plans plans = PlansReader.read(folder);
        assertTrue(plans.findings().stream().noneMatch(finding -> finding.level() == Finding.Level.ERROR), plans.findings().toString());
        return Planner.brief(plans.trips().get(0));
    }

    /** The hours of a visit. */
    static String visit(String arrive, String leave) {
        return "arrive: \"" + arrive + "\"\nleave: \"" + leave + "\"\n";
    }

    /** The same weather from the first hour to the last, such as {@code wind: 1 m/s, cloud: 8}. */
    static String forecast(int from, int to, String weather) {
        return String.format("forecast:%n  - {time: \"%02d:00\", %s}%n  - {time: \"%02d:00\", %2$s}%n", from, weather, to);
    }

    static boolean has(Class<? extends Advice> kind, List<Advice> advice) {
        return advice.stream().anyMatch(kind::isInstance);
    }

    /** The clock at which a picture begins. */
    static LocalTime start(Brief brief, String shot) {
        return brief.shot(shot).time().from().toLocalTime();
    }

    /** Of all waits of the day, minutes. */
    static long longestWaitMin(Brief brief) {
        return brief.order().legs().stream().filter(leg -> leg.what() == Leg.What.WAIT)
                .mapToLong(Leg::minutes).max().orElse(0);
    }
}
