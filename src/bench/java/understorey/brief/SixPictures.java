package understorey.brief;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import understorey.plan.Trip;
import understorey.reading.PlansReader;
import understorey.share.Sharing;

/** The demo's fullest trip and one picture more, read and ready for its audience. */
final class SixPictures {

    private static final String PLAN = "first-light-in-the-ramsons.yaml";
    private static final String SIXTH = """
              - name: The far bank
                role: extra
                subject: ramsons
                spot: Stone bank
                viewpoint: kneeling
                sharp: {near: 3 m, far: 30 m}
                focal_equivalent: 85 mm
                facing: SSE
                light: [low-sun, sidelight]
                duration: 5 min
            """;

    private SixPictures() {
    }

    static Trip trip() {
        try {
            Path plans = Files.createTempDirectory("six");
            for (String folder : List.of("sites", "gear")) {
                Files.createDirectory(plans.resolve(folder));
                try (var files = Files.newDirectoryStream(Path.of("plans", folder))) {
                    for (Path file : files) {
                        Files.copy(file, plans.resolve(folder).resolve(file.getFileName()));
                    }
                }
            }
            String text = Files.readString(Path.of("plans", PLAN));
            int end = text.indexOf("share:");
            Files.writeString(plans.resolve(PLAN), text.substring(0, end) + SIXTH + text.substring(end));
            Trip trip = PlansReader.read(plans).trips().get(0);
            if (trip.shots().size() != 6) {
                throw new IllegalStateException("not six pictures: " + trip.shots().size());
            }
            return Sharing.forAudience(trip);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
