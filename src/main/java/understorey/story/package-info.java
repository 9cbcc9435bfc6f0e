/** The order of the pictures in the story: {@link understorey.story.Story Story}, with its gaps and repetitions. */
@NullMarked
package understorey.story;

import org.jspecify.annotations.NullMarked;
