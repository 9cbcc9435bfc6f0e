package understorey.plan;

import java.time.Duration;

/** A walk between two spots with the author's time, valid in both directions. */
public record Walk(String from, String to, Duration duration) {

    /** True if this walk joins the two spots, in either direction. */
    public boolean joins(String a, String b) {
        return from.equals(a) && to.equals(b) || from.equals(b) && to.equals(a);
    }
}
