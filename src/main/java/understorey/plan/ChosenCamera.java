package understorey.plan;

import org.jspecify.annotations.Nullable;

/**
 * The camera that the author decided on for a shot, by name.
 *
 * @param body null to leave it to the plan
 * @param lens null to leave it to the plan
 */
public record ChosenCamera(@Nullable String body, @Nullable String lens) {

    /** Body and lens are left to the plan. */
    public static final ChosenCamera NONE = new ChosenCamera(null, null);

    /** True for a camera of that body and lens. */
    public boolean is(Body of, Lens with) {
        return (body == null || body.equals(of.name())) && (lens == null || lens.equals(with.name()));
    }
}
