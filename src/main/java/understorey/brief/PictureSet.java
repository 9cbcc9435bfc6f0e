package understorey.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * Some of a trip's pictures.
 *
 * @param numbers in the author's order
 * @param share   of all pictures, by priority, 0 to 1
 */
record PictureSet(List<Integer> numbers, double share) {

    static PictureSet of(Brief brief, Predicate<TimedShot> which) {
        List<Integer> numbers = new ArrayList<>();
        double chosen = 0;
        double all = 0;
        for (TimedShot shot : brief.timed()) {
            all += shot.intent().priority();
            if (which.test(shot)) {
                chosen += shot.intent().priority();
                numbers.add(shot.number());
            }
        }
        return new PictureSet(List.copyOf(numbers), numbers.isEmpty() ? 0 : chosen / all);
    }

    boolean isEmpty() {
        return numbers.isEmpty();
    }

    int count() {
        return numbers.size();
    }
}
