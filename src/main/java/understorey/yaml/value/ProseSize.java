package understorey.yaml.value;

import org.jspecify.annotations.Nullable;
import understorey.advice.ProseLimit;

/** What a finding says of free text that passes a limit. */
public final class ProseSize {

    private ProseSize() {
    }

    /** What is wrong, after the name of the text: "is longer than 20 000 characters"; null for nothing. */
    public static @Nullable String fault(String text) {
        return ProseLimit.passed(text).map(ProseSize::says).orElse(null);
    }

    private static String says(ProseLimit limit) {
        return switch (limit) {
            case LENGTH -> "is longer than 20 000 characters";
            case LINK_REFERENCES -> "uses long link references so often that its page would grow by more than 200 kB";
            case TABLE_CELLS -> "holds a table of more than 10 000 cells";
            case NESTING -> "has more than 50 quotes or lists inside each other";
            case MARKS -> "has more than 1000 of the marks * _ [ ] ` < and &";
            case LINES -> "has more than 2000 lines";
            case CODE -> "has more than 300 of the mark `";
            case LONG_MARK -> "has a tag, a link title or a ruled line that is too long";
        };
    }
}
