/**
 * The day on the ground: {@link understorey.outing.RunningOrder RunningOrder} finds which picture is taken when and gives an
 * {@link understorey.outing.Outing Outing}, who is where at what minute; {@link understorey.outing.Alternative Alternative}
 * is what changes if the day does; {@link understorey.outing.Safety Safety} gets one out of the wood in time; and
 * {@link understorey.outing.Story Story} is the order in which the pictures are told. Times are whole minutes, starts lie on a
 * grid of five. Walks are the author's own timing or published functions of the slope (Tobler 1993 and others, see
 * {@link understorey.outing.Pace Pace}).
 */
package understorey.outing;
