/**
 * What an author may write: the JSON Schema (draft 2020-12) of trips, sites and bags, kept as YAML in {@code plan-files.yaml}.
 *
 * <p>Start at {@link understorey.schema.PlanFiles PlanFiles}. The schema is the one source of descriptions, units, defaults, allowed
 * words and examples: the command {@code schema}, the reference of the format, the starters and the examples in findings are made
 * from it. The readers decide; tests hold schema and readers to each other.
 */
@NullMarked
package understorey.schema;

import org.jspecify.annotations.NullMarked;
