/**
 * Where the sun and the moon stand at a place on a date: events of the local day, a track by time step,
 * and the land's own skyline.
 *
 * <p>Angles are degrees, bearings count from true north clockwise, times are exact to their seconds and stand
 * in the site's zone. A sea-level flat horizon is assumed; the elevation of a place is not used. Positions
 * come from commons-suncalc (after Montenbruck and Pfleger, <em>Astronomy on the Personal Computer</em>), right
 * to about 0.02° for the sun and 0.1° for the moon.
 *
 * <p>Events of the sun are found here as crossings of the library's true altitude, so that they agree with
 * the track to the second; against precise ephemerides the library's own tables of events run some 8 s late,
 * ours keep within a few seconds at middle latitudes. Conventions are those of the HM Nautical Almanac Office
 * (Astronomical Information Sheet No. 7, 1996): rise and set with the centre 50′ below the horizon, twilights
 * at −6°, −12° and −18° without refraction.
 */
package understorey.sky;
