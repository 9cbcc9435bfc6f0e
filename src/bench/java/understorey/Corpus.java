package understorey;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * A folder of invented plans to measure builds with: trips of five pictures, to twenty sites, with five bags. One count
 * and one seed always give the same bytes. From the root of the project:
 * {@code java src/bench/java/understorey/Corpus.java 1000 target/corpus [seed]}.
 */
public final class Corpus {

    private static final int SITES = 20;
    private static final String[] HEADS = {"Amber", "Bracken", "Copper", "Drift", "Elder", "Fallow", "Gale", "Hollow"};
    private static final String[] TAILS = {"combe", "dell", "hanger", "shaw", "wick"};
    private static final String[] SUBJECTS = {"ramsons", "wood-anemone", "bluebell"};
    private static final String[] SKIES = {"clear", "scattered", "broken", "overcast"};
    private static final String[] LIGHTS = {"soft", "backlight", "sidelight", "frontlight", "low-sun"};
    private static final String[] FACING = {"N", "NE", "E", "SE", "S", "SW", "W", "NW"};
    private static final String[] BODIES = {
        "{name: Full body, sensor: full-frame, pixels: 24 Mpx, mount: A, base_iso: 100, top_iso: 3200, stabilised: 3 stops, weight: 660 g}",
        "{name: Small body, sensor: aps-c, pixels: 20 Mpx, mount: A, base_iso: 100, top_iso: 3200, weight: 420 g}"};
    private static final String LENSES = """
              - {name: Short zoom, mount: A, focal: 24-70 mm, aperture: f/4, closest: 0.38 m, magnification: 0.3, thread: 72 mm, weight: 430 g}
              - {name: Long zoom, mount: A, focal: 70-200 mm, aperture: f/4, closest: 1 m, magnification: 0.27, thread: 72 mm, weight: 840 g}
              - {name: Wide prime, mount: A, focal: %d mm, aperture: f/2.8, closest: 0.2 m, magnification: 0.17, thread: 62 mm, weight: 320 g}
              - {name: Close-up prime, mount: A, focal: %d mm, aperture: f/2.8, closest: 0.28 m, magnification: 1.0, thread: 62 mm, weight: 600 g}
            """;
    /** Role, distances, focal length or frame of each picture: the wide view first, the single flower last. */
    private static final String[] PICTURES = {
        "role: opening, viewpoint: standing, sharp: {near: 4 m, far: 40 m}, focal_equivalent: %d mm",
        "role: approach, viewpoint: 1.2 m, sharp: {near: 14 m, far: 45 m}, focal_equivalent: 1%d mm",
        "role: approach, viewpoint: kneeling, sharp: {near: 1.5 m, far: 12 m}, focal_equivalent: %d mm",
        "role: detail, frame: {height: %d cm, distance: 1.6 m}, sharp: {depth: 60 mm}, orientation: portrait, polariser: yes",
        "role: closing, viewpoint: 0.35 m, frame: {width: %d mm}, sharp: {depth: 4 mm}"};

    private final Random random;

    private Corpus(long seed) {
        random = new Random(seed);
    }

    /** How many trips, into which folder, and a seed if not 1. */
    public static void main(String[] arguments) throws IOException {
        long seed = arguments.length > 2 ? Long.parseLong(arguments[2]) : 1;
        new Corpus(seed).write(Integer.parseInt(arguments[0]), Path.of(arguments[1]));
    }

    private void write(int trips, Path folder) throws IOException {
        Files.createDirectories(folder.resolve("sites"));
        Files.createDirectories(folder.resolve("gear"));
        for (int i = 0; i < SITES; i++) {
            Files.writeString(folder.resolve("sites/" + name(i).toLowerCase(Locale.ROOT) + ".yaml"), site(i));
        }
        for (int i = 0; i < 5; i++) {
            Files.writeString(folder.resolve("gear/bag-" + i + ".yaml"), bag(i));
        }
        for (int i = 0; i < trips; i++) {
            Files.writeString(folder.resolve(String.format(Locale.ROOT, "trip-%04d.yaml", i)), trip(i));
        }
    }

    private static String name(int site) {
        return HEADS[site % HEADS.length] + TAILS[site % TAILS.length];
    }

