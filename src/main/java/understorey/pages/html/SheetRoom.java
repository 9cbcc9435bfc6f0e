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
        LARGE(1.12, 38.5, 52, 14),
        MIDDLE(1, 28.9, 68, 14),
        /** Smaller sketches, where there is no room for others. */
        SMALL(1, 25.2, 68, 17);

        private final double type;
        private final double leastMm;
        private final int letters;
        private final int whenLetters;

        /**
         * One size.
         *
         * @param type    how much larger than the sheet's own
         * @param leastMm height of a picture with the highest sketch
         * @param letters in a line beside a sketch
         * @param whenLetters in a line below the time
         */
        Size(double type, double leastMm, int letters, int whenLetters) {
            this.type = type;
            this.leastMm = leastMm;
            this.letters = letters;
            this.whenLetters = whenLetters;
        }
    }

    /** Letter, 279.4 mm, less the margins above and below, and a little for fonts that run wide. */
    private static final double SIDE_MM = 264;
    private static final int SHOTS_A_SIDE = 6;
    /** Title, hours and blocks of the rail, the line above the pictures, and the rules between. */
    private static final double TOP_MM = 25;
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
    /** Time and rule of a picture. */
    private static final double TIME_MM = 7.4;
    /** Letters of title, day and place that fit on one line: those of the title are twice as wide. */
    private static final int TITLE_LETTERS = 104;

    /** The room beside all else that the sheet says. */
    static SheetRoom of(Size size, int shots, String title, String dayAndPlace, SheetRail rail, List<String> bag, int dayRows, List<String> sentences) {
        int sides = Math.max(1, (shots + SHOTS_A_SIDE - 1) / SHOTS_A_SIDE);
        int bagRows = (bag.stream().mapToInt(name -> name.length() > BAG_LETTERS ? 2 : 1).sum() + 1) / 2;
        double below = Math.max(HOME_MM, HEADING_MM + ROW_MM * Math.max(bagRows, dayRows + 1));
        int letters = sentences.stream().mapToInt(text -> text.length() + 4).sum();
        double titleLines = 2 * title.length() + dayAndPlace.length() > TITLE_LETTERS ? 1 : 0;
        double around = TOP_MM + (titleLines + rail.rows() + 0.5 + letters / (double) PAGE_LETTERS) * LINE_MM + below;
        // A picture is not broken, so it leaves the foot of a full side empty.
        return new SheetRoom(size, sides * SIDE_MM - (sides - 1) * size.leastMm - size.type * around);
    }

    /** The lines that so many letters take up. */
    int lines(int letters) {
        return (letters + size.letters - 1) / size.letters;
    }

    /** The height of a picture with so many lines below its settings. */
    double heightMm(int lines, String spot, String walkAndWait) {
        int whenLines = (spot.length() + size.whenLetters - 1) / size.whenLetters + (walkAndWait.length() + size.whenLetters - 1) / size.whenLetters;
        return Math.max(size.leastMm, size.type * Math.max(HEAD_MM + lines * LINE_MM, TIME_MM + whenLines * LINE_MM));
    }
}
