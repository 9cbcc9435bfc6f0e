package understorey;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import understorey.advice.Advice;
import understorey.kit.Intent;
import understorey.plan.Bag;
import understorey.plan.Body;
import understorey.plan.CameraSettings;
import understorey.plan.ChosenCamera;
import understorey.plan.Compose;
import understorey.plan.Filter;
import understorey.plan.ForecastHour;
import understorey.plan.Frame;
import understorey.plan.Lens;
import understorey.plan.Opening;
import understorey.plan.Orientation;
import understorey.plan.Parking;
import understorey.plan.Position;
import understorey.plan.Role;
import understorey.plan.Sensor;
import understorey.plan.Sharp;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.Spot;
import understorey.plan.Subject;
import understorey.plan.Support;
import understorey.plan.Trip;
import understorey.plan.Viewpoint;
import understorey.plan.Walk;
import understorey.plan.When;

/** Gear, pictures and a wood to try things on; every name is invented. */
public final class Samples {

    public static final LocalDate MAY_DAY = LocalDate.of(2027, 5, 8);

    public static final Lens ZOOM = new Lens("Short zoom", "A", null, 24, 70, 4, 4, 22.0, 0.38, 0.3, 72.0, 0, 430.0);
    /** Its maker states a closest distance under four times its focal length. */
    public static final Lens MACRO = new Lens("Close-up prime", "A", null, 90, 90, 2.8, 2.8, 32.0, 0.28, 1.0, 62.0, 0, 600.0);

    public static final Support LEGS = new Support("Legs", Support.Kind.TRIPOD, 0.12, 1.5, 6.0, 1350.0);
    public static final Support TALL_LEGS = new Support("Tall legs", Support.Kind.TRIPOD, 0.4, 1.7, 6.0, 1900.0);
    public static final Support BEANBAG = new Support("Beanbag", Support.Kind.BEANBAG, null, null, null, 500.0);
    public static final Support MONOPOD = new Support("Stick", Support.Kind.MONOPOD, null, null, 5.0, 400.0);

    public static final Filter POLARISER = new Filter("Polariser", Filter.Kind.POLARISER, 72.0, 1.5, null, null, null, null, 25.0);
    public static final Filter RING = new Filter("Ring 62 to 72", Filter.Kind.STEP_UP_RING, null, 0, 62.0, 72.0, null, null, 10.0);

    private Samples() {
    }

    public static Body fullFrame(double pixelsMpx) {
        return body("Main body", Sensor.FULL_FRAME, pixelsMpx);
    }

    public static Body body(String name, Sensor sensor, double pixelsMpx) {
        return new Body(name, sensor, pixelsMpx, "A", 100, 3200, 0, 28.0, 400, 660.0, List.of());
    }

    public static Body stabilised(double stops) {
        return new Body("Steady body", Sensor.FULL_FRAME, 24, "A", 100, 3200, stops, 28.0, 400, 660.0, List.of());
    }

    /** Main and wide lens built in, as in the plan format's own example. */
    public static Body phone() {
        Lens main = new Lens("main", null, new Sensor(9.8, 7.3), 6.9, 6.9, 1.8, 1.8, null, 0.12, null, null, 0, null);
        Lens wide = new Lens("wide", null, new Sensor(6.4, 4.8), 2.2, 2.2, 2.2, 2.2, null, 0.03, null, null, 0, null);
        return new Body("Pocket phone", null, 12, null, 50, 800, 0, null, null, 190.0, List.of(main, wide));
    }

    public static Lens prime(double focalMm) {
        return new Lens("Prime " + focalMm, "A", null, focalMm, focalMm, 2, 2, 22.0, 0.01 * focalMm, null, 62.0, 0, 300.0);
    }

    public static Filter tube(double lengthMm) {
        return new Filter("Tube " + lengthMm, Filter.Kind.EXTENSION_TUBE, null, 0, null, null, null, lengthMm, 90.0);
    }

    public static Filter closeUpLens(double threadMm, double dioptres) {
        return new Filter("Close-up lens", Filter.Kind.CLOSE_UP_LENS, threadMm, 0, null, null, dioptres, null, 60.0);
    }

    public static Bag bag(Body body, Lens... lenses) {
        return new Bag("Day bag", null, List.of(body), List.of(lenses), List.of(), List.of(), false, List.of(), 0, List.of());
    }

    public static Bag with(Bag bag, Support... supports) {
        return new Bag(bag.name(), null, bag.bodies(), bag.lenses(), List.of(supports), bag.filters(),
                bag.remoteRelease(), bag.cardsGb(), bag.batteries(), bag.extras());
    }

    public static Bag with(Bag bag, Filter... filters) {
        return new Bag(bag.name(), null, bag.bodies(), bag.lenses(), bag.supports(), List.of(filters),
                bag.remoteRelease(), bag.cardsGb(), bag.batteries(), bag.extras());
    }

    public static Bag released(Bag bag) {
        return new Bag(bag.name(), null, bag.bodies(), bag.lenses(), bag.supports(), bag.filters(), true,
                bag.cardsGb(), bag.batteries(), bag.extras());
    }

    /** Ramsons as the catalogue has them: 25 to 50 cm high, stars of 16 mm, eight open at once. */
    public static Subject ramsons() {
        return subject("ramsons", 0.25, 0.5, 16.0, 8, "Stay on the paths");
    }

    public static Subject subject(String key, Double lowM, Double highM, Double flowerMm, Integer open, String care) {
        return new Subject(key, key, null, null, false, 4, 6, null, null, lowM, highM, flowerMm, open, null, null, null,
                null, care, null, null);
    }

