package understorey.scene.sketch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.pages.Briefs;
import understorey.pages.DrawingWords;
import understorey.pages.templates.Templates;
import understorey.plan.Role;
import understorey.plan.Subject;
import understorey.plan.Viewpoint;
import understorey.scene.Drawing;

/** The tones of a sketch in each dress of the pages, as the style gives them. */
class DressTest {

    /** Least contrast of graphical objects: WCAG 2.1, success criterion 1.4.11. */
    private static final double LEAST_CONTRAST = 3;
    private static final Pattern RULE = Pattern.compile("([^{}@]*\\.(airy|deep)\\b[^{]*)\\{([^}]*)\\}");
    private static final Pattern TONE = Pattern.compile("--([a-z-]+): (#[0-9a-f]{3,6})");

    private enum Dress { LIGHT, DARK, RED }

    private static Map<String, Integer> tones(String palette, Dress dress) {
        String css = new Templates(null).text("marks.css");
        int dark = css.indexOf("@media screen and (prefers-color-scheme: dark)");
        int darkEnd = css.indexOf("\n}", dark);
        Map<String, Integer> tones = new HashMap<>();
        for (Matcher rule = RULE.matcher(css); rule.find();) {
            boolean red = rule.group(1).contains(".night");
            boolean inDark = rule.start() > dark && rule.start() < darkEnd;
            if (rule.group(1).contains("." + palette) && (!red || dress == Dress.RED) && (!inDark || dress == Dress.DARK)) {
                for (Matcher tone = TONE.matcher(rule.group(3)); tone.find();) {
                    String hex = tone.group(2).substring(1);
                    tones.put(tone.group(1), Integer.parseInt(hex.length() == 3 ? hex.replaceAll("(.)", "$1$1") : hex, 16));
                }
            }
        }
        return tones;
    }

    @Test
    void petalsAreTheLightestToneAndThreeTimesTheLeavesInEachDress() {
        List<String> wrong = new ArrayList<>();
        int seen = 0;
        for (Subject subject : Briefs.demo().subjects()) {
            PetalTint tint = PetalTint.of(subject);
            for (Dress dress : Dress.values()) {
                Map<String, Integer> tones = tones(tint.deep() ? "deep" : "airy", dress);
                double petal = PetalTint.luminance(tones.getOrDefault("petal", tint.rgb()));
                for (Map.Entry<String, Integer> tone : tones.entrySet()) {
                    double other = PetalTint.luminance(tone.getValue());
                    double contrast = (petal + 0.05) / (other + 0.05);
                    boolean leaf = tone.getKey().startsWith("leaf");
                    if (!tone.getKey().equals("petal") && !tone.getKey().equals("eye") && (contrast <= 1 || leaf && contrast < LEAST_CONTRAST)) {
                        wrong.add(String.format(Locale.ROOT, "%s %s %s %.2f", subject.key(), dress, tone.getKey(), contrast));
                    }
                    seen++;
                }
            }
        }
        assertEquals(List.of(), wrong);
        assertTrue(seen > 1000, "only " + seen);
    }

    /** Hue is kept to 12 degrees where a colour has one: a mix with white turns it a little. */
    @Test
    void petalsKeepTheHueOfTheCatalogue() {
        for (Subject subject : Briefs.demo().subjects()) {
            int own = Integer.parseInt(subject.guide().petals().srgb().substring(1), 16);
            float[] before = hsb(own);
            float[] after = hsb(PetalTint.of(subject).rgb());
            if (before[1] > 0.1) {
                double turned = Math.abs(before[0] - after[0]) * 360;
                assertTrue(Math.min(turned, 360 - turned) < 12, subject.key());
            }
        }
    }

    /** A look that no rule of the style gives is drawn black. */
    @Test
    void everyLookOfASketchHasARule() {
        String css = new Templates(null).text("marks.css");
        Set<String> looks = new TreeSet<>();
        for (Subject subject : Briefs.demo().subjects()) {
            for (Samples.Picture picture : List.of(Samples.picture("1").of(subject).from(new Viewpoint.Height(1.5)).equivalent(50)
                            .tilt(10).sharp(2, 20),
                    Samples.picture("2").of(subject).from(new Viewpoint.Height(0.2)).equivalent(20),
                    Samples.picture("3").of(subject).role(Role.CLOSING))) {
                Setup setup = Setups.inTheWood(picture, 0);
                collect(ViewfinderSketch.of(setup).drawing(DrawingWords.BUILT_IN).marks(), looks);
            }
        }
        looks.remove("words");
        assertTrue(looks.size() > 35, looks.toString());
        looks.forEach(look -> assertTrue(Pattern.compile("svg \\." + look + "[ ,]").matcher(css).find(), look));
    }

    private static void collect(List<Drawing.Mark> marks, Set<String> looks) {
        for (Drawing.Mark mark : marks) {
            if (mark instanceof Drawing.Palette palette) {
                collect(palette.marks(), looks);
            } else if (mark instanceof Drawing.Glyph glyph) {
                collect(glyph.marks(), looks);
            }
            if (!(mark instanceof Drawing.Glyph) && !(mark instanceof Drawing.Stamps)) {
                looks.add(mark.style());
            }
        }
    }

    private static float[] hsb(int rgb) {
        return java.awt.Color.RGBtoHSB(rgb >> 16 & 0xFF, rgb >> 8 & 0xFF, rgb & 0xFF, null);
    }
}
