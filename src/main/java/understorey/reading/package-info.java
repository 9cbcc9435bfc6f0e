/**
 * Reads the author's files: YAML becomes {@link understorey.plan} records, and each fault becomes a
 * {@link understorey.reading.Finding Finding} with its place.
 *
 * <p>Start at {@link understorey.reading.PlansReader PlansReader}. A file becomes text
 * ({@code TextFile}), and the text becomes a tree whose nodes know their places ({@code TreeReader},
 * {@code Node}). One small reader per record reads the tree through {@code Fields}, which reports unknown
 * keys. No reader throws for a mistake of the author's: it adds a finding and goes on, so that one run
 * reports all faults.
 *
 * <p>Units are read here only: the records have metres, millimetres, grams, degrees and shares, as the
 * components are named. Units of length and mass are those of the international yard and pound
 * agreement of 1959 and of the SI brochure (9th edition, 2019), exact by definition. The catalogue of
 * subjects is a table of facts that names its sources row by row.
 */
package understorey.reading;
