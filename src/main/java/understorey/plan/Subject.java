package understorey.plan;

import org.jspecify.annotations.Nullable;

/**
 * A flower to photograph, with the measures that decide how it fills a frame. A component is null if it is unknown;
 * {@code marks} give the reliability of the catalogue.
 *
 * @param key                short name, unique
 * @param name               common name
 * @param region             of the home range
 * @param southern           months are those of the southern hemisphere
 * @param monthFirst         1 to 12
 * @param monthLast          1 to 12; smaller than the first if the season crosses the new year
 * @param monthsReference    place that the months refer to
 * @param stemsPerM2         flowering stems: sparse, normal, densest patches
 * @param heightLowM         height of the flowers above the ground
 * @param heightHighM        height of the flowers above the ground
 * @param flowerWidthMm      of one flower, across
 * @param flowersOpen        flowers open together on a stem at the peak
 * @param flowerAreaIndex    petal area per square metre of ground: normal and densest
 * @param reflectance        brightness class of the petals
 * @param colour             in words
 * @param habitat            in words
 * @param care               a reminder, never legal advice
 * @param marks              reliability of each figure
 * @param sources            codes of the floras and pages that the figures come from
 * @param monthsLatitude     of the place that the months refer to, degrees from the equator
 * @param guide              null for a subject that the author describes
 */
public record Subject(String key, String name, @Nullable String scientificName, @Nullable String region, boolean southern,
                      @Nullable Integer monthFirst, @Nullable Integer monthLast, @Nullable String monthsReference,
                      @Nullable Stems stemsPerM2, @Nullable Double heightLowM, @Nullable Double heightHighM,
                      @Nullable Double flowerWidthMm, @Nullable Integer flowersOpen, @Nullable AreaIndex flowerAreaIndex,
                      @Nullable Reflectance reflectance, @Nullable String colour, @Nullable String habitat, @Nullable String care,
                      @Nullable Marks marks, @Nullable String sources, @Nullable Double monthsLatitude,
                      @Nullable FieldGuide guide) {

    /** A subject that is not from the catalogue. */
    public Subject(String key, String name, @Nullable String scientificName, @Nullable String region, boolean southern,
                   @Nullable Integer monthFirst, @Nullable Integer monthLast, @Nullable String monthsReference,
                   @Nullable Stems stemsPerM2, @Nullable Double heightLowM, @Nullable Double heightHighM,
                   @Nullable Double flowerWidthMm, @Nullable Integer flowersOpen, @Nullable AreaIndex flowerAreaIndex,
                   @Nullable Reflectance reflectance, @Nullable String colour, @Nullable String habitat, @Nullable String care,
                   @Nullable Marks marks, @Nullable String sources) {
        this(key, name, scientificName, region, southern, monthFirst, monthLast, monthsReference, stemsPerM2, heightLowM,
                heightHighM, flowerWidthMm, flowersOpen, flowerAreaIndex, reflectance, colour, habitat, care, marks,
                sources, null, null);
    }

    /** Flowering stems per square metre. */
    public record Stems(double sparse, double typical, double thick) {
    }

    /** Square metres of petal per square metre of ground. */
    public record AreaIndex(double typical, double thick) {
    }

    /** Reliability of each figure: C confirmed, C2 second-hand, D derived, M from memory. */
    public record Marks(String months, String stems, String height, String flowers, String size) {
    }

    public enum Reflectance { WHITE, YELLOW, PINK, BLUE_VIOLET, GREEN, RED }

    /** Middle of the range of heights, metres; null if the heights are unknown. */
    public @Nullable Double heightM() {
        return heightLowM == null || heightHighM == null ? null : (heightLowM + heightHighM) / 2;
    }

    /**
     * Width of the flowers that are open together on one stem, mm: flowers side by side in a disc, width × √count
     * (an assumption; ten ramsons flowers of 16 mm give 51 mm, compared with umbels of
     * 30 to 60 mm in floras, from memory). Null if the width of the flower is unknown.
     */
    public @Nullable Double headWidthMm() {
        return flowerWidthMm == null ? null : flowerWidthMm * Math.sqrt(flowersOpen == null ? 1 : flowersOpen);
    }

    /** Width of what a frame of this width and height shows whole, mm: the head, or else one of its flowers. Null if unknown. */
    public @Nullable Double widthInFrameMm(double widthMm, double heightMm) {
        Double head = headWidthMm();
        return head == null || head <= Math.min(widthMm, heightMm) ? head : flowerWidthMm;
    }
}
