/**
 * Light and weather at a time and place: illuminance of sun, sky, twilight and moon, light through a canopy, exposure values
 * and colour; the side of the light, the effect of a polariser, the light that an author wishes for; the forecast at a
 * moment, mist at dawn, drops after rain and of dew.
 *
 * <p>Illuminance is lux, exposure value is for ISO 100, altitudes are degrees without refraction, cloud is okta
 * (0 to 8), plant area is square metres per square metre of ground. Wind is m/s at 10 m, air °C, humidity 0 to 1,
 * vapour pressure hPa, rain and films of water mm. Sources: IES Calculation Procedures Committee,
 * <em>Recommended Practice for the Calculation of Daylight Availability</em>, J. IES 13(4), 1984, 381-392; Seidelmann
 * (ed.), <em>Explanatory Supplement to the Astronomical Almanac</em>; ISO 2720:1974; Campbell and Norman, <em>An
 * Introduction to Environmental Biophysics</em>, 1998, ch. 15; Alduchov and Eskridge 1996, J. Appl. Meteorol. 35: 601
 * (dew point); the Beaufort limits of the World Meteorological Organization; 2WW/TN-79/008 (Fog Stability Index) and
 * FAA AC 00-6A (mist by its spread); Penman 1948, from memory (drying). Figures of light are averages of a kind of
 * sky; a single moment may be twice or half as bright.
 */
@NullMarked
package understorey.light;

import org.jspecify.annotations.NullMarked;
