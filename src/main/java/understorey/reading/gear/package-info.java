/**
 * Reads bags. Start at {@link understorey.reading.gear.BagReader BagReader}.
 */
@NullMarked
package understorey.reading.gear;

import org.jspecify.annotations.NullMarked;
