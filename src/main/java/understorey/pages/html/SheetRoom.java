package understorey.pages.html;

import java.util.stream.Stream;

/**
 * The room for pictures on the field sheet, so that six fit on one side of US Letter, the shorter of the two papers.
 * All heights are those of the print style, in millimetres.
 *
 * @param shotsMm for all pictures together
 */
record SheetRoom(Size size, double shotsMm) {

    /** How large pictures are printed; sketches are 40 mm wide or more. */
    enum Size {
        /** Larger type and sketches. */
        LARGE(1.12, 38.5, 52, 14),
        MIDDLE(1, 28.9, 68, 14),
        /** The name beside the settings where it fits there. */
        DENSE(1, 27.9, 71, 16);

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
    /** The line of when to be home, and the rules around it. */
    private static final double HOME_MM = 9;
    /** Three lines for notes. */
    private static final double NOTES_MM = 17;
    private static final double ROW_MM = 4.7;
    private static final double LINE_MM = 4.1;
    private static final int PAGE_LETTERS = 114;
    /** Of the bag's heading, and of the box and the space of each thing in it. */
    private static final int BAG_LETTERS = 16;
    private static final int BOX_LETTERS = 5;
    /** Name, settings and rule of a picture. */
    private static final double HEAD_MM = 13.2;
    /** Its name in a line of its own. */
    private static final double NAME_MM = 4.9;
    /** Letters of settings and name that share a line: those of the settings are a sixth wider. */
    private static final int HEAD_LETTERS = 52;
    /** Time and rule of a picture. */
    private static final double TIME_MM = 7.4;
    /** Letters of title, day and place that fit on one line: those of the title are twice as wide. */
    private static final int TITLE_LETTERS = 104;

    /** The room beside all else that the sheet says. */
    static SheetRoom of(Size size, SheetPage page) {
        int shots = page.shots().size();
        int sides = Math.max(1, (shots + SHOTS_A_SIDE - 1) / SHOTS_A_SIDE);
        int bag = page.plan().kit().take().stream().mapToInt(thing -> thing.length() + BOX_LETTERS).sum() + BAG_LETTERS;
        double days = page.days().lines().isEmpty() ? 0 : ROW_MM * (page.days().lines().size() + 1);
        double below = Math.ceil(bag / (double) PAGE_LETTERS) * ROW_MM + HOME_MM
                + (shots > SHOTS_A_SIDE ? days + NOTES_MM : Math.max(days, NOTES_MM));
        int letters = Stream.of(Stream.ofNullable(page.plan().hopeless()), page.leftOut().stream(), page.cautions().stream()).flatMap(texts -> texts).mapToInt(text -> text.length() + 4).sum();
        PlanView plan = page.plan();
        double titleLines = 2 * plan.title().length() + plan.date().length() + plan.place().name().length() > TITLE_LETTERS ? 1 : 0;
        double around = TOP_MM + (titleLines + page.rail().rows() + 0.5 + letters / (double) PAGE_LETTERS) * LINE_MM + below;
        // A picture is not broken, so it leaves the foot of a full side empty.
        return new SheetRoom(size, sides * SIDE_MM - (sides - 1) * size.leastMm - size.type * around);
    }

    /** The lines that so many letters take up. */
    int lines(int letters) {
        return (letters + size.letters - 1) / size.letters;
    }

    /** The height of a picture with so many lines below its settings. */
    double heightMm(int lines, String name, String settings, String spot, String walkAndWait) {
        int whenLines = (spot.length() + size.whenLetters - 1) / size.whenLetters + (walkAndWait.length() + size.whenLetters - 1) / size.whenLetters;
        double head = size == Size.DENSE && name.length() + 7 * settings.length() / 6 <= HEAD_LETTERS ? HEAD_MM - NAME_MM : HEAD_MM;
        return Math.max(size.leastMm, size.type * Math.max(head + lines * LINE_MM, TIME_MM + whenLines * LINE_MM));
    }
}
