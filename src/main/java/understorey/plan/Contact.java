package understorey.plan;

import java.time.LocalTime;

/** Who knows where the author is. Never on a public page. */
public record Contact(String tell, LocalTime backBy) {
}
