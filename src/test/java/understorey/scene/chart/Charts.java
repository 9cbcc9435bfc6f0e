package understorey.scene.chart;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import understorey.Places;
import understorey.brief.Brief;
import understorey.brief.Planner;
import understorey.pages.DrawingWords;
import understorey.plan.Bag;
import understorey.plan.Body;
import understorey.plan.Canopy;
import understorey.plan.Foliage;
import understorey.plan.Lens;
import understorey.plan.Position;
import understorey.plan.Role;
import understorey.plan.Sensor;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.SkyWord;
import understorey.plan.SkylinePoint;
import understorey.plan.Subject;
import understorey.plan.Trip;
import understorey.plan.Viewpoint;
import understorey.plan.When;
import understorey.scene.Drawing;
import understorey.sky.Skyline;

/** Drawings of invented trips: many places and dates, a ragged skyline that hides the sun often, many pictures. */
public final class Charts {

    private static final LocalTime FIVE = LocalTime.of(5, 0);
    private static final LocalTime TEN = LocalTime.of(10, 0);
    private static List<Brief> briefs;
    private static List<Drawing> amongTrees;

    /** Latitudes at which civil twilight, sunrise or sunset fall after midnight, or at no time at all. */
    static final List<Position> MORE = List.of(new Position(60, 11), new Position(64, -22), new Position(67, 26),
            new Position(-55, -67), new Position(-89, 0), new Position(89, 0), new Position(23, 45));

    private Charts() {
    }

    /** Every day on level ground with two pictures, and under the ragged skyline with twelve. */
    static synchronized List<Brief> briefs() {
        if (briefs == null) {
            List<Brief> all = new ArrayList<>();
            for (Places day : days()) {
                all.add(brief(day, List.of(), 2, null, null));
                all.add(brief(day, ragged(), 12, FIVE, TEN));
            }
            briefs = List.copyOf(all);
        }
        return briefs;
    }

    public static List<Drawing> skylines() {
        return briefs().stream().map(brief -> brief.places().get(0).skyline().drawing(DrawingWords.BUILT_IN)).toList();
    }

    /** The skylines of those days with tree tops round a clearing, low and high. */
    public static synchronized List<Drawing> skylinesAmongTrees() {
        if (amongTrees == null) {
            List<Drawing> all = new ArrayList<>();
            for (int i = 0; i < briefs().size(); i++) {
                all.add(amongTrees(briefs().get(i), i % 2 == 0 ? List.of() : ragged(), i % 4 < 2 ? 22.0 : 60.0, "Spot " + i));
            }
            amongTrees = List.copyOf(all);
        }
        return amongTrees;
    }

    static Drawing amongTrees(Brief brief, List<SkylinePoint> skyline, Double treeTopDeg, String place) {
        List<SkylineChart.Field> fields = new ArrayList<>();
        for (Shot shot : brief.trip().shots()) {
            fields.add(new SkylineChart.Field(fields.size() + 1, shot.name(), shot.facingDeg(), 54));
        }
        return SkylineChart.of(brief.day().light(), Skyline.of(skyline, null), treeTopDeg, brief.trip().site().position().latitude(),
                fields, place).drawing(DrawingWords.BUILT_IN);
    }

    /** Every place on its own date and on four more. */
    static List<Places> days() {
        List<Places> days = new ArrayList<>();
        for (Places place : places()) {
            days.add(place);
            for (String date : List.of("2027-01-15", "2027-03-21", "2027-06-21", "2027-09-30", "2027-12-05")) {
                days.add(new Places(place.position(), place.zone(), LocalDate.parse(date)));
            }
        }
        return days;
    }

    private static List<Places> places() {
        List<Places> places = new ArrayList<>(Places.ALL);
        MORE.forEach(position -> places.add(new Places(position, ZoneId.of(position.longitude() == 11
                ? "Europe/Oslo" : position.longitude() == -22 ? "Atlantic/Reykjavik" : position.longitude() == 26
                ? "Europe/Helsinki" : position.longitude() == -67 ? "America/Argentina/Ushuaia"
                : position.longitude() == 45 ? "Asia/Riyadh" : "UTC"), LocalDate.of(2027, 5, 8))));
        return places;
    }

    public static Brief brief(Places place, List<SkylinePoint> skyline, int pictures, LocalTime arrive, LocalTime leave) {
        Site site = new Site("A wood", "a-wood", null, place.position(), null, place.zone(), skyline,
                new Canopy(Canopy.Trees.DECIDUOUS, Foliage.Stage.LEAFLESS, 18.0), List.of(), List.of(), null, null,
                List.of(), List.of(), null, null, false, List.of(), null, List.of(), null);
        List<Shot> shots = new ArrayList<>();
        for (int i = 0; i < pictures; i++) {
            shots.add(shot(NAMES.get(i % NAMES.size()) + (i < NAMES.size() ? "" : " " + i), i * 47.0 % 360));
        }
        return Planner.brief(new Trip("Invented", "invented", null, site, new When.On(place.date()), arrive, leave,
                bag(), List.of(), null, SkyWord.BROKEN, List.of(), null, shots, null));
    }

    static final List<String> NAMES = List.of("The floor", "From the far rail of the bridge, drawn together", "木漏れ日 🌿 im Moos",
            "A name that goes on and on until no sheet of paper in the world is wide enough to hold it in one line, and then a little",
            "II");

    private static Shot shot(String name, Double facingDeg) {
        return new Shot(name, Role.EXTRA, new Subject("ramsons", "Ramsons", null, null, false, 4, 6, null, null, 0.2,
                0.45, 16.0, null, null, Subject.Reflectance.WHITE, null, null, null, null, null), null,
                Viewpoint.Stance.STANDING, null, null, 24.0, null, facingDeg, List.of(), null, Duration.ofMinutes(4),
                3, null, null, null, null, null, null, null);
    }

    private static Bag bag() {
        return new Bag("Bag", null, List.of(new Body("Body", Sensor.FULL_FRAME, 24, "A", 100, 3200, 0, null, null, null,
                List.of())), List.of(new Lens("Zoom", "A", null, 24, 70, 4, 4, null, 0.38, 0.3, null, 0, null)),
                List.of(), List.of(), false, List.of(), 0, List.of());
    }

    /** Peaks and gaps every 20 degrees, so that the sun comes and goes. */
    public static List<SkylinePoint> ragged() {
        List<SkylinePoint> points = new ArrayList<>();
        for (int bearing = 0; bearing < 360; bearing += 10) {
            points.add(new SkylinePoint(bearing, bearing % 20 == 0 ? 28 : 2));
        }
        return points;
    }
}
