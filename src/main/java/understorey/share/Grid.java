package understorey.share;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;
import understorey.plan.Position;
import understorey.plan.Share;

/** Precision of a published position, in decimals of a degree (Chapman 2020, Table 7). */
enum Grid {
    /** The position as the author wrote it. */
    EXACT(Integer.MAX_VALUE),
    /** Category 3, medium sensitivity: 0.01°, cells of about 1.1 km by 0.7 km at 52° north. */
    HUNDREDTH(2),
    /** Category 2, high sensitivity: 0.1°, cells of about 11 km by 7 km at 52° north. */
    TENTH(1),
    /** A whole degree, 111 km by 69 km at 52° north: common practice, no source. */
    DEGREE(0);

    /** Step of heights with a generalised position, metres; an exact height would reveal a contour. */
    private static final int HUNDREDS = -2;

    private final int decimals;

    Grid(int decimals) {
        this.decimals = decimals;
    }

    /**
     * The grid that an audience gets.
     *
     * @param spared a sensitive site on a public page
     */
    static Grid of(Share.Precision precision, boolean spared) {
        return switch (precision) {
            case EXACT -> EXACT;
            case COARSE -> spared ? TENTH : HUNDREDTH;
            case HIDDEN -> spared ? DEGREE : TENTH;
        };
    }

    /** The centre of the cell that holds a position. */
    Position round(Position position) {
        return this == EXACT ? position
                : new Position(round(position.latitude(), decimals), round(position.longitude(), decimals));
    }

    @Nullable Double elevationM(@Nullable Double elevationM) {
        return this == EXACT || elevationM == null ? elevationM : Double.valueOf(round(elevationM, HUNDREDS));
    }

    /** Rounds decimally, half away from zero. Binary rounding would use 0.1499… for 0.15. */
    private static double round(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).doubleValue();
    }
}
