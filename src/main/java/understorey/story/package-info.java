/** The order in which the pictures are told: {@link understorey.story.Story Story}, with its gaps and repetitions. */
package understorey.story;
