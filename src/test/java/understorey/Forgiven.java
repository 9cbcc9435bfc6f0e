package understorey;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * What is forgiven: a form beside the strict one that means the same, and near misses of it.
 *
 * @param slot    where it is written
 * @param strict  as the format has it
 * @param written what is read the same way
 */
public record Forgiven(String slot, String strict, String written) {

    private static final Map<String, String> FILES = Map.of("trip.yaml", """
            trip: A trip
            site: wood
            gear: bag
            @when
            @trip
            shots:
              @shots
              - {name: Second, subject: ramsons}
            """, "sites/wood.yaml", """
            site: A wood
            latitude: 52.3
            longitude: -3.5
            time_zone: Europe/London
            spots: [{name: Gate}, {name: Bridge}]
            subjects:
              - {key: lady-orchis, name: Lady orchis (dingle orchid), scientific_name: Lucerna palustris}
              - {key: grey-bell, name: Grey bell}
              - {@subject}
            @site
            """, "gear/bag.yaml", """
            gear: A bag
            bodies: [{name: Body, pixels: 24 Mpx, mount: A, @body}]
            lenses: [{name: Lens, mount: A, focal: 50 mm, aperture: f/2, closest: 40 cm, @lens}]
            filters: [{name: Filter, @filter}]
            @bag
            """);

    private static final Map<String, String> USUAL = Map.of("@when", "date: 2027-05-08", "@body", "sensor: full-frame",
            "@lens", "weight: 200 g", "@filter", "kind: polariser, thread: 52 mm, loss: 1.5 stops", "@subject", "name: Third flower",
            "@shots", "- {name: First, subject: ramsons}");

    /** Forms that mean the same. */
    public static final List<Forgiven> SAME = List.of(
            // One value for a list
            shot("light: [mist]", "light: mist"), of("@trip", "weekdays: [sat]", "weekdays: sat"),
            of("@trip", "avoid: [2027-05-02]", "avoid: 2027-05-02"),
            of("@trip", "avoid: [{from: 2027-05-02, to: 2027-05-04}]", "avoid: {from: 2027-05-02, to: 2027-05-04}"),
            of("@when", "dates: [2027-05-08]", "dates: 2027-05-08"), of("@trip", "share: {reviewed: [gate]}", "share: {reviewed: gate}"),
            of("@site", "cautions: [Stay on the path.]", "cautions: Stay on the path."),
            of("@bag", "cards: [64 GB]", "cards: 64 GB"), shot("compose: {keep_out: [sky]}", "compose: {keep_out: sky}"),
            of("@trip", "companions: [{name: A, gear: phone}]", "companions: {name: A, gear: phone}"),
            of("@trip", "forecast: [{time: \"05:00\", wind: 2 m/s}]", "forecast: {time: \"05:00\", wind: 2 m/s}"),
            of("@site", "skyline: [{bearing: N, angle: 5}]", "skyline: {bearing: N, angle: 5}"),
            of("@site", "season: [{subject: ramsons, records: [{full: 2026-05-06}], seen: [{date: 2027-04-20, stage: in bud}]}]",
                    "season: {subject: ramsons, records: {full: 2026-05-06}, seen: {date: 2027-04-20, stage: In bud}}"),
            of("@site", "walks: [{from: Gate, to: Bridge, duration: 9 min}]", "walks: {from: Gate, to: Bridge, duration: 9 min}"),
            of("@bag", "supports: [{name: Legs, kind: tripod}]", "supports: {name: Legs, kind: Tripod}"),
            of("@bag", "extras: [{name: Mat}]", "extras: {name: Mat}"),
            of("@body", "sensor: full-frame}, {name: Phone, pixels: 12 Mpx, fixed_lenses: [{name: main, sensor: one-inch, focal: 9 mm, aperture: f/2, closest: 10 cm}]",
                    "sensor: full-frame}, {name: Phone, pixels: 12 Mpx, fixed_lenses: {name: main, sensor: one-inch, focal: 9 mm, aperture: f/2, closest: 10 cm}"),
            // Words in any case
            of("@body", "sensor: aps-c", "sensor: APS-C"), of("@body", "sensor: full-frame", "sensor: Full-Frame"),
            of("@site", "canopy: none", "canopy: None"), shot("sharp: {near: 1 m, far: infinity}", "sharp: {near: 1 m, far: Infinity}"),
            of("@filter", "kind: step-up ring, lens_thread: 52 mm, filter_thread: 72 mm", "kind: Step-up ring, lens_thread: 52 mm, filter_thread: 72 mm"),
            of("@trip", "spring: warmer by 1.5 °C", "spring: Warmer by 1.5 °C"), shot("tilt: 20° down", "tilt: 20° Down"),
            of("@trip", "companions: [{name: A, gear: phone}]", "companions: [{name: A, gear: Phone}]"),
            of("@trip", "forecast: [{time: \"05:00\", cloud: 6 okta}]", "forecast: [{time: \"05:00\", cloud: 6 Okta}]"),
            // Both spellings
            shot("polariser: yes", "polarizer: Yes"), of("@filter", "kind: polariser, thread: 52 mm, loss: 1.5 stops", "kind: Polarizer, thread: 52 mm, loss: 1.5 stops"),
            of("@filter", "kind: close-up lens, thread: 52 mm, dioptres: 2 dpt", "kind: close-up lens, thread: 52 mm, diopters: 2 dpt"),
            of("@body", "sensor: full-frame, stabilised: 3 stops", "sensor: full-frame, stabilized: 3 stops"),
            of("@lens", "stabilised: 3 stops", "stabilized: 3 stops"), of("@subject", "name: Third flower, colour: red", "name: Third flower, color: red"),
            // Other words
            shot("priority: 3", "priority: must"), shot("priority: 2", "priority: Wanted"), shot("priority: 1", "priority: nice"),
            shot("light: [low-sun]", "light: golden hour"), shot("light: [twilight, low-sun]", "light: [Blue hour, golden-hour]"),
            shot("tilt: 90", "viewpoint: overhead"), shot("tilt: 20", "tilt: 20° down"),
            // Names of subjects
            subject("bluebell", "bluebells"), subject("bluebell", "Hyacinthoides non-scripta"), subject("ramsons", "wild-garlic"),
            subject("ramsons", "Wild garlic"), subject("ramsons", "Allium ursinum"), subject("wood-anemone", "wood anemones"),
            subject("dogs-mercury", "Dog's mercury"), subject("virginia-bluebells", "Virginia bluebell"),
            subject("tall-bluebell-australia", "Austral bluebell"), subject("hepatica", "liverleaves"),
            subject("namaqualand-daisy", "Namaqualand daisies"), subject("fly-agaric", "fly agaric"),
            subject("lady-orchis", "Dingle orchids"), subject("lady-orchis", "Lucerna palustris"), subject("grey-bell", "gray bells"),
            of("@site", "season: [{subject: ramsons, records: [{full: 2026-05-06}]}]", "season: [{subject: Wild garlic, records: [{full: 2026-05-06}]}]"));