    public static Subject months(boolean southern, Integer first, Integer last) {
        return new Subject("some-flower", "Some flower", null, null, southern, first, last, null, null, null, null, null,
                null, null, null, null, null, null, null, null);
    }

    public static Picture picture(String name) {
        return new Picture(name);
    }

    public static Spot spot(String name, Double latitude, Double longitude, Double elevationM) {
        return new Spot(name, latitude == null ? null : new Position(latitude, longitude), elevationM, null, null, null, null, null, null);
    }

    public static Walk walk(String from, String to, int minutes) {
        return new Walk(from, to, Duration.ofMinutes(minutes));
    }

    /** Gate to footbridge nine minutes, footbridge to bank six; no spot has a position. */
    public static Site wood() {
        return wood(List.of(spot("Gate", null, null, null), spot("Footbridge", null, null, null),
                spot("Bank", null, null, null)), List.of(walk("Gate", "Footbridge", 9), walk("Footbridge", "Bank", 6)),
                null, null);
    }

    public static Site wood(List<Spot> spots, List<Walk> walks, Opening opening, Parking parking) {
        return wood(Places.MID_LATITUDE, spots, walks, opening, parking);
    }

    public static Site wood(Places place, List<Spot> spots, List<Walk> walks, Opening opening, Parking parking) {
        return new Site("Sample wood", "sample-wood", null, place.position(), null, place.zone(), List.of(), null, spots,
                walks, opening, parking, List.of(), List.of(), null, null, false, List.of(), null, List.of(), null);
    }

    public static Trip trip(Site site, String arrive, String leave, Shot... shots) {
        return trip(site, MAY_DAY, arrive, leave, List.of(), shots);
    }

    public static Trip trip(Site site, LocalDate date, String arrive, String leave, List<ForecastHour> forecast, Shot... shots) {
        return new Trip("Sample trip", "sample-trip", null, site, new When.On(date),
                arrive == null ? null : LocalTime.parse(arrive), leave == null ? null : LocalTime.parse(leave),
                bag(fullFrame(24), ZOOM), List.of(), null, null, forecast, null, List.of(shots), null);
    }

    public static ForecastHour hour(LocalDate date, String time, Double windMs, Double gustMs, Double okta) {
        return new ForecastHour(date, LocalTime.parse(time), null, null, null, windMs, gustMs, okta, null, null, null, null);
    }

    public static ZoneId zone() {
        return Places.MID_LATITUDE.zone();
    }

    /** A shot in the making; what is not said stays open, as for an author. */
    public static final class Picture {
        private final String name;
        private Role role;
        private Subject subject = ramsons();
        private String spot;
        private Viewpoint viewpoint;
        private Orientation orientation;
        private Sharp sharp;
        private Double equivalentMm;
        private Frame frame;
        private Boolean polariser;
        private Duration duration;
        private Double tiltDeg;
        private Compose compose;
        private LocalTime start;
        private String after;
        private Double printM;
        private ChosenCamera chosen = ChosenCamera.NONE;

        private Picture(String name) {
            this.name = name;
        }

        public Picture role(Role is) {
            role = is;
            return this;
        }

        public Picture of(Subject is) {
            subject = is;
            return this;
        }

        public Picture at(String is) {
            spot = is;
            return this;
        }

        public Picture from(Viewpoint is) {
            viewpoint = is;
            return this;
        }

        public Picture upright() {
            orientation = Orientation.PORTRAIT;
            return this;
        }

        public Picture sharp(double nearM, double farM) {
            sharp = new Sharp.Range(nearM, farM);
            return this;
        }

        public Picture deep(double depthM) {
            sharp = new Sharp.Depth(depthM);
            return this;
        }

        public Picture equivalent(double mm) {
            equivalentMm = mm;
            return this;
        }

        public Picture wide(double metres) {
            frame = new Frame(metres, null, null, null);
            return this;
        }

        public Picture framed(Frame is) {
            frame = is;
            return this;
        }

        public Picture polarised() {
            polariser = true;
            return this;
        }

        public Picture minutes(int is) {
            duration = Duration.ofMinutes(is);
            return this;
        }

        public Picture compose(Compose marks) {
            compose = marks;
            return this;
        }

        public Picture tilt(double deg) {
            tiltDeg = deg;
            return this;
        }

        public Picture pinned(String time) {
            start = LocalTime.parse(time);
            return this;
        }

        public Picture after(String other) {
            after = other;
            return this;
        }

        public Picture print(double metres) {
            printM = metres;
            return this;
        }

        public Picture with(String body, String lens) {
            chosen = new ChosenCamera(body, lens);
            return this;
        }

        public Shot shot() {
            return new Shot(name, role, subject, spot, viewpoint, orientation, sharp, equivalentMm, frame, null, List.of(),
                    polariser, duration, null, null, null, tiltDeg, start, after, printM, compose, chosen, CameraSettings.NONE);
        }

        public Intent intent() {
            return Intent.of(List.of(shot()), null).get(0);
        }
    }

    /** The kinds of some pieces of advice, in order. */
    public static List<Class<?>> kinds(List<Advice> advice) {
        return advice.stream().<Class<?>>map(Advice::getClass).toList();
    }

    /** The first piece of advice of a kind. */
    public static <A extends Advice> A the(Class<A> kind, List<Advice> advice) {
        return advice.stream().filter(kind::isInstance).map(kind::cast).findFirst().orElseThrow();
    }
}
