/**
 * Sun and moon at a place on a date: events of the local day, positions by time step, and the skyline.
 *
 * <p>Angles are degrees, bearings count from true north clockwise, times are exact to their seconds and are in the
 * site's zone. A sea-level flat horizon is assumed; the elevation of a place is not used. Positions
 * come from commons-suncalc (after Montenbruck and Pfleger, <em>Astronomy on the Personal Computer</em>), within
 * about 0.02° for the sun and 0.1° for the moon.
 *
 * <p>Events of the sun are found here as crossings of the library's true altitude, so that they agree with
 * the track to the second; compared with precise ephemerides, the library's own events are
 * about 8 s late; these are within a few seconds at middle latitudes. Conventions are those of the HM Nautical Almanac Office
 * (Astronomical Information Sheet No. 7, 1996): rise and set with the centre 50′ below the horizon, twilights
 * at −6°, −12° and −18° without refraction.
 */
@NullMarked
package understorey.sky;

import org.jspecify.annotations.NullMarked;
