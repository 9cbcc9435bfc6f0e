package understorey.plan;

import java.time.LocalDate;
import java.util.List;

/** The day of a trip, or the days to choose from. */
public sealed interface When {

    /** Each of the days, in order. */
    List<LocalDate> days();

    record On(LocalDate date) implements When {
        @Override
        public List<LocalDate> days() {
            return List.of(date);
        }
    }

    /** Both ends included. */
    record Between(LocalDate from, LocalDate to) implements When {
        @Override
        public List<LocalDate> days() {
            return from.datesUntil(to.plusDays(1)).toList();
        }
    }

    /** A few days picked by hand, in order, each once. */
    record OneOf(List<LocalDate> days) implements When {
    }
}
