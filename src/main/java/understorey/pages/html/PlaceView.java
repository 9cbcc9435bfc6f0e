package understorey.pages.html;

import static understorey.pages.words.Words.ifKnown;
import static understorey.pages.words.Words.orDash;

import freemarker.core.TemplateHTMLOutputModel;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import understorey.advice.Measure;
import understorey.pages.markdown.Prose;
import understorey.pages.tables.Column;
import understorey.pages.tables.Row;
import understorey.pages.tables.SeasonColumns;
import understorey.pages.tables.Table;
import understorey.pages.tables.TableView;
import understorey.pages.templates.Templates;
import understorey.pages.words.Dates;
import understorey.pages.words.Sentences;
import understorey.pages.words.Words;
import understorey.plan.Canopy;
import understorey.plan.Foliage;
import understorey.plan.Position;
import understorey.plan.Share;
import understorey.plan.Site;
import understorey.plan.Spot;
import understorey.plan.Trip;
import understorey.plan.Walk;

/**
 * A site in words, as its audience may see it.
 *
 * @param facts    where, how high, under which trees, when open
 * @param records  past flowering
 * @param cautions of the site's own, as HTML and as written
 */
public record PlaceView(String name, String slug, List<Row> facts, TableView spots, TableView walks,
                        TableView records, @Nullable String access,
                        @Nullable TemplateHTMLOutputModel accessHtml, @Nullable String reports,
                        @Nullable String notes, @Nullable TemplateHTMLOutputModel notesHtml, List<TemplateHTMLOutputModel> cautionsHtml,
                        List<String> cautions) {

    private static final List<Column<Walk>> WALKS = List.of(
            Column.text("Walk", Measure.WORD, (walk, sentences) -> walk.from() + " – " + walk.to()),
            Column.text("Time", Measure.MINUTES, (walk, sentences) -> sentences.of(walk.duration().toMinutes(), Measure.MINUTES)));

    /**
     * A site as its audience may see it.
     *
     * @param spared a public page of a sensitive site
     */
    public static PlaceView of(Site site, Share.Precision precision, boolean spared, Prose prose, Sentences sentences) {
        List<TemplateHTMLOutputModel> cautions = site.cautions().stream().map(prose::html).filter(Objects::nonNull)
                .map(Templates::html).toList();
        return new PlaceView(site.name(), site.slug(), facts(site, precision, spared, sentences),
                new Table<>(spots(site), spared ? List.of() : site.spots()).view("Spots", sentences),
                new Table<>(WALKS, site.walks()).view("Walks with a given time", sentences),
                new Table<>(SeasonColumns.RECORDS, spared ? List.of() : SeasonColumns.Year.of(site)).view("Past flowering", sentences),
                site.access(), ifKnown(prose.html(site.access()), Templates::html), site.reports(),
                site.notes(), ifKnown(prose.html(site.notes()), Templates::html), cautions, site.cautions());
    }

    private static List<Row> facts(Site site, Share.Precision precision, boolean spared, Sentences sentences) {
        List<Row> facts = new ArrayList<>();
        switch (precision) {
            case EXACT -> facts.add(new Row("Position", position(site.position())));
            case COARSE -> facts.add(new Row("Position", "approximate, to protect the site: about "
                    + Words.number(site.position().latitude(), 1) + ", "
                    + Words.number(site.position().longitude(), 1)));
            case HIDDEN -> facts.add(new Row("Position", "hidden, to protect the site"));
        }
        if (site.elevationM() != null) {
            facts.add(new Row("Elevation", sentences.of(site.elevationM(), Measure.WHOLE_METRES)));
        }
        facts.add(new Row("Time zone", site.zone().getId()));
        facts.add(new Row("Trees", trees(site.canopyAt(null), sentences) + (site.canopy() == null ? " (default)" : "")));
        if (spared) {
            boolean hidden = precision == Share.Precision.HIDDEN;
            facts.add(new Row("Not shown", "skyline, slopes, walks, opening hours and parking, to protect the site"));
            facts.add(new Row("Times", "for the centre of a cell of " + (hidden ? "1°" : "0.1°") + ", rounded to "
                    + Trip.clockStepMin(precision) + " minutes"));
            return facts;
        }
        facts.add(new Row("Open", site.opening() == null ? "no opening hours given"
                : sentences.clock().of(site.opening().from()) + " to " + sentences.clock().of(site.opening().to())));
        if (site.parking() != null) {
            facts.add(new Row("Car park", (site.parking().spot() == null ? "at the site" : site.parking().spot())
                    + (site.parking().closes() == null ? "" : ", closes " + sentences.clock().of(site.parking().closes()))
                    + (site.parking().fee() == null ? "" : ", fee: " + site.parking().fee())));
        }
        return facts;
    }

    private static List<Column<Spot>> spots(Site site) {
        return List.of(
                Column.text("Spot", Measure.WORD, (spot, sentences) -> spot.name()),
                Column.text("Position", Measure.WORD, (spot, sentences) -> orDash(spot.at(), PlaceView::position)),
                Column.text("Trees", Measure.WORD, (spot, sentences) -> trees(site.canopyAt(spot), sentences)),
                Column.text("Ground", Measure.WORD, PlaceView::ground));
    }

    private static String ground(Spot spot, Sentences sentences) {
        List<String> ground = new ArrayList<>();
        if (spot.slope() != null) {
            ground.add(sentences.of(spot.slope().angleDeg(), Measure.DEGREES) + " slope facing "
                    + sentences.of(spot.slope().facesDeg(), Measure.COMPASS));
        }
        if (spot.clearingRadiusM() != null) {
            ground.add("clearing, trees " + sentences.of(spot.clearingRadiusM(), Measure.METRES) + " away");
        }
        return ground.isEmpty() ? "level" : String.join("; ", ground);
    }

    static String trees(Canopy canopy, Sentences sentences) {
        if (canopy.isNone()) {
            return "open ground";
        }
        String kind = canopy.trees() == null ? "trees" : Words.word(canopy.trees()) + " trees";
        String height = canopy.heightM() == null ? "" : ", " + sentences.of(canopy.heightM(), Measure.WHOLE_METRES) + " tall";
        String leaves = "in full leaf (default)";
        if (canopy.foliage() instanceof Foliage.Stage stage) {
            leaves = stage == Foliage.Stage.LEAFLESS ? "leafless" : "at " + Words.word(stage).replace(' ', '-');
        } else if (canopy.foliage() instanceof Foliage.LeafOut out) {
            leaves = "leaves open from " + Dates.dayAndYear(out.budBurst());
        } else if (canopy.foliage() instanceof Foliage.Growing growing) {
            leaves = Words.word(growing.from()).replace(' ', '-') + " to " + Words.word(growing.to()).replace(' ', '-') + " (assumed)";
        } else if (canopy.foliage() instanceof Foliage.Index index) {
            leaves = "plant area index " + Words.number(index.plantAreaIndex(), 1);
        }
        return kind + height + ", " + leaves;
    }

    /** Latitude and longitude to four decimals, about ten metres. */
    static String position(Position position) {
        return (Words.number(position.latitude(), 4) + ", " + Words.number(position.longitude(), 4)).replace('−', '-');
    }
}
