package understorey.pages.html;

import static understorey.pages.words.Words.orDash;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Measure;
import understorey.kit.Intent;
import understorey.kit.LensFit;
import understorey.pages.tables.Row;
import understorey.pages.words.Sentences;
import understorey.pages.words.Words;
import understorey.plan.Sharp;
import understorey.plan.Viewpoint;

/** What the author left open of a shot, and what was put there. */
final class ShotDefaults {

    private ShotDefaults() {
    }

    static List<Row> of(Intent intent, @Nullable LensFit fit, Sentences sentences) {
        List<Row> rows = new ArrayList<>();
        for (String name : List.of("role", "spot", "viewpoint", "orientation", "tilt", "focal_equivalent", "frame",
                "sharp", "polariser", "duration", "priority")) {
            boolean open = name.equals("tilt") ? intent.shot().tiltDeg() == null
                    : intent.assumed().contains(name);
            String value = open ? value(name, intent, fit, sentences) : "";
            if (!value.isEmpty()) {
                rows.add(new Row(name.equals("focal_equivalent") ? "focal length" : name.equals("sharp") ? "depth of field" : name, value));
            }
        }
        return rows;
    }

    private static String value(String name, Intent intent, @Nullable LensFit fit, Sentences sentences) {
        return switch (name) {
            case "role" -> Words.word(intent.role());
            case "viewpoint" -> viewpoint(intent.viewpoint(), fit, sentences);
            case "spot" -> "the site itself";
            case "tilt" -> fit == null ? "" : ShotView.tilt(fit);
            case "polariser" -> "no";
            case "orientation" -> Words.word(intent.orientation());
            case "focal_equivalent" -> orDash(intent.focalEquivalentMm(), Words::millimetres) + " (equivalent)";
            case "frame" -> fit == null ? "by the subject" : sentences.of(fit.frameWidthM(), Measure.METRES) + " wide";
            case "sharp" -> intent.sharp() instanceof Sharp.Range range
                    ? sentences.of(range.nearM(), Measure.METRES) + " to " + sentences.of(range.farM(), Measure.METRES)
                    : sentences.of(((Sharp.Depth) intent.sharp()).depthM(), Measure.METRES);
            case "duration" -> intent.duration().toMinutes() + " min";
            default -> String.valueOf(intent.priority());
        };
    }

    private static String viewpoint(Viewpoint viewpoint, @Nullable LensFit fit, Sentences sentences) {
        String height = fit == null ? "" : sentences.of(fit.heightM(), Measure.METRES);
        return !(viewpoint instanceof Viewpoint.Stance stance) ? height
                : Words.word(stance) + (height.isEmpty() ? "" : ", " + height);
    }
}
