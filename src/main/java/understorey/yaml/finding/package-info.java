/**
 * What is wrong with a file. A {@link understorey.yaml.finding.Source Source} is its text, a {@link understorey.yaml.finding.Pos Pos}
 * a place in it. {@link understorey.yaml.finding.Findings Findings} takes the {@link understorey.yaml.finding.Finding Finding}s of one
 * file, each with the line that it is about and a way to fix it.
 */
@NullMarked
package understorey.yaml.finding;

import org.jspecify.annotations.NullMarked;
