package understorey.reading.gear;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import understorey.plan.Body;
import understorey.plan.Lens;
import understorey.plan.Sensor;
import understorey.yaml.Fields;
import understorey.yaml.Names;
import understorey.yaml.finding.Suggestion;
import understorey.yaml.tree.Node;
import understorey.yaml.value.Dimension;
import understorey.yaml.value.Numeral;
import understorey.yaml.value.Span;

/** Bodies, lenses and sensors of a bag. */
final class OpticsReader {

    /** Defaults for a body: where digital sensors start, and how far noise stays low (common practice, no source). */
    private static final int BASE_ISO = 100;
    private static final int TOP_ISO = 3200;

    private static final List<String> FORMATS = List.of("full-frame", "aps-c", "four-thirds", "one-inch");
    private static final List<Sensor> SENSORS =
            List.of(Sensor.FULL_FRAME, Sensor.APS_C, Sensor.FOUR_THIRDS, Sensor.ONE_INCH);

    /** The scale of f-numbers that settings are given in ends at f/45. */
    private static final double SMALLEST_WIDEST = 45;
    private static final double SMALLEST = 128;
    private static final int MOST_FIXED = 20;

    private OpticsReader() {
    }

    /** A body; null when a needed value is missing or faulty. */
    static @Nullable Body body(Fields f, Names names) {
        f.require("name", "pixels");
        boolean builtIn = f.has("fixed_lenses");
        f.atMost(MOST_FIXED, "fixed_lenses");
        if (builtIn && f.has("mount")) {
            f.findings().error(f.atKey("mount"), "give 'mount' or 'fixed_lenses', not both",
                    "delete one of them");
        } else if (!builtIn && !f.has("mount")) {
            f.findings().error(f.pos(), "this body has neither a 'mount' nor 'fixed_lenses'",
                    "for example mount: A; use the same name for its lenses");
        }
        String name = names.claim(f, "name");
        Sensor sensor = sensor(f);
        if (!builtIn) {
            f.require("sensor");
        }
        Double pixels = f.quantity("pixels", Dimension.PIXELS, 0.1, 1000);
        String mount = f.text("mount");
        Integer base = f.whole("base_iso", 1, 1_000_000);
        Integer top = f.whole("top_iso", 1, 10_000_000);
        int baseIso = base == null ? BASE_ISO : base;
        int topIso = top == null ? Math.max(TOP_ISO, baseIso) : top;
        if (top != null && topIso < baseIso) {
            f.refuse("top_iso", "'top_iso' is below the base ISO of " + baseIso,
                    "raise 'top_iso', or lower 'base_iso'");
        }
        Double stops = stabilised(f);
        Double raw = f.quantity("raw_size", Dimension.FILE_SIZE, 0.1, 10_000);
        Double frames = f.quantity("battery", Dimension.FRAMES, 1, 100_000);
        Double weight = BagReader.weight(f);
        Names fixedNames = new Names("lens");
        List<Fields> blocks = f.blocks("fixed_lenses", "this lens");
        List<Lens> fixed = blocks.stream().map(block -> fixedLens(block, fixedNames, sensor)).filter(Objects::nonNull).toList();
        if (builtIn && blocks.isEmpty()) {
            f.refuse("fixed_lenses", "'fixed_lenses' is empty",
                    "list its lenses, or give a 'mount'");
        }
        f.done();
        return f.findings().errors() > 0 || name == null || pixels == null ? null : new Body(name, sensor, pixels, mount, baseIso, topIso,
                stops == null ? 0 : stops, raw, frames == null ? null : Integer.valueOf((int) Math.rint(frames)),
                weight, fixed);
    }

    private static @Nullable Lens fixedLens(Fields f, Names names, @Nullable Sensor ofBody) {
        Sensor own = sensor(f);
        if (ofBody == null) {
            f.require("sensor");
        }
        return lens(f, names, null, own == null ? ofBody : own);
    }

    /**
     * A lens; null when a needed value is missing or faulty.
     *
     * @param mount  null for a built-in lens
     * @param sensor behind a built-in lens; null for a lens with a mount
     */
    static @Nullable Lens lens(Fields f, Names names, @Nullable String mount, @Nullable Sensor sensor) {
        f.require("name", "focal", "aperture", "closest");
        String name = names.claim(f, "name");
        Span focal = f.focal("focal");
        Span widest = f.aperture("aperture", SMALLEST_WIDEST);
        Span smallest = f.aperture("smallest_aperture", SMALLEST);
        if (widest != null && smallest != null && smallest.to() < widest.to()) {
            f.refuse("smallest_aperture", "'smallest_aperture' is wider than 'aperture'",
                    "give the largest f-number, for example f/22");
        }
        Double closest = f.quantity("closest", Dimension.LENGTH, 0.001, 100);
        if (closest != null && focal != null && closest * 1000 <= focal.from()) {
            f.refuse("closest", "'closest' is not beyond the focal length of " + Numeral.show(focal.from()) + " mm",
                    "it is the least distance from the sensor to the subject");
        }
        Double magnification = f.number("magnification", 0.0001, 20);
        Double breathing = f.quantity("breathing", Dimension.SHARE, 0, 0.9);
        Double thread = f.quantity("thread", Dimension.SMALL_LENGTH, 10, 300);
        Double stops = stabilised(f);
        Double weight = BagReader.weight(f);
        f.done();
        return f.findings().errors() > 0 || name == null || focal == null || widest == null || closest == null ? null
                : new Lens(name, mount, sensor, focal.from(), focal.to(),
                widest.from(), widest.to(), smallest == null ? null : smallest.to(), closest, magnification, thread,
                stops == null ? 0 : stops, weight, breathing);
    }

    /** A format by name, or a width and a height; null when absent or faulty. */
    private static @Nullable Sensor sensor(Fields f) {
        Node node = f.take("sensor");
        if (!(node instanceof Node.Scalar scalar)) {
            Fields size = f.block(node, "'sensor'", "this sensor");
            return size == null ? null : sized(size);
        }
        int format = FORMATS.indexOf(scalar.text().strip().toLowerCase(Locale.ROOT));
        if (format < 0) {
            f.refuse("sensor", Node.quote(scalar.text()) + " is not a value of 'sensor'",
                    Suggestion.among(FORMATS, scalar.text(), "give a width and a height, or one of"));
            return null;
        }
        return SENSORS.get(format);
    }

    private static @Nullable Sensor sized(Fields f) {
        f.require("width", "height");
        Double width = f.quantity("width", Dimension.SMALL_LENGTH, 0.5, 500);
        Double height = f.quantity("height", Dimension.SMALL_LENGTH, 0.5, 500);
        f.done();
        if (width == null || height == null) {
            return null;
        }
        if (height > width) {
            f.refuse("height", "the sensor's 'height' is larger than its 'width'", "swap 'width' and 'height'");
        }
        return new Sensor(width, height);
    }

    private static @Nullable Double stabilised(Fields f) {
        return f.quantity("stabilised", Dimension.STOPS, 0, 12);
    }
}
