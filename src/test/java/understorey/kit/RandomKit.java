package understorey.kit;

import static understorey.Samples.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import understorey.Samples;
import understorey.plan.Bag;
import understorey.plan.Body;
import understorey.plan.Filter;
import understorey.plan.Lens;
import understorey.plan.Role;
import understorey.plan.Sensor;
import understorey.plan.Support;
import understorey.plan.Viewpoint;

/** Random small bags and pictures. */
public final class RandomKit {

    private RandomKit() {
    }

    public static Bag bag(Random random) {
        List<Body> bodies = new ArrayList<>();
        for (int i = 0; i <= random.nextInt(2); i++) {
            Body camera = new Body("Body " + i, random.nextBoolean() ? Sensor.FULL_FRAME : Sensor.APS_C, 24,
                    random.nextInt(4) == 0 ? "B" : "A", 100, 3200, 0, null, null, weight(random), List.of());
            bodies.add(random.nextInt(5) == 0 ? Samples.phone() : camera);
        }
        List<Lens> lenses = new ArrayList<>();
        for (int i = 0; i <= random.nextInt(4); i++) {
            double shortest = List.of(16, 24, 35, 50, 70, 90, 105).get(random.nextInt(7));
            double thread = random.nextBoolean() ? 62 : 72;
            lenses.add(new Lens("Lens " + i, random.nextInt(4) == 0 ? "B" : "A", null, shortest,
                    random.nextBoolean() ? shortest : 3 * shortest, 2.8, 4, 22.0, 0.3,
                    List.of(0.15, 0.3, 0.5, 1.0).get(random.nextInt(4)), random.nextInt(5) == 0 ? null : thread, 0,
                    weight(random)));
        }
        List<Support> supports = new ArrayList<>();
        List<Filter> filters = new ArrayList<>();
        for (int i = 0; i < random.nextInt(3); i++) {
            Support.Kind kind = Support.Kind.values()[random.nextInt(4)];
            boolean stands = kind == Support.Kind.TRIPOD || kind == Support.Kind.MONOPOD;
            supports.add(new Support("Support " + i, kind, stands ? 0.1 + random.nextInt(4) * 0.1 : null,
                    stands ? 1 + random.nextInt(7) * 0.1 : null, random.nextInt(3) == 0 ? 0.9 : null, weight(random)));
        }
        for (int i = 0; i < random.nextInt(4); i++) {
            double thread = random.nextBoolean() ? 62 : 72;
            filters.add(switch (random.nextInt(4)) {
                case 0 -> new Filter("Ring " + i, Filter.Kind.STEP_UP_RING, null, 0, 62.0, 72.0, null, null, weight(random));
                case 1 -> new Filter("Tube " + i, Filter.Kind.EXTENSION_TUBE, null, 0, null, null, null,
                        List.of(12.0, 36.0).get(random.nextInt(2)), weight(random));
                case 2 -> new Filter("Close-up " + i, Filter.Kind.CLOSE_UP_LENS, thread, 0, null, null, 3.0, null,
                        weight(random));
                default -> new Filter("Polariser " + i, Filter.Kind.POLARISER, thread, 1.5, null, null, null, null,
                        weight(random));
            });
        }
        return new Bag("Bag", null, bodies, lenses, supports, filters, false, List.of(), 0, List.of());
    }

    /** Halves of a gram, so that sums are exact; few of them, so that bags weigh the same; some unknown. */
    private static Double weight(Random random) {
        return random.nextInt(6) == 0 ? null : Double.valueOf(100.5 * (1 + random.nextInt(8)));
    }

    public static List<Intent> intents(Random random) {
        List<Intent> intents = new ArrayList<>();
        for (int i = 0; i <= random.nextInt(5); i++) {
            Role role = Role.values()[random.nextInt(5)];
            Samples.Picture picture = picture("Picture " + i).role(role);
            if (random.nextBoolean()) {
                picture.from(List.of(Viewpoint.Stance.STANDING, Viewpoint.Stance.KNEELING, Viewpoint.Stance.GROUND,
                        new Viewpoint.Height(0.4)).get(random.nextInt(4)));
            }
            if (random.nextInt(3) == 0) {
                picture.polarised();
            }
            if (role == Role.DETAIL || role == Role.CLOSING) {
                picture.wide(List.of(0.04, 0.1, 0.6).get(random.nextInt(3))).deep(0.002);
            } else {
                picture.equivalent(List.of(20, 28, 50, 100, 200).get(random.nextInt(5))).sharp(8, 40);
            }
            Intent made = picture.intent();
            intents.add(new Intent(made.shot(), made.role(), made.viewpoint(), made.orientation(), made.sharp(),
                    made.focalEquivalentMm(), made.frame(), made.polariser(), made.duration(), 1 + random.nextInt(3),
                    0, made.assumed()));
        }
        return intents;
    }
}
