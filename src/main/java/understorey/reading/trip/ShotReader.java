package understorey.reading.trip;

import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import understorey.plan.Bag;
import understorey.plan.CameraSettings;
import understorey.plan.ChosenCamera;
import understorey.plan.Compose;
import understorey.plan.Frame;
import understorey.plan.LightWish;
import understorey.plan.Orientation;
import understorey.plan.Role;
import understorey.plan.Sharp;
import understorey.plan.Shot;
import understorey.plan.Subject;
import understorey.plan.Viewpoint;
import understorey.reading.site.SiteRead;
import understorey.yaml.Fields;
import understorey.yaml.Names;
import understorey.yaml.finding.Suggestion;
import understorey.yaml.tree.Node;
import understorey.yaml.value.Dimension;
import understorey.yaml.value.Numeral;
import understorey.yaml.value.Span;
import understorey.yaml.value.Words;

/**
 * Reads the shots of a trip one by one.
 *
 * @param bag   null when it could not be read
 * @param names of the trip's shots, to which each shot adds its own
 */
record ShotReader(SiteRead site, @Nullable Bag bag, Names names) {

    private static final double SMALLEST_APERTURE = 128;
    private static final double FASTEST_S = 1 / 100_000.0;
    private static final double SLOWEST_S = 3600;
    private static final int HIGHEST_ISO = 10_000_000;
    private static final double STRAIGHT_DOWN_DEG = 90;
    /** From 1. */
    private static final List<String> PRIORITIES = List.of("nice", "wanted", "must");

    /**
     * A shot with what is checked among all shots.
     *
     * @param shot null without name or subject
     */
    record Read(Fields block, @Nullable String name, @Nullable LocalTime start, @Nullable String after, @Nullable Shot shot) {
    }

    Read read(Fields f) {
        f.require("name", "subject");
        String name = names.claim(f, "name");
        Role role = f.word("role", Role.values());
        Subject subject = site.subjects().read(f, "subject");
        String spot = site.spots() == null ? f.text("spot") : site.spots().pointed(f, "spot");
        boolean overhead = overhead(f);
        Viewpoint viewpoint = overhead ? null : viewpoint(f);
        Orientation orientation = f.word("orientation", Orientation.values());
        Sharp sharp = f.in("sharp", ShotReader::sharp);
        Double focal = f.quantity("focal_equivalent", Dimension.SMALL_LENGTH, 4, 3000);
        Frame frame = f.in("frame", "this frame", ShotReader::frame);
        Double facing = f.bearing("facing");
        List<LightWish> light = f.words("light", LightWish.values());
        Boolean polariser = f.yesNo("polariser");
        Double seconds = f.quantity("duration", Dimension.DURATION, 10, 86_400);
        Duration duration = seconds == null ? null : Duration.ofSeconds(Math.round(seconds));
        Integer priority = priority(f);
        String notes = f.prose("notes");
        String otherwise = f.prose("otherwise");
        Double tilt = overhead ? Double.valueOf(STRAIGHT_DOWN_DEG) : tilt(f);
        LocalTime start = f.clock("start");
        String after = f.text("after");
        Double print = f.quantity("print", Dimension.LENGTH, 0.02, 20);
        Compose compose = f.in("compose", ShotReader::compose);
        ChosenCamera chosen = ChosenCameraReader.read(f, bag);
        CameraSettings settings = settings(f);
        f.done();
        Shot shot = name == null || subject == null ? null : new Shot(name, role, subject, spot, viewpoint, orientation, sharp,
                focal, frame, facing, light, polariser, duration, priority, notes, otherwise, tilt, start, after, print,
                compose, chosen, settings);
        return new Read(f, name, start, after, shot);
    }

    private static CameraSettings settings(Fields f) {
        return new CameraSettings(aperture(f), f.quantity("shutter", Dimension.SHUTTER, FASTEST_S, SLOWEST_S),
                f.whole("iso", 1, HIGHEST_ISO), f.yesNo("stack"));
    }

    private static @Nullable Double aperture(Fields f) {
        Span written = f.aperture("aperture", SMALLEST_APERTURE);
        if (written != null && written.from() != written.to()) {
            f.refuse("aperture", "'aperture' of a shot must be one f-number, not a range", "for example f/8");
        }
        return written == null ? null : Double.valueOf(written.from());
    }

    /** 1 to 3, or the word for it. */
    private static @Nullable Integer priority(Fields f) {
        int word = f.take("priority") instanceof Node.Scalar scalar ? PRIORITIES.indexOf(scalar.text().strip().toLowerCase(Locale.ROOT)) : -1;
        return word >= 0 ? Integer.valueOf(word + 1) : f.whole("priority", 1, 3);
    }

