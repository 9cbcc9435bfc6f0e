/**
 * The day on the ground: {@link understorey.outing.Outing Outing}, who is where at what minute, in the order
 * in which the author wrote the pictures down; and {@link understorey.outing.Story Story}, the order in which
 * they are told. Walks are minutes, from the author's own timing or from {@link understorey.outing.Walking
 * Walking}.
 */
package understorey.outing;
