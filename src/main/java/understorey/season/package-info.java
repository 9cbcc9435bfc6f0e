/**
 * When a subject flowers, and on which day to go. {@link understorey.season.FloweringWindow FloweringWindow} is the
 * answer for a site and a season, by the best method that the data allow; {@link understorey.season.DayRanking
 * DayRanking} weighs days by flowers, light, hours, weather and the author's wishes. {@link understorey.season.Flowering
 * Flowering} knows the catalogue's months alone, which are those of the home range and wide; the
 * models in {@code season.model} predict a day from past years.
 *
 * <p>Days are counted on the season's own scale, temperatures are daily means in °C, sums of warmth °C·d. Sources
 * are with each formula; the models are compared with open flowering data of Tullgarn, Kyoto and Harvard Forest.
 */
@NullMarked
package understorey.season;

import org.jspecify.annotations.NullMarked;
