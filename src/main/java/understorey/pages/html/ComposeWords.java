package understorey.pages.html;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.plan.Compose;

/** The author's words for what goes where in a picture. */
final class ComposeWords {

    private ComposeWords() {
    }

    /** One line; null where the author says nothing. */
    static @Nullable String of(@Nullable Compose compose) {
        if (compose == null) {
            return null;
        }
        List<String> parts = new ArrayList<>();
        add(parts, "foreground: ", compose.foreground());
        add(parts, "middle ground: ", compose.middle());
        add(parts, "background: ", compose.background());
        add(parts, "lead in: ", compose.leadIn());
        add(parts, "keep out: ", compose.keepOut().isEmpty() ? null : String.join(", ", compose.keepOut()));
        return parts.isEmpty() ? null : String.join("; ", parts);
    }

    private static void add(List<String> parts, String label, @Nullable String words) {
        if (words != null && !words.isBlank()) {
            parts.add(label + words.strip());
        }
    }
}
