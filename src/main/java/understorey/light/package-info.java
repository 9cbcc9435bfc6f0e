/**
 * Light at a time and place: illuminance of sun, sky, twilight and moon, light through a canopy, exposure values and colour;
 * the side of the light, the effect of a polariser, the light that an author wishes for. {@link understorey.light.LightAt} is
 * the place to start for one instant, {@link understorey.light.Outlook} for the wishes of a picture over a day.
 *
 * <p>Illuminance is lux, exposure value is for ISO 100, altitudes are degrees without refraction, cloud is okta
 * (0 to 8), plant area is square metres per square metre of ground. Sources: IES Calculation Procedures Committee,
 * <em>Recommended Practice for the Calculation of Daylight Availability</em>, J. IES 13(4), 1984, 381-392; Seidelmann
 * (ed.), <em>Explanatory Supplement to the Astronomical Almanac</em>; ISO 2720:1974; Campbell and Norman, <em>An
 * Introduction to Environmental Biophysics</em>, 1998, ch. 15; Lang and others, <em>Horizontal Visibility in Forests</em>,
 * Remote Sensing 13 (2021) 4455, for low sun between trunks; Malick and others 1979 (from memory) for sun between clouds.
 * Figures of light are averages of a kind of sky; a single moment may be twice or half as bright. The colour of daylight is here, beside the white balance made from it, because it
 * depends on the sun and only light uses it.
 */
@NullMarked
package understorey.light;

import org.jspecify.annotations.NullMarked;
