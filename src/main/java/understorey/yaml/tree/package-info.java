/**
 * A file as a tree whose nodes know their places. {@link understorey.yaml.tree.TextFile TextFile} reads the text,
 * {@link understorey.yaml.tree.TreeReader TreeReader} makes {@link understorey.yaml.tree.Node Node}s of YAML and
 * {@link understorey.yaml.tree.Csv Csv} of a table. {@link understorey.yaml.tree.Locator Locator} finds a place by its key path.
 */
@NullMarked
package understorey.yaml.tree;

import org.jspecify.annotations.NullMarked;
