package understorey.plan;

import java.time.LocalDate;

/** The day of a trip, or the days to choose from. */
public sealed interface When {

    record On(LocalDate date) implements When {
    }

    /** Both ends included. */
    record Between(LocalDate from, LocalDate to) implements When {
    }
}
