/**
 * How much light there is: illuminance of sun, sky and twilight from the sun's altitude and the clouds, what a
 * canopy leaves of it, exposure values and colour temperature.
 *
 * <p>Illuminance is lux, exposure value is for ISO 100, altitudes are degrees without refraction, cloud is okta
 * (0 to 8), plant area is square metres over a square metre of floor. Sources: IES Calculation Procedures Committee,
 * <em>Recommended Practice for the Calculation of Daylight Availability</em>, J. IES 13(4), 1984, 381-392; Seidelmann
 * (ed.), <em>Explanatory Supplement to the Astronomical Almanac</em>; ISO 2720:1974; Campbell and Norman, <em>An
 * Introduction to Environmental Biophysics</em>, 1998, ch. 15. Figures are averages of a kind of sky; a single
 * moment may be twice or half as bright.
 */
package understorey.light;
