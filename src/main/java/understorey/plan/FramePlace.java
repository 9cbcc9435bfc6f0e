package understorey.plan;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * A corner or an edge of a picture.
 *
 * @param right −1 on the left, 1 on the right, 0 between
 * @param down  −1 at the top, 1 at the bottom, 0 between; never 0 with {@code right}
 */
public record FramePlace(int right, int down) {

    private static final List<String> TOP = List.of("upper", "top");
    private static final List<String> BOTTOM = List.of("lower", "bottom");

    /** The place that an author's words name, such as "the fallen ash at the left edge"; null where they name none. */
    public static @Nullable FramePlace in(String words) {
        List<String> plain = List.of(words.toLowerCase(Locale.ROOT).split("[^a-z]+"));
        int right = plain.contains("left") == plain.contains("right") ? 0 : plain.contains("left") ? -1 : 1;
        boolean top = plain.stream().anyMatch(TOP::contains);
        boolean bottom = plain.stream().anyMatch(BOTTOM::contains);
        int down = top == bottom ? 0 : top ? -1 : 1;
        return right == 0 && down == 0 ? null : new FramePlace(right, down);
    }
}
