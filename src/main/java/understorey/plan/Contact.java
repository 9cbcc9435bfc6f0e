package understorey.plan;

import java.time.LocalTime;
import org.jspecify.annotations.Nullable;

/** Person to check in with, and the check-in time. Never on a public page. */
public record Contact(String tell, @Nullable LocalTime backBy) {
}
