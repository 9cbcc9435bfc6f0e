package understorey.plan;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Who will see the pages; null for audience or position means private and exact.
 *
 * @param reviewed words near a hidden name that the author has looked at and lets through
 */
public record Share(@Nullable Audience audience, @Nullable Precision position, List<String> reviewed) {

    /** The author alone, the companions, or everyone. */
    public enum Audience { PRIVATE, PARTY, PUBLIC }

    public enum Precision { EXACT, COARSE, HIDDEN }

    /** Nothing reviewed. */
    public Share(@Nullable Audience audience, @Nullable Precision position) {
        this(audience, position, List.of());
    }
}
