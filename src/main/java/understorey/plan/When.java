package understorey.plan;

import java.time.LocalDate;
import java.util.List;

/** Date of a trip, or the dates to choose from. */
public sealed interface When {

    /** All dates, in order. */
    List<LocalDate> days();

    record On(LocalDate date) implements When {
        @Override
        public List<LocalDate> days() {
            return List.of(date);
        }
    }

    /** A range of dates, both ends included. */
    record Between(LocalDate from, LocalDate to) implements When {
        @Override
        public List<LocalDate> days() {
            return from.datesUntil(to.plusDays(1)).toList();
        }
    }

    /** Single dates, in order, each once. */
    record OneOf(List<LocalDate> days) implements When {
    }
}
