/**
 * Weather at a time and place: the forecast between its rows, the force of the wind, the damp of the air, mist at dawn, drops
 * after rain and of dew. {@link understorey.weather.Weather} is the place to start; it answers for one instant.
 *
 * <p>Cloud is okta (0 to 8), wind is m/s at 10 m, air °C, humidity 0 to 1, vapour pressure hPa, rain and films of water mm. An
 * author's forecast is taken as it is; nothing here forecasts weather. Sources: Alduchov and Eskridge 1996, J. Appl.
 * Meteorol. 35: 601 (dew point); the Beaufort limits of the World Meteorological Organization; 2WW/TN-79/008 (Fog Stability
 * Index) and FAA AC 00-6A (mist by its spread); Penman 1948, from memory (drying).
 */
@NullMarked
package understorey.weather;

import org.jspecify.annotations.NullMarked;
