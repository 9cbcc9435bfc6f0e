package understorey.brief;

import understorey.reason.Reason;

/** Something about a plan that its author should know before going. */
public record Finding(Level level, Reason reason) {

    public enum Level { NOTE, WARNING }
}
