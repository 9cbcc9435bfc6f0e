package understorey.reading.site;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import understorey.plan.Season;
import understorey.plan.Subject;
import understorey.plan.Temperatures;
import understorey.reading.files.Beside;
import understorey.reading.subject.Subjects;
import understorey.yaml.Fields;
import understorey.yaml.tree.Node;

/** Reads the flowering records of a site. */
final class SeasonReader {

    private SeasonReader() {
    }

    static List<Season> all(Fields site, Subjects subjects, Beside beside) {
        List<Season> seasons = new ArrayList<>();
        Set<String> known = new HashSet<>();
        for (Fields f : site.blocks("season", "this season")) {
            f.require("subject");
            Subject named = subjects.named(f, "subject");
            String subject = named == null ? null : named.key();
            if (subject != null && !known.add(subject)) {
                f.refuse("subject", "this site already has a season for " + Node.quote(subject),
                        "put all records of a subject into one list");
            }
            List<Season.Flowering> records = records(f);
            Temperatures temperatures = TemperatureReader.read(f, beside);
            List<Season.Sighting> seen = seen(f);
            f.done();
            if (subject != null) {
                seasons.add(new Season(subject, records, temperatures, seen));
            }
        }
        return List.copyOf(seasons);
    }

    private static List<Season.Flowering> records(Fields season) {
        return season.each("records", "this record", f -> {
            LocalDate first = f.date("first");
            LocalDate full = f.date("full");
            LocalDate over = f.date("over");
            f.done();
            rising(f, "first", first, "full", full);
            rising(f, "full", full, "over", over);
            if (full == null) {
                rising(f, "first", first, "over", over);
            }
            if (!f.has("first") && !f.has("full") && !f.has("over")) {
                f.findings().error(f.pos(), "this record has no date", "give 'first', 'full' or 'over'");
            }
            return new Season.Flowering(first, full, over);
        });
    }

    private static void rising(Fields f, String earlierKey, @Nullable LocalDate earlier, String laterKey, @Nullable LocalDate later) {
        if (earlier != null && later != null && later.isBefore(earlier)) {
            f.refuse(laterKey, "'" + laterKey + "' is before '" + earlierKey + "'", "check both dates");
        }
    }

    private static List<Season.Sighting> seen(Fields season) {
        return season.each("seen", "this entry of 'seen'", f -> {
            f.require("date", "stage");
            LocalDate date = f.date("date");
            Season.Stage stage = f.word("stage", Season.Stage.values());
            f.done();
            return date == null || stage == null ? null : new Season.Sighting(date, stage);
        });
    }
}
