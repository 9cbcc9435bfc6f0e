package understorey.share;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import understorey.plan.Bag;
import understorey.plan.Body;
import understorey.plan.Compose;
import understorey.plan.Filter;
import understorey.plan.Lens;
import understorey.plan.Share;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.Subject;
import understorey.plan.Support;
import understorey.plan.Trip;

/**
 * Finds the texts of a public trip to a sensitive site that read as a position, come near a hidden name, or hold a link.
 * In doubt it reports: the author rewords, or lists a name or a link as reviewed. Not found: the name of a village near
 * by, a postcode of digits alone, a route described in words, a name in another script or language.
 */
public final class Leaks {

    private final PositionText positions;
    private final HiddenNames names;
    private final Links links;
    private final List<Leak> found = new ArrayList<>();

    private Leaks(Site site, List<String> reviewed) {
        this.positions = new PositionText(site.position());
        this.names = HiddenNames.of(site, reviewed);
        this.links = new Links(reviewed);
    }

    /** The leaks of a trip; none unless it is public and its site is sensitive. */
    public static List<Leak> of(Trip trip) {
        Share share = trip.share();
        if (share == null || !trip.sparesThePlace()) {
            return List.of();
        }
        Leaks leaks = new Leaks(trip.site(), share.reviewed());
        leaks.check("", trip.slug());
        leaks.check("trip", trip.title());
        leaks.check("series", trip.series());
        leaks.check("story", trip.story());
        for (int i = 0; i < trip.shots().size(); i++) {
            leaks.shot("shots[" + i + "]", trip.shots().get(i));
        }
        leaks.site("site.", trip.site());
        leaks.bag("gear", trip.gear());
        for (int i = 0; i < trip.companions().size(); i++) {
            leaks.bag("companions[" + i + "].gear", trip.companions().get(i).gear());
        }
        return List.copyOf(leaks.found);
    }

    /** The leaks of a site's own page; none unless the site is sensitive. */
    public static List<Leak> of(Site site) {
        if (!site.sensitive()) {
            return List.of();
        }
        Leaks leaks = new Leaks(site, List.of());
        leaks.site("", site);
        return List.copyOf(leaks.found);
    }

    private void shot(String at, Shot shot) {
        check(at + ".name", shot.name());
        check(at + ".notes", shot.notes());
        check(at + ".otherwise", shot.otherwise());
        if (shot.compose() != null) {
            compose(at + ".compose", shot.compose());
        }
        subject(at + ".subject", shot.subject());
    }

    private void compose(String at, Compose compose) {
        check(at + ".foreground", compose.foreground());
        check(at + ".middle", compose.middle());
        check(at + ".background", compose.background());
        check(at + ".lead_in", compose.leadIn());
        for (int i = 0; i < compose.keepOut().size(); i++) {
            check(at + ".keep_out[" + i + "]", compose.keepOut().get(i));
        }
    }

    private void site(String at, Site site) {
        check(at + "public_name", site.publicName());
        for (int i = 0; i < site.cautions().size(); i++) {
            check(at + "cautions[" + i + "]", site.cautions().get(i));
        }
        for (int i = 0; i < site.subjects().size(); i++) {
            subject(at + "subjects[" + i + "]", site.subjects().get(i));
        }
    }

    /** A subject of the catalogue has marks: its words are not the author's. */
    private void subject(String at, Subject subject) {
        if (subject.marks() == null) {
            check(at + ".key", subject.key());
            check(at + ".name", subject.name());
            check(at + ".scientific_name", subject.scientificName());
            check(at + ".colour", subject.colour());
            check(at + ".habitat", subject.habitat());
            check(at + ".care", subject.care());
        }
    }

    private void bag(String at, Bag bag) {
        check(at + ".gear", bag.name());
        check(at, bag.slug());
        for (int i = 0; i < bag.bodies().size(); i++) {
            Body body = bag.bodies().get(i);
            check(at + ".bodies[" + i + "].name", body.name());
            lenses(at + ".bodies[" + i + "].fixed_lenses", body.fixedLenses());
        }
        lenses(at + ".lenses", bag.lenses());
        check(at + ".supports", bag.supports().stream().map(Support::name).toList());
        check(at + ".filters", bag.filters().stream().map(Filter::name).toList());
        check(at + ".extras", bag.extras().stream().map(Bag.Extra::name).toList());
    }

    private void lenses(String at, List<Lens> lenses) {
        check(at, lenses.stream().map(Lens::name).toList());
    }

    private void check(String list, List<String> texts) {
        for (int i = 0; i < texts.size(); i++) {
            check(list + "[" + i + "].name", texts.get(i));
        }
    }

    private void check(String path, @Nullable String text) {
        if (text == null) {
            return;
        }
        Set<String> forms = PlainText.forms(text);
        add(path, Leak.What.POSITION, positions.in(forms));
        forms.stream().flatMap(form -> names.in(form).stream()).distinct().sorted().forEach(name -> add(path, Leak.What.NAME, name));
        links.in(text).forEach(link -> add(path, Leak.What.LINK, link));
    }

    private void add(String path, Leak.What what, @Nullable String text) {
        if (text != null) {
            found.add(new Leak(path, what, text.strip()));
        }
    }
}
