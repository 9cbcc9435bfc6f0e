/**
 * Predicts the day of full flower from past years: {@link understorey.season.model.PlainMean PlainMean},
 * {@link understorey.season.model.WindowModel WindowModel} and {@link understorey.season.model.ThermalTime ThermalTime}.
 * {@link understorey.season.model.SpringModels SpringModels} chooses between them by their error on years left out.
 *
 * <p>Days are counted on a {@link understorey.season.model.SeasonScale SeasonScale}, temperatures are daily means in °C, sums of
 * warmth °C·d. A {@link understorey.season.model.Prediction Prediction} is a day with its error;
 * {@link understorey.season.model.PeakChances PeakChances} spreads it over the days and takes in sightings.
 */
@NullMarked
package understorey.season.model;

import org.jspecify.annotations.NullMarked;
