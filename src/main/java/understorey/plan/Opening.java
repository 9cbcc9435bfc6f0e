package understorey.plan;

import java.time.LocalTime;

/** When the gates are open, local time. */
public record Opening(LocalTime from, LocalTime to) {
}