    /** Forms that are near one of these and mean no one thing: they stay errors. */
    public static final List<Forgiven> NEAR = List.of(
            miss("@shots", "- {name: First, subject: ramsons, light: \"mist, soft\"}"), miss("@shots", "- {name: First, subject: ramsons, light: golden}"),
            miss("@shots", "- {name: First, subject: ramsons, priority: high}"), miss("@shots", "- {name: First, subject: ramsons, priority: 4}"),
            miss("@shots", "- {name: First, subject: ramsons, viewpoint: overhead, tilt: 20}"),
            miss("@shots", "- {name: First, subject: ramsons, Notes: x}"), miss("@shots", "- {name: First, subject: ramsons, notes: [x]}"),
            miss("@body", "sensor: full frame"), miss("@bag", "extras: {Mat: {weight: 200 g}}"), miss("@bag", "supports: tripod"),
            miss("@site", "skyline: 12"), miss("@site", "canopy: nothing"), miss("@trip", "weekdays: [[sat]]"), miss("@when", "dates: May"),
            miss("@subject", "name: Third flower, color: red, colour: blue"));

    private static Forgiven of(String slot, String strict, String written) {
        return new Forgiven(slot, strict, written);
    }

    private static Forgiven shot(String strict, String written) {
        String shot = "- {name: First, subject: ramsons, %s}";
        return of("@shots", shot.formatted(strict), shot.formatted(written));
    }

    private static Forgiven subject(String strict, String written) {
        String shot = "- {name: First, subject: %s}";
        return of("@shots", shot.formatted(strict), shot.formatted(written));
    }

    private static Forgiven miss(String slot, String written) {
        return of(slot, "", written);
    }

    /** Writes the folder of plans with a text in its slot. */
    public static Path write(Path plans, String slot, String text) {
        FILES.forEach((name, lines) -> {
            String whole = lines.replace(slot, text);
            for (Map.Entry<String, String> usual : USUAL.entrySet()) {
                whole = whole.replace(usual.getKey(), usual.getValue());
            }
            try {
                Path file = plans.resolve(name);
                Files.createDirectories(file.getParent());
                Files.writeString(file, whole.replaceAll("(?m)^@\\w+\\n", ""));
            } catch (IOException fault) {
                throw new UncheckedIOException(fault);
            }
        });
        return plans;
    }

    /** The file that has the slot. */
    public String file() {
        return FILES.entrySet().stream().filter(file -> file.getValue().contains(slot)).findFirst().orElseThrow().getKey();
    }
}
