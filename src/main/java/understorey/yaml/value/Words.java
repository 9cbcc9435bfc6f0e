package understorey.yaml.value;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import understorey.yaml.tree.Spelling;

/** Words for constants, as an author writes them. */
public final class Words {

    /** The trade's other names for a light. */
    private static final Map<String, String> ALSO = Map.of("golden hour", "low-sun", "golden-hour", "low-sun",
            "blue hour", "twilight", "blue-hour", "twilight");

    private Words() {
    }

    /**
     * Word for a constant: its own text, for example {@code ground plate}, or its name in small letters and hyphens, for
     * example {@code low-sun}.
     */
    public static String of(Enum<?> constant) {
        String own = constant.toString();
        return own.equals(constant.name()) ? own.toLowerCase(Locale.ROOT).replace('_', '-') : own;
    }

    public static List<String> of(Enum<?>[] constants) {
        return Arrays.stream(constants).map(constant -> of(constant)).toList();
    }

    /** Constant for a word, in capitals or small letters and in either spelling; null if there is none. */
    public static <E extends Enum<E>> @Nullable E find(E[] constants, String written) {
        String small = written.toLowerCase(Locale.ROOT);
        String word = ALSO.getOrDefault(small, Spelling.british(small));
        return Arrays.stream(constants).filter(constant -> of(constant).equalsIgnoreCase(word)).findFirst().orElse(null);
    }
}
