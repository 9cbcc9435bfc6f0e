package understorey.plan;

import java.time.LocalTime;

/** Opening hours, local time. */
public record Opening(LocalTime from, LocalTime to) {
}
