/**
 * Single values: numbers, quantities with units, ranges, bearings, dates, words for constants. Units are read here only:
 * values come out in metres, millimetres, grams, degrees and shares, as the methods are named. Units of length and mass are
 * those of the international yard and pound agreement of 1959 and of the SI brochure (9th edition, 2019), exact by definition.
 */
@NullMarked
package understorey.yaml.value;

import org.jspecify.annotations.NullMarked;
