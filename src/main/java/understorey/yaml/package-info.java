/**
 * Text with places. A file becomes text ({@link understorey.yaml.TextFile TextFile}), and the text becomes a tree whose nodes know
 * their places ({@link understorey.yaml.TreeReader TreeReader}, {@link understorey.yaml.Node Node}).
 * {@link understorey.yaml.Fields Fields} takes values out of a block of it, and a {@link understorey.yaml.Finding Finding} says
 * what is wrong, where, and how to fix it.
 *
 * <p>Units are read here only: values come out in metres, millimetres, grams, degrees and shares, as the methods are named. Units
 * of length and mass are those of the international yard and pound agreement of 1959 and of the SI brochure (9th edition, 2019),
 * exact by definition.
 */
@NullMarked
package understorey.yaml;

import org.jspecify.annotations.NullMarked;
