/**
 * When a subject flowers: {@link understorey.season.Flowering Flowering}, so far from the catalogue's
 * months alone, which are those of the home range and wide.
 */
package understorey.season;
