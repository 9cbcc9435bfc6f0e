package understorey.plan;

import java.time.LocalTime;

/** Person to check in with, and the check-in time. Never on a public page. */
public record Contact(String tell, LocalTime backBy) {
}
