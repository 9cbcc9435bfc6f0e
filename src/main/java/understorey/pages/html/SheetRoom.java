package understorey.pages.html;

import java.util.List;

/**
 * The room for pictures on the field sheet, so that six fit on one side of US Letter, the shorter of the two papers.
 * All heights are those of the print style, in millimetres.
 *
 * @param shotsMm for all pictures together
 */
record SheetRoom(Size size, double shotsMm) {

    /** How large pictures are printed. */
    enum Size {
        /** Larger type and sketches. */
        LARGE(1.12, 38.5, 52),
        MIDDLE(1, 28.9, 66),
        /** Smaller sketches, where there is no room for others. */
        SMALL(1, 26.4, 68);

        private final double type;
        private final double leastMm;
        private final int letters;

        /**
         * One size.
         *
         * @param type    how much larger than the sheet's own
         * @param leastMm height of a picture with the highest sketch
         * @param letters in a line beside a sketch
         */
        Size(double type, double leastMm, int letters) {
            this.type = type;
            this.leastMm = leastMm;
            this.letters = letters;
        }
    }

    /** Letter, 279.4 mm, less the margins above and below, and a little for fonts that run wide. */
    private static final double SIDE_MM = 263;
    private static final int SHOTS_A_SIDE = 6;
    /** Title, hours and blocks of the rail, the line above the pictures, and the rules between. */
    private static final double TOP_MM = 26;
    /** Home with three lines for notes. */
    private static final double HOME_MM = 41;
    private static final double HEADING_MM = 5;
    private static final double ROW_MM = 4.7;
    private static final double LINE_MM = 4.1;
    private static final int PAGE_LETTERS = 114;
    /** A name that is longer takes two lines in the list of the bag. */
    private static final int BAG_LETTERS = 14;
    /** Name, settings and rule of a picture. */
    private static final double HEAD_MM = 13.2;

    /** The room beside all else that the sheet says. */
    static SheetRoom of(Size size, int shots, SheetRail rail, List<String> bag, int dayRows, List<String> sentences) {
        int sides = Math.max(1, (shots + SHOTS_A_SIDE - 1) / SHOTS_A_SIDE);
        int bagRows = (bag.stream().mapToInt(name -> name.length() > BAG_LETTERS ? 2 : 1).sum() + 1) / 2;
        double below = Math.max(HOME_MM, HEADING_MM + ROW_MM * Math.max(bagRows, dayRows + 1));
        int letters = sentences.stream().mapToInt(text -> text.length() + 4).sum();
        double around = TOP_MM + (rail.rows() + 0.5 + letters / (double) PAGE_LETTERS) * LINE_MM + below;
        // A picture is not broken, so it leaves the foot of a full side empty.
        return new SheetRoom(size, sides * SIDE_MM - (sides - 1) * size.leastMm - size.type * around);
    }

    /** The lines that so many letters take up. */
    int lines(int letters) {
        return (letters + size.letters - 1) / size.letters;
    }

    /** Whether pictures with so many lines below their settings fit. */
    boolean holds(List<Integer> lines) {
        return lines.stream().mapToDouble(count -> Math.max(size.leastMm, size.type * (HEAD_MM + count * LINE_MM))).sum() <= shotsMm;
    }
}
