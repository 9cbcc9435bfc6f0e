package understorey.pages.html;

import java.util.ArrayList;
import java.util.List;
import understorey.advice.Advice;
import understorey.advice.CautionAdvice;
import understorey.brief.Brief;
import understorey.brief.TimedShot;
import understorey.pages.words.Sentences;
import understorey.visit.WeatherHour;

/** The cautions for the field sheet: those of the site, then the first sentence of each that this visit needs. */
final class SheetCautions {

    /** The sun this close to the lens axis may come into the finder when the frame is sought: common practice, no source. */
    private static final double NEAR_THE_SUN_DEG = 60;
    /** Fresh breeze, small trees in leaf begin to sway (Beaufort scale), m/s. */
    private static final double TREES_SWAY_MS = 8;

    private SheetCautions() {
    }

    static List<String> of(Brief brief, List<String> own, Sentences sentences) {
        List<String> cautions = new ArrayList<>(own);
        cautions.addAll(PlanView.leads(sentences.of(brief.cautions().stream().filter(caution -> matters(caution, brief)).toList())));
        return cautions;
    }

    /** Law and the care for each subject are read at home. */
    private static boolean matters(Advice caution, Brief brief) {
        if (caution instanceof CautionAdvice.PlantLaw || caution instanceof CautionAdvice.PlantLawUnknown
                || caution instanceof CautionAdvice.CareForSubject) {
            return false;
        }
        if (caution instanceof CautionAdvice.SunThroughALens) {
            return brief.timed().stream().anyMatch(SheetCautions::nearTheSun);
        }
        return !(caution instanceof CautionAdvice.BranchesInWind) || mayBlow(brief.weather());
    }

    /** A picture without a direction may face the sun. */
    private static boolean nearTheSun(TimedShot shot) {
        TimedShot.Sunlight sunlight = shot.sunlight();
        return shot.time() != null && shot.light().sun().apparentAltitudeDeg() > 0
                && (sunlight == null || sunlight.now() != null && sunlight.now().angleDeg() < NEAR_THE_SUN_DEG);
    }

    /** Without a forecast of the wind it may. */
    private static boolean mayBlow(List<WeatherHour> hours) {
        return hours.isEmpty() || hours.stream().anyMatch(hour -> speedMs(hour) >= TREES_SWAY_MS);
    }

    private static double speedMs(WeatherHour hour) {
        Double gust = hour.weather().gustMs();
        Double wind = hour.weather().windMs();
        return gust != null ? gust : wind != null ? wind : TREES_SWAY_MS;
    }
}
