/**
 * Reduces a plan to what its audience may see. {@link understorey.share.Sharing Sharing} does this before anything is
 * computed, so that no later package has the rest.
 *
 * <p>Positions are generalised, never shifted at random: A. D. Chapman, <cite>Current Best Practices for
 * Generalizing Sensitive Species Occurrence Data</cite>, GBIF, 2020, Table 7, categories 2 (0.1°) and 3 (0.01°).
 * Rounding is decimal, half away from zero.
 */
package understorey.share;