    /** Whether the viewpoint is the word for a camera that looks straight down: that is its tilt. */
    private static boolean overhead(Fields f) {
        boolean overhead = f.take("viewpoint") instanceof Node.Scalar scalar && scalar.text().strip().equalsIgnoreCase("overhead");
        if (overhead && f.has("tilt")) {
            f.take("tilt");
            f.findings().error(f.atKey("tilt"), "'viewpoint: overhead' is a tilt of 90°, and 'tilt' gives another", "delete one of them");
        }
        return overhead;
    }

    /** Degrees below the horizontal: {@code 8}, {@code 8° down}, {@code 10° up}. */
    private static @Nullable Double tilt(Fields f) {
        Node node = f.take("tilt");
        String text = node instanceof Node.Scalar scalar ? scalar.text().strip().toLowerCase(Locale.ROOT) : "";
        boolean up = text.endsWith("up");
        String bare = text.replaceFirst("(up|down)$", "").strip();
        if (node == null || bare.isEmpty() || bare.equals(text)) {
            return f.scalars().angle(node, "'tilt'", -90, 90);
        }
        Double degrees = f.scalars().angle(new Node.Scalar(bare, false, node.pos()), "'tilt'", 0, 90);
        return degrees == null || !up ? degrees : Double.valueOf(0 - degrees);
    }

    private static Compose compose(Fields f) {
        return new Compose(f.text("foreground"), f.text("middle"), f.text("background"), f.text("lead_in"),
                f.items("keep_out").stream().map(item -> f.scalars().text(item, "each entry of 'keep_out'")).filter(Objects::nonNull).toList());
    }

    /** Viewpoint: a word, or a camera height. */
    private static @Nullable Viewpoint viewpoint(Fields f) {
        Node node = f.take("viewpoint");
        if (node instanceof Node.Scalar scalar && Numeral.end(scalar.text().strip(), 0) == 0) {
            Viewpoint.Stance stance = Words.find(Viewpoint.Stance.values(), scalar.text().strip());
            if (stance == null) {
                f.refuse("viewpoint", Node.quote(scalar.text()) + " is not a value of 'viewpoint'",
                        Suggestion.among(Words.of(Viewpoint.Stance.values()), scalar.text().strip(),
                                "give a camera height, for example 1.2 m, or one of"));
            }
            return stance;
        }
        Double height = f.scalars().quantity(node, "'viewpoint'", Dimension.LENGTH, 0.01, 30);
        return height == null ? null : new Viewpoint.Height(height);
    }

    private static @Nullable Sharp sharp(Fields f) {
        boolean range = f.has("near") || f.has("far");
        Double depth = f.quantity("depth", Dimension.LENGTH, 0.0001, 1000);
        if (f.has("depth") == range) {
            f.findings().error(f.pos(), range ? "give 'near' and 'far', or 'depth', not both"
                    : "'sharp' needs 'near' and 'far', or 'depth'",
                    range ? "delete one of them" : "for example {near: 2.5 m, far: 40 m}");
        } else if (range) {
            f.require("near", "far");
        }
        Double near = f.quantity("near", Dimension.LENGTH, 0.001, 100_000);
        Double far = far(f);
        if (near != null && far != null) {
            if (near >= far) {
                f.refuse("far", "'far' must be farther than 'near'",
                        near > far ? "swap them" : "use a smaller 'near' or a larger 'far'");
            }
            return new Sharp.Range(near, far);
        }
        return depth == null ? null : new Sharp.Depth(depth);
    }

    private static @Nullable Double far(Fields f) {
        Node node = f.take("far");
        if (node instanceof Node.Scalar scalar && scalar.text().strip().equalsIgnoreCase("infinity")) {
            return Double.POSITIVE_INFINITY;
        }
        return f.scalars().quantity(node, "'far'", Dimension.LENGTH, 0.001, 1_000_000);
    }

    private static Frame frame(Fields f) {
        Double width = f.quantity("width", Dimension.LENGTH, 0.001, 10_000);
        Double height = f.quantity("height", Dimension.LENGTH, 0.001, 10_000);
        Double fills = f.quantity("fills", Dimension.SHARE, 0.01, 1);
        Double distance = f.quantity("distance", Dimension.LENGTH, 0.001, 100_000);
        if (f.oneOf("width", "height", "fills") == 0) {
            f.findings().error(f.pos(), "a frame needs one of 'width', 'height' and 'fills'", "for example {width: 3 m}");
        }
        return new Frame(width, height, fills, distance);
    }
}
