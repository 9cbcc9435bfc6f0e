package understorey.plan;

import java.time.MonthDay;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What the catalogue knows of a subject beyond its measures. A {@code mark} tells how sure a statement is: C confirmed in the
 * source, C2 second-hand, D derived, M from memory, DESC from the wording of floras; words after it say what it is about.
 *
 * @param petals    colour of the flowers
 * @param leaves    colour of the leaves; null for a fungus
 * @param form      shape of the flower or of the group of flowers
 * @param second    another shape that fits
 * @param trampling what treading does to the plants
 * @param etiquette reminders for a visit; common practice
 * @param laws      by country, none complete and never legal advice
 */
public record FieldGuide(Peak peak, Course course, Closing closing, Petals petals, @Nullable Leaves leaves, Form form,
                         @Nullable Form second, Setting setting, Statement trampling, String etiquette, List<Law> laws) {

    /**
     * Usual day of full flower at one place.
     *
     * @param latitudeDeg north positive
     * @param elevationM  above sea level
     * @param sdDays      standard deviation between years
     * @param sdMark      how sure the deviation is
     * @param elsewhere   dates at other places, in words
     */
    public record Peak(MonthDay day, String place, double latitudeDeg, double elevationM, double sdDays, String sdMark,
                       String mark, String source, @Nullable String elsewhere) {
    }

    /** Days from the first flowers to full flower, and from there until the flowers are over. */
    public record Course(int firstToPeakDays, int peakToOverDays, String mark, String source) {
    }

    /**
     * When flowers close or hang their heads; no rule is certain.
     *
     * @param triggers   each of them is enough; empty for flowers that stay open
     * @param opensFromC temperature of the air from which they open, °C
     * @param note       in words
     */
    public record Closing(Set<Trigger> triggers, @Nullable Double opensFromC, @Nullable String note, String mark, String source) {
    }

    public enum Trigger { NIGHT, DULL, COLD, WET }

    /** Colours of the petals as sRGB, {@code #RRGGBB}: the usual one and others. */
    public record Petals(String srgb, List<Tint> others, String mark) {
    }

    /** Another colour, and where it is or when it occurs. */
    public record Tint(String srgb, @Nullable String where) {
    }

    /**
     * The leaves.
     *
     * @param srgb     colour as sRGB, computed with the leaf model PROSPECT-D for a class of leaves
     * @param form     how they stand
     * @param heightM  of most of them above the ground
     * @param formMark how sure form and height are
     */
    public record Leaves(String srgb, String leafClass, LeafForm form, double heightM, String formMark) {
    }

    /** How the leaves of a plant stand: the first five from the ground, a whorl and pairs on the stem, needles on twigs. */
    public enum LeafForm { STRAP, BLADE, ROSETTE, ROUND, LOBED, WHORL, LEAFY_STEM, NEEDLE }

    public enum Form { BELL, STAR, UMBEL, CUP, DAISY, SPIKE, TUBE, NODDING, LIPPED, CATKIN, CAP }

    public enum Ground { WOODLAND, EDGE, OPEN }

    /**
     * Where the subject grows, and the trees there while it flowers.
     *
     * @param trees      null in the open
     * @param leavesFrom stage of the leaves when flowering begins; null in the open and below evergreens
     * @param leavesTo   stage when it ends
     * @param grounds    kinds of ground, in words
     * @param treesAbove kinds of trees, in words
     * @param leafStage  leaves at flowering, in words
     */
    public record Setting(Ground ground, Canopy.@Nullable Trees trees, Foliage.@Nullable Stage leavesFrom,
                          Foliage.@Nullable Stage leavesTo, String grounds, String treesAbove, String leafStage, String mark) {
    }

    public record Statement(String text, String mark, String source) {
    }

    /**
     * A rule about wild plants.
     *
     * @param country code of ISO 3166-1 alpha-2; null for rules between countries
     */
    public record Law(@Nullable String country, Statement rule) {
    }
}
