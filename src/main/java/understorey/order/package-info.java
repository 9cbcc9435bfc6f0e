/**
 * The order of the day: {@link understorey.order.RunningOrder RunningOrder} finds which picture is taken when, minute by minute;
 * {@link understorey.order.Alternative Alternative} is what changes if the day turns out different. Times are whole minutes,
 * starts are on a grid of 5 minutes.
 */
@NullMarked
package understorey.order;

import org.jspecify.annotations.NullMarked;