    private String site(int i) {
        double latitude = 47 + random.nextInt(9000) / 1000.0;
        double longitude = random.nextInt(9000) / 1000.0;
        StringBuilder text = new StringBuilder(String.format(Locale.ROOT, """
                site: %s
                latitude: %.3f
                longitude: %.3f
                elevation: %d m
                time_zone: Europe/Berlin
                canopy: {trees: %s, height: %d m}
                access: By the track from the gate.
                cautions: [Stay on the track.]
                skyline:
                """, name(i), latitude, longitude, 20 + random.nextInt(400), any("deciduous", "mixed"), 12 + random.nextInt(14)));
        for (String bearing : FACING) {
            text.append("  - {bearing: ").append(bearing).append(", angle: ").append(1 + random.nextInt(15)).append("}\n");
        }
        text.append("spots:\n");
        for (int spot = 0; spot < 3; spot++) {
            text.append(String.format(Locale.ROOT, "  - {name: Spot %d, at: [%.4f, %.4f]}%n", spot, latitude + 0.0007 * spot,
                    longitude + 0.001 * spot));
        }
        text.append("season:\n");
        for (String subject : SUBJECTS) {
            text.append("  - subject: ").append(subject).append("\n    records:\n");
            for (int year = 2022; year < 2027; year++) {
                LocalDate first = LocalDate.of(year, 4, 5).plusDays(random.nextInt(14));
                text.append("      - {first: ").append(first).append(", full: ").append(first.plusDays(16)).append(", over: ")
                        .append(first.plusDays(36)).append("}\n");
            }
        }
        return text.toString();
    }

    private String bag(int i) {
        return "gear: Bag " + i + "\nbodies:\n  - " + BODIES[i % BODIES.length] + "\nlenses:\n"
                + LENSES.formatted(18 + 2 * i, 80 + 5 * i) + """
                supports: [{name: Legs, kind: tripod, lowest: 20 cm, highest: 150 cm, carries: 6 kg, weight: 1.35 kg}]
                filters: [{name: Polariser, kind: polariser, thread: 72 mm, loss: 1.5 stops, weight: 25 g}]
                remote_release: yes
                """;
    }

    private String trip(int i) {
        int arrive = 4 + random.nextInt(8);
        StringBuilder text = new StringBuilder(String.format(Locale.ROOT, """
                trip: Flowers %d
                series: Round %d
                site: %s
                date: %s
                arrive: "%02d:15"
                leave: "%02d:45"
                gear: bag-%d
                """, i, i % 12, name(random.nextInt(SITES)).toLowerCase(Locale.ROOT), LocalDate.of(2027, 4, 15).plusDays(random.nextInt(30)),
                arrive, arrive + 4, random.nextInt(5)));
        text.append(random.nextInt(3) == 0 ? forecast(arrive) : "sky: " + any(SKIES) + "\n");
        text.append("story: Begin with **all** the flowers and end with one.\nshots:\n");
        String subject = any(SUBJECTS);
        List<String> shots = new ArrayList<>();
        for (int shot = 0; shot < PICTURES.length; shot++) {
            shots.add("  - {name: Picture " + (shot + 1) + ", subject: " + subject + ", spot: Spot " + random.nextInt(3) + ", "
                    + PICTURES[shot].formatted(24 + random.nextInt(60)) + ", facing: " + any(FACING) + ", light: [" + any(LIGHTS)
                    + "], duration: " + 5 * (2 + random.nextInt(4)) + " min, priority: " + (1 + random.nextInt(3)) + "}\n");
        }
        shots.forEach(text::append);
        return text.toString();
    }

    private String forecast(int arrive) {
        StringBuilder text = new StringBuilder("forecast:\n");
        for (int hour = arrive - 1; hour <= arrive + 5; hour += 2) {
            text.append(String.format(Locale.ROOT, "  - {time: \"%02d:00\", temperature: %d °C, humidity: %d %%, wind: %d m/s, gust: %d m/s, "
                    + "cloud: %d, rain: 0 mm}%n", hour, 6 + hour, 95 - 3 * hour, random.nextInt(3), 3 + random.nextInt(3), random.nextInt(9)));
        }
        return text.toString();
    }

    private String any(String... of) {
        return of[random.nextInt(of.length)];
    }
}
