/**
 * Formulas of illuminance: sun and sky, twilight and moon in the open, clouds before the sun, leaves and trunks above, exposure
 * value and colour temperature. Each has its range, error and source.
 *
 * <p>Illuminance is lux, exposure value is for ISO 100, altitudes are degrees without refraction, cloud is okta (0 to 8), plant
 * area is square metres per square metre of ground.
 */
@NullMarked
package understorey.light.illuminance;

import org.jspecify.annotations.NullMarked;
