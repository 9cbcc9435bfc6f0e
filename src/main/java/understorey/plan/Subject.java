package understorey.plan;

/**
 * What is photographed, with the measures that decide how it fills a frame. A component is null where
 * nobody knows it; {@code marks} say how sure the catalogue is.
 *
 * @param key                short name, unique
 * @param name               common name
 * @param scientificName     null when not given
 * @param region             of the home range; null when not given
 * @param southern           months are those of the southern hemisphere
 * @param monthFirst         1 to 12
 * @param monthLast          1 to 12; smaller than the first when the season crosses the turn of the year
 * @param monthsReference    place that the months refer to
 * @param stemsPerM2         flowering stems: sparse, good stand, densest patches
 * @param heightLowM         of the flowers above the ground
 * @param heightHighM        of the flowers above the ground
 * @param flowerWidthMm      of one flower, across
 * @param flowersOpen        open at once on a stem at the peak
 * @param flowerAreaIndex    petal area above a square metre of floor: typical and thick stand
 * @param reflectance        brightness class of the petals
 * @param colour             in words
 * @param habitat            in words
 * @param care               a reminder, never legal advice
 * @param marks              how sure each figure is
 * @param sources            codes of the floras and pages that the figures come from
 * @param monthsLatitude     of the place that the months refer to, degrees from the equator
 */
public record Subject(String key, String name, String scientificName, String region, boolean southern,
                      Integer monthFirst, Integer monthLast, String monthsReference, Stems stemsPerM2,
                      Double heightLowM, Double heightHighM, Double flowerWidthMm, Integer flowersOpen,
                      AreaIndex flowerAreaIndex, Reflectance reflectance, String colour, String habitat,
                      String care, Marks marks, String sources, Double monthsLatitude) {

    /** A subject whose months refer to no place in particular. */
    public Subject(String key, String name, String scientificName, String region, boolean southern, Integer monthFirst,
                   Integer monthLast, String monthsReference, Stems stemsPerM2, Double heightLowM, Double heightHighM,
                   Double flowerWidthMm, Integer flowersOpen, AreaIndex flowerAreaIndex, Reflectance reflectance,
                   String colour, String habitat, String care, Marks marks, String sources) {
        this(key, name, scientificName, region, southern, monthFirst, monthLast, monthsReference, stemsPerM2, heightLowM,
                heightHighM, flowerWidthMm, flowersOpen, flowerAreaIndex, reflectance, colour, habitat, care, marks,
                sources, null);
    }

    /** Flowering stems a square metre. */
    public record Stems(double sparse, double typical, double thick) {
    }

    /** Square metres of petal a square metre of floor. */
    public record AreaIndex(double typical, double thick) {
    }

    /** C confirmed, C2 second-hand, D derived, M from memory. */
    public record Marks(String months, String stems, String height, String flowers, String size) {
    }

    public enum Reflectance { WHITE, YELLOW, PINK, BLUE_VIOLET, GREEN, RED }

    /** Middle of the range of heights, metres; null when the heights are not known. */
    public Double heightM() {
        return heightLowM == null || heightHighM == null ? null : (heightLowM + heightHighM) / 2;
    }

    /**
     * Width of what is open at once on one stem, mm: flowers side by side in a disc, width × √count
     * (an assumption; a head of ten ramsons stars of 16 mm comes out at 51 mm, against umbels of
     * 30 to 60 mm in floras, from memory). Null when the flower's width is not known.
     */
    public Double headWidthMm() {
        return flowerWidthMm == null ? null : flowerWidthMm * Math.sqrt(flowersOpen == null ? 1 : flowersOpen);
    }
}
