package understorey.kit.camera;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import understorey.plan.Bag;
import understorey.plan.Body;
import understorey.plan.Filter;
import understorey.plan.Lens;
import understorey.plan.Sensor;

/**
 * A body with a lens on it, and what brings that lens closer.
 *
 * @param sensor     the body's, or that of a built-in lens
 * @param attachment an extension tube or a close-up lens; null for none
 * @param ring       the step-up ring by which a close-up lens goes on; null if none is needed
 */
public record Camera(Body body, Lens lens, Sensor sensor, @Nullable Filter attachment, @Nullable Filter ring) {

    public Camera(Body body, Lens lens, Sensor sensor, @Nullable Filter attachment) {
        this(body, lens, sensor, attachment, null);
    }

    /** Every way to put the bag together, in file order: plain lenses first, then those with attachments. */
    public static List<Camera> of(Bag bag) {
        List<Camera> plain = new ArrayList<>();
        List<Camera> attached = new ArrayList<>();
        for (Body body : bag.bodies()) {
            for (Lens lens : body.fixedLenses()) {
                plain.add(new Camera(body, lens, sensor(body, lens), null));
            }
            for (Lens lens : bag.lenses()) {
                if (body.mount() != null && body.mount().equals(lens.mount())) {
                    plain.add(new Camera(body, lens, sensor(body, lens), null));
                    attach(body, lens, bag.filters(), attached);
                }
            }
        }
        plain.addAll(attached);
        return plain;
    }

    private static void attach(Body body, Lens lens, List<Filter> filters, List<Camera> cameras) {
        for (Filter filter : filters) {
            boolean tube = filter.kind() == Filter.Kind.EXTENSION_TUBE && filter.lengthMm() != null;
            boolean closeUp = filter.kind() == Filter.Kind.CLOSE_UP_LENS && filter.dioptres() != null
                    && filter.threadMm() != null && lens.threadMm() != null;
            if (tube || closeUp && Objects.equals(filter.threadMm(), lens.threadMm())) {
                cameras.add(new Camera(body, lens, sensor(body, lens), filter));
            } else if (closeUp) {
                for (Filter ring : filters) {
                    if (Polarising.joins(ring, lens.threadMm(), filter.threadMm())) {
                        cameras.add(new Camera(body, lens, sensor(body, lens), filter, ring));
                    }
                }
            }
        }
    }

    private static Sensor sensor(Body body, Lens lens) {
        return Objects.requireNonNull(lens.sensor() == null ? body.sensor() : lens.sensor(), body.name());
    }

    /** Names of body, lens and attachment. */
    public String name() {
        return body.name() + ", " + lens.name() + (lens.builtIn() ? " lens" : "")
                + (attachment == null ? "" : " + " + attachment.name());
    }

    /** Body, lens, attachment and its ring; a built-in lens comes with its body. */
    public List<Object> parts() {
        List<Object> parts = new ArrayList<>(3);
        parts.add(body);
        if (!lens.builtIn()) {
            parts.add(lens);
        }
        if (attachment != null) {
            parts.add(attachment);
        }
        if (ring != null) {
            parts.add(ring);
        }
        return parts;
    }

    /** Weight of all of it, grams; a weight that is not given counts as 0. */
    public double weightG() {
        return grams(body.weightG()) + (lens.builtIn() ? 0 : grams(lens.weightG()))
                + (attachment == null ? 0 : grams(attachment.weightG())) + (ring == null ? 0 : grams(ring.weightG()));
    }

    /** How many times the close-up lens shortens a focal length, 1 + f·D; 1 without one. */
    public double closeUpTimes(double focalMm) {
        return attachment == null || attachment.dioptres() == null ? 1 : 1 + focalMm * attachment.dioptres() / 1000;
    }

    /** Length of the extension tube; 0 without one. */
    public double tubeMm() {
        return attachment == null || attachment.lengthMm() == null ? 0 : attachment.lengthMm();
    }

    private static double grams(@Nullable Double weight) {
        return weight == null ? 0 : weight;
    }
}
