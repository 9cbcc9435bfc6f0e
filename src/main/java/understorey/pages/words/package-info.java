/**
 * How a figure, a date, an enum constant or a reason reads. {@link understorey.pages.words.Words Words} gives each figure its
 * unit and its rounding, {@link understorey.pages.words.Sentences Sentences} finds the sentence for a reason in the templates, and
 * {@link understorey.pages.words.Figures Figures} rounds for programs. Figures enter in the units of the records: metres,
 * millimetres, seconds, degrees, stops, grams, shares from 0 to 1.
 */
@NullMarked
package understorey.pages.words;

import org.jspecify.annotations.NullMarked;
