package understorey.reading.trip;

import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.plan.Bag;
import understorey.plan.Companion;
import understorey.plan.Contact;
import understorey.plan.DayWishes;
import understorey.plan.Display;
import understorey.plan.ForecastHour;
import understorey.plan.Share;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.SkyWord;
import understorey.plan.Stay;
import understorey.plan.Trip;
import understorey.plan.When;
import understorey.reading.files.Beside;
import understorey.reading.site.SiteRead;
import understorey.reading.site.ZoneCheck;
import understorey.yaml.Fields;
import understorey.yaml.Names;
import understorey.yaml.finding.Findings;
import understorey.yaml.tree.Node;

/** Reads a trip, with the site and the bags that it names. */
public final class TripReader {

    private static final int MOST_SHOTS = 200;
    private static final int MOST_COMPANIONS = 20;
    private static final int MINUTES_PER_DAY = 1440;
    /** Longer than a night. */
    private static final int LONG_NIGHT_MIN = 720;

    private final Fields f;
    private final Library library;

    private TripReader(Fields fields, Library library) {
        this.f = fields;
        this.library = library;
    }

    /** Reads a trip; null when it, its site or one of its bags has errors. */
    public static @Nullable Trip read(Node.Mapping node, String slug, Library library, Beside beside, Findings findings) {
        library.links().trip(node, slug, findings);
        return new TripReader(new Fields(node, "this trip", findings), library).trip(slug, beside);
    }

    private @Nullable Trip trip(String slug, Beside beside) {
        f.require("trip", "site", "gear", "shots");
        f.atMost(MOST_SHOTS, "shots");
        f.atMost(MOST_COMPANIONS, "companions");
        String title = f.text("trip");
        String series = f.text("series");
        SiteRead site = library.site(f, "site", beside, slug);
        When when = DaysReader.when(f);
        ZoneCheck.date(f, when, site);
        DayWishes wishes = DaysReader.wishes(f);
        LocalTime arrive = f.clock("arrive");
        LocalTime leave = f.clock("leave");
        Stay stay = stay(arrive, leave);
        ZoneCheck.clock(f, "arrive", arrive, when, stay, site);
        ZoneCheck.clock(f, "leave", leave, when, stay, site);
        Bag gear = library.bag(f, "gear");
        List<Companion> companions = companions();
        Contact contact = f.in("contact", "this contact", TripReader::contact);
        SkyWord sky = f.word("sky", SkyWord.values());
        List<ForecastHour> forecast = ForecastReader.read(f, when, stay, beside);
        String story = f.prose("story");
        List<Shot> shots = ShotsReader.read(f, site, gear, when, stay);
        Share share = f.in("share", TripReader::share);
        Display display = display();
        f.done();
        Site place = site.site();
        boolean faulty = f.findings().errors() > 0 || companions.size() < f.items("companions").size();
        return faulty || title == null || place == null || when == null || gear == null ? null : new Trip(title, slug, series,
                place, when, arrive, leave, gear, companions, contact, sky, forecast, story, shots, share, wishes, display);
    }

    private Display display() {
        Display.UnitSystem units = f.word("units", Display.UnitSystem.values());
        Integer clock = f.whole("clock", 12, 24);
        if (clock != null && clock != 12 && clock != 24) {
            f.refuse("clock", "'clock' must be 12 or 24, not " + clock, "12 shows 5:20 pm, 24 shows 17:20");
        }
        return new Display(units == null ? Display.USUAL.units() : units,
                clock != null && clock == 12 ? Display.Clock.HOURS_12 : Display.USUAL.clock());
    }

    /** A leave at or before the arrival is on the next day; so long a visit is more likely a slip. */
    private Stay stay(@Nullable LocalTime arrive, @Nullable LocalTime leave) {
        Stay stay = new Stay(arrive, leave);
        if (arrive != null && leave != null && stay.passesMidnight()) {
            long minutes = MINUTES_PER_DAY - ChronoUnit.MINUTES.between(leave, arrive);
            if (minutes > LONG_NIGHT_MIN) {
                f.findings().warning(f.at("leave"), "'leave' is not after 'arrive', so it is the next day, "
                        + minutes / 60 + " h later", "correct one of the two if you leave on the same day");
            }
        }
        return stay;
    }

    private List<Companion> companions() {
        Names names = new Names("companion");
        return f.each("companions", "this companion", block -> {
            block.require("name", "gear");
            String name = names.claim(block, "name");
            Bag gear = library.bag(block, "gear");
            block.done();
            return name == null || gear == null ? null : new Companion(name, gear);
        });
    }

    private static @Nullable Contact contact(Fields f) {
        String tell = f.require("tell").text("tell");
        LocalTime backBy = f.clock("back_by");
        return tell == null ? null : new Contact(tell, backBy);
    }

    private static Share share(Fields f) {
        return new Share(f.word("audience", Share.Audience.values()), f.word("position", Share.Precision.values()),
                f.texts("reviewed"));
    }
}
