package understorey.plan;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the author wants where in a picture, in plain words.
 *
 * @param foreground nearest part
 * @param middle     middle ground
 * @param background farthest part
 * @param leadIn     line that leads the eye in, and where it begins
 * @param keepOut    things that must not be in the picture
 */
public record Compose(@Nullable String foreground, @Nullable String middle, @Nullable String background, @Nullable String leadIn,
                      List<String> keepOut) {
}
