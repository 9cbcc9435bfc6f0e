/**
 * Binds the author's files: a tree with places ({@link understorey.yaml}) becomes {@link understorey.plan} records, and each
 * fault becomes a finding with its place.
 *
 * <p>Start at {@link understorey.reading.PlansReader PlansReader}. It reads sites, bags and trips, each in a
 * room of its own: one small reader per record reads the tree through {@link understorey.yaml.Fields Fields}, which reports unknown
 * keys. No reader throws for a mistake of the author's: it adds a
 * finding and goes on, so that one run reports all faults. The catalogue of subjects is a table of facts that names its sources
 * row by row.
 */
@NullMarked
package understorey.reading;

import org.jspecify.annotations.NullMarked;
