package understorey.pages.html;

import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.brief.TimedShot;
import understorey.kit.CoverChoice;
import understorey.pages.tables.LensColumns;
import understorey.pages.tables.Table;
import understorey.pages.tables.TableView;
import understorey.pages.tables.Wording;
import understorey.pages.words.Sentences;
import understorey.pages.words.Units;

/**
 * How thick the flowers look on one picture, in words.
 *
 * @param reasons what the planned lens shows, and what a longer, a wider and a lower one would
 * @param lenses  by rising focal length
 */
public record CoverView(List<String> reasons, TableView lenses) {

    private static final String CAPTION = "How dense the flowers look with each lens, the nearest kept the same size "
            + "(full-frame equivalent; trunk 10\u00a0m behind them)";

    /** Null for a picture of one plant or flower, and where the density of the subject is unknown. */
    static @Nullable CoverView of(TimedShot shot, Sentences sentences) {
        if (shot.cover() == null || !shot.ofCarpet()) {
            return null;
        }
        return new CoverView(sentences.of(shot.cover().reasons()), new Table<>(LensColumns.COVER, shot.cover().choices(), CoverChoice::planned)
                .view(CAPTION, new Wording(Units.METRIC, sentences)));
    }
}
