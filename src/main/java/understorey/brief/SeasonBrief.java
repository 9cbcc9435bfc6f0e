package understorey.brief;

import java.util.List;
import understorey.scene.Drawing;
import understorey.season.DayRanking;
import understorey.season.FloweringWindow;

/**
 * When to go.
 *
 * @param windows of the subjects whose season anybody knows, in the order of their pictures, in the season of the day
 *                planned
 * @param charts  of each window
 * @param ranking of the days that were open; null where the author chose the day
 */
public record SeasonBrief(List<FloweringWindow> windows, List<Drawing> charts, DayRanking ranking) {

    /** Of the first picture whose subject's season is known; null when none is. */
    public FloweringWindow window() {
        return windows.isEmpty() ? null : windows.get(0);
    }
}
