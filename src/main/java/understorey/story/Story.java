package understorey.story;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import understorey.advice.Advice;
import understorey.advice.StoryAdvice;
import understorey.kit.Intent;
import understorey.kit.ShotFit;
import understorey.plan.Role;

/**
 * The pictures in the order of the story: by role, extras last. Within a role the picture comes first that is least like
 * the one before it; ties keep the order of the file.
 *
 * @param sequence of all pictures
 * @param gaps     roles without a picture, and looks that come more than twice
 */
public record Story(List<Intent> sequence, List<Advice> gaps) {

    /** The story of some pictures, each with its lenses. */
    public static Story of(List<ShotFit> fits) {
        List<Intent> intents = fits.stream().map(ShotFit::intent).toList();
        List<Look> looks = fits.stream().map(fit -> Look.of(fit.intent(), fit.best())).toList();
        List<Advice> gaps = new ArrayList<>();
        for (Role role : Role.values()) {
            if (role != Role.EXTRA && !played(role, intents)) {
                gaps.add(new StoryAdvice.RoleMissing(role));
            }
        }
        gaps.addAll(Variety.of(intents, looks, views(fits)));
        return new Story(sequence(intents, looks).stream().map(intents::get).toList(), List.copyOf(gaps));
    }

    /** The views that the bag has lenses for; all of them for a bag without a lens. */
    private static Set<Look.View> views(List<ShotFit> fits) {
        Set<Look.View> views = fits.stream().flatMap(fit -> fit.tried().stream()).flatMap(Look::views).collect(Collectors.toSet());
        return views.isEmpty() ? Set.of(Look.View.values()) : views;
    }

    private static boolean played(Role role, List<Intent> intents) {
        return intents.stream().anyMatch(intent -> intent.role() == role);
    }

    private static List<Integer> sequence(List<Intent> intents, List<Look> looks) {
        List<Integer> told = new ArrayList<>();
        for (Role role : Role.values()) {
            List<Integer> left = new ArrayList<>();
            for (int i = 0; i < intents.size(); i++) {
                if (intents.get(i).role() == role) {
                    left.add(i);
                }
            }
            while (!left.isEmpty()) {
                Look before = told.isEmpty() ? null : looks.get(told.get(told.size() - 1));
                told.add(left.remove(before == null ? 0 : leastLike(before, left, looks)));
            }
        }
        return told;
    }

    private static int leastLike(Look before, List<Integer> left, List<Look> looks) {
        int best = 0;
        for (int i = 1; i < left.size(); i++) {
            best = looks.get(left.get(i)).unlike(before) > looks.get(left.get(best)).unlike(before) ? i : best;
        }
        return best;
    }
}
