/**
 * Text with places. A file becomes a tree ({@link understorey.yaml.tree}). {@link understorey.yaml.Fields Fields} takes values
 * ({@link understorey.yaml.value}) out of a block of it. A finding ({@link understorey.yaml.finding}) says what is wrong, where,
 * and how to fix it.
 */
@NullMarked
package understorey.yaml;

import org.jspecify.annotations.NullMarked;
