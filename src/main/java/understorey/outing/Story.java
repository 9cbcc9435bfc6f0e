package understorey.outing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import understorey.kit.Intent;
import understorey.plan.Role;
import understorey.reason.Reason;

/**
 * The pictures in the order in which they are told: from the wide floor to one flower, extras last.
 *
 * @param sequence pictures of one role in the author's order
 * @param gaps     roles that no picture plays
 */
public record Story(List<Intent> sequence, List<Reason> gaps) {

    public static Story of(List<Intent> intents) {
        List<Intent> sequence = new ArrayList<>(intents);
        sequence.sort(Comparator.comparing(Intent::role));
        List<Reason> gaps = new ArrayList<>();
        for (Role role : Role.values()) {
            if (role != Role.EXTRA && intents.stream().noneMatch(intent -> intent.role() == role)) {
                gaps.add(Reason.of(OutingReason.ROLE_MISSING).with("role", role.name().toLowerCase(Locale.ROOT)));
            }
        }
        return new Story(List.copyOf(sequence), List.copyOf(gaps));
    }
}
