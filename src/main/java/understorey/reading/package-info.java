/**
 * What the author's files say: YAML in, {@link understorey.plan} records out, and a
 * {@link understorey.reading.Finding Finding} with its place for each thing that is not right.
 *
 * <p>Start at {@link understorey.reading.PlansReader PlansReader}. A file becomes text
 * ({@code TextFile}), the text a tree whose nodes know where they stand ({@code TreeReader},
 * {@code Node}), and one small reader a record takes the tree apart through {@code Fields}, which
 * notices every key that nobody asked for. No reader throws for a mistake of the author's: it adds a
 * finding and goes on, so that all faults come in one run.
 *
 * <p>Texts with units end here: what leaves is metres, millimetres, grams, degrees and shares, as the
 * components are named. Units of length and mass are those of the international yard and pound
 * agreement of 1959 and of the SI brochure (9th edition, 2019), exact by definition. The catalogue of
 * subjects is a table of facts that names its sources row by row.
 */
package understorey.reading;
