/**
 * The running order: which picture is taken when. Start at {@link understorey.order.RunningOrder RunningOrder}, the only way into
 * the search; {@link understorey.order.Alternative Alternative} is what changes if the day turns out different.
 *
 * <p><b>Problem.</b> Pictures ({@code Task}) have a duration, a place, a worth for each start on a grid of five minutes, and
 * sometimes a fixed start or a picture that must come first. A plan starts and ends at the base within the hours of the visit.
 * Plans are compared by the number of musts, then by the sum of value × priority less the price of each idle minute and each move, the
 * number of pictures, the sum of priorities, and the time of being back.
 *
 * <p><b>Method.</b> Up to twelve pictures: dynamic programming over subsets, exact ({@code BranchAndBound}). More: a plan by
 * local search ({@code LocalSearch}), then the same program with a Lagrangian bound ({@code UpperBound}) that drops what cannot
 * beat it. Last, waits that do not pay are removed ({@code LeftShift}), for less worth than the wait costs or than shows.
 *
 * <p><b>State.</b> The set taken, the last picture, and its start; {@code BestByStart} holds the best sum for each start.
 *
 * <p><b>Invariants</b>, held by tests against every order of small visits: equal to brute force to twelve pictures; never worse
 * than the author's own order; one optional picture more never lowers the sum, unless the search was cut short; the same plan on
 * every machine, because {@code Budget} counts steps and bytes and not time.
 *
 * <p><b>Limits.</b> Bits of a {@code long} hold 62 pictures; the searches stop after 500 million states or 120 MB.
 *
 * <p>Times are whole minutes from the start of the local day.
 */
@NullMarked
package understorey.order;

import org.jspecify.annotations.NullMarked;
