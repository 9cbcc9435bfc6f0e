package understorey.cli;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.BiPredicate;
import understorey.plan.Share;
import understorey.plan.Trip;
import understorey.reading.Plans;

/**
 * Decides which files of an earlier run stay: those of plans that cannot be read or built today. A typing error must not
 * delete pages. They stay only if the earlier run was for the same audience or a wider one, because a plan that cannot
 * be read cannot say for whom it is.
 */
final class StaleFiles implements BiPredicate<String, String> {

    private final Share.Audience audience;
    private final boolean errors;
    private final Set<String> faulty = new HashSet<>();
    private final Set<String> read = new HashSet<>();

    /**
     * The files of faulty plans.
     *
     * @param failed trips that read well and could not be made
     */
    StaleFiles(Plans plans, List<Trip> failed, Share.Audience audience) {
        this.audience = audience;
        errors = plans.hasErrors() || !failed.isEmpty();
        for (Path trip : plans.faultyTrips()) {
            String name = trip.getFileName().toString();
            faulty.add(name.substring(0, name.lastIndexOf('.')) + "/");
        }
        plans.sites().forEach(site -> read.add("sites/" + site.slug() + ".html"));
        plans.bags().forEach(bag -> read.add("gear/" + bag.slug() + ".html"));
        for (Trip trip : failed) {
            faulty.add(trip.slug() + "/");
            read.remove("sites/" + trip.site().slug() + ".html");
            read.remove("gear/" + trip.gear().slug() + ".html");
        }
    }

    /** Word for an audience, as in the list of written files. */
    static String word(Share.Audience audience) {
        return audience.name().toLowerCase(Locale.ROOT);
    }

    @Override
    public boolean test(String file, String earlierAudience) {
        boolean shared = file.startsWith("sites/") || file.startsWith("gear/");
        boolean ofFaulty = shared ? errors && !read.contains(file)
                : faulty.contains(file.substring(0, file.indexOf('/') + 1));
        return ofFaulty && isForNoFewer(earlierAudience);
    }

    private boolean isForNoFewer(String earlierAudience) {
        for (Share.Audience earlier : Share.Audience.values()) {
            if (word(earlier).equals(earlierAudience)) {
                return earlier.compareTo(audience) >= 0;
            }
        }
        return audience == Share.Audience.PRIVATE;
    }
}
