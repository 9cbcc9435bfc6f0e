package understorey.reading.subject;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import understorey.plan.Canopy;
import understorey.plan.FieldGuide;
import understorey.plan.Foliage;
import understorey.yaml.Fields;
import understorey.yaml.finding.Suggestion;
import understorey.yaml.tree.Node;
import understorey.yaml.value.Words;

/** A row of the catalogue as a field guide: peak, course, colours, habitat, law. */
final class GuideRow {

    /** Longest season of any subject, days. */
    private static final int LONGEST_COURSE = 200;
    /** Rules between countries. */
    private static final String ANYWHERE = "*";
    private static final Pattern TINT = Pattern.compile("(\\S+)(?: \\((.+)\\))?");

    private final Row row;
    private final Fields f;

    GuideRow(Row row) {
        this.row = row;
        this.f = row.f();
    }

    FieldGuide guide() {
        return new FieldGuide(peak(), course(), closing(), new FieldGuide.Petals(row.srgb("petal_srgb"), tints(), row.mark("petal_mark")),
                leaves(), row.word("form", FieldGuide.Form.values()), f.word("form_second", FieldGuide.Form.values()), setting(),
                new FieldGuide.Statement(row.text("trampling"), row.mark("trampling_mark"), row.text("trampling_source")),
                row.text("etiquette"), laws());
    }

    private FieldGuide.Peak peak() {
        return new FieldGuide.Peak(row.monthDay("peak"), row.text("peak_place"), row.number("peak_latitude", -90, 90),
                row.number("peak_elevation_m", -450, 9000), row.number("peak_sd_days", 0.1, 60), row.mark("peak_sd_mark"),
                row.mark("peak_mark"), row.text("peak_source"), row.maybe("peak_elsewhere"));
    }

    private FieldGuide.Course course() {
        return new FieldGuide.Course(row.whole("first_to_peak_days", 1, LONGEST_COURSE),
                row.whole("peak_to_over_days", 1, LONGEST_COURSE), row.mark("course_mark"), row.text("course_source"));
    }

    private FieldGuide.Closing closing() {
        Set<FieldGuide.Trigger> triggers = new TreeSet<>();
        for (String word : parts("closes", " \\+ ")) {
            FieldGuide.Trigger trigger = Words.find(FieldGuide.Trigger.values(), word);
            if (trigger == null) {
                f.refuse("closes", Node.quote(word) + " is not a value of 'closes'",
                        Suggestion.amongWords(Words.of(FieldGuide.Trigger.values()), word, "use one of"));
            } else {
                triggers.add(trigger);
            }
        }
        return new FieldGuide.Closing(Set.copyOf(triggers), f.number("opens_from_c", -10, 30), row.maybe("closes_note"),
                row.mark("closes_mark"), row.text("closes_source"));
    }

    private List<FieldGuide.Tint> tints() {
        List<FieldGuide.Tint> tints = new ArrayList<>();
        for (String part : parts("petal_other_srgb", ", (?=#)")) {
            Matcher tint = TINT.matcher(part);
            if (tint.matches() && Row.isSrgb(tint.group(1))) {
                tints.add(new FieldGuide.Tint(tint.group(1), tint.group(2)));
            } else {
                f.refuse("petal_other_srgb", Node.quote(part) + " is no colour", "for example #B9A3C2 (veins)");
            }
        }
        return List.copyOf(tints);
    }

    private FieldGuide.@Nullable Leaves leaves() {
        if (!f.has("leaf_srgb") && !f.has("leaf_class")) {
            return null;
        }
        return new FieldGuide.Leaves(row.srgb("leaf_srgb"), row.text("leaf_class"), row.word("leaf_form", FieldGuide.LeafForm.values()),
                row.number("leaf_height_cm", 1, 300) / 100, row.mark("leaf_form_mark"));
    }

    private FieldGuide.Setting setting() {
        FieldGuide.Ground ground = row.word("ground", FieldGuide.Ground.values());
        Canopy.Trees trees = f.word("trees", Canopy.Trees.values());
        Foliage.Stage from = f.word("leaves_from", Foliage.Stage.values());
        Foliage.Stage to = f.word("leaves_to", Foliage.Stage.values());
        if (ground == FieldGuide.Ground.OPEN && f.has("trees")) {
            f.refuse("trees", "in the open there are no trees", "clear the cell, or write another 'ground'");
        } else if (ground != FieldGuide.Ground.OPEN) {
            f.require("trees");
        }
        if (trees == Canopy.Trees.DECIDUOUS || trees == Canopy.Trees.MIXED) {
            f.require("leaves_from", "leaves_to");
        }
        return new FieldGuide.Setting(ground, trees, from, to, row.text("grows_on"), row.text("trees_above"),
                row.text("leaf_stage"), row.mark("setting_mark"));
    }

    /** One rule per line: country | mark | text | source. */
    private List<FieldGuide.Law> laws() {
        List<FieldGuide.Law> laws = new ArrayList<>();
        for (String line : parts("law", "\n")) {
            String[] cells = line.split(" \\| ", -1);
            if (cells.length != 4 || !Row.isMark(cells[1])) {
                refuse(line, "this rule must be country, mark, text and source",
                        "separate them with ' | ', for example GB | C | Do not dig. | the act");
            } else if (!cells[0].equals(ANYWHERE) && !Countries.isCode(cells[0])) {
                refuse(line, "there is no country code " + Node.quote(cells[0]), Countries.help(cells[0]));
            } else {
                laws.add(new FieldGuide.Law(cells[0].equals(ANYWHERE) ? null : cells[0],
                        new FieldGuide.Statement(cells[2], cells[1], cells[3])));
            }
        }
        return List.copyOf(laws);
    }

    /** An error at one line of the cell with the laws. */
    private void refuse(String line, String text, String help) {
        f.findings().error(f.findings().source().find(line, f.at("law")), text, help);
    }

    private List<String> parts(String column, String between) {
        String text = f.text(column, Row.LONGEST);
        return text == null ? List.of() : List.of(text.split(between));
    }
}
