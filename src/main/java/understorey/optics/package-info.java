/**
 * Geometry of a picture: what a lens takes in and where in the frame, how large, how sharp, and what spoils the
 * sharpness; how much of the ground is flower; and the polarised light of sky and leaves (Brewster, Fresnel,
 * Rayleigh).
 *
 * <p>All of it is the thin lens: one principal plane, pupils of equal size, no distortion. Real lenses differ
 * by the gap between their principal planes (some tens of millimetres) and, close up, by inner focusing, which
 * shortens the focal length. Distances are millimetres from the front principal plane unless a name says
 * "sensor", over the ground metres; focal lengths, sensors and circles are millimetres, angles degrees, light
 * losses stops.
 *
 * <p>Sources are named at each formula: S. F. Ray, <cite>Applied Photographic Optics</cite> (the thin-lens
 * forms, through secondary copies); R. F. Lyon, <cite>Depth of Field Outside the Box</cite>, 2006; US Army
 * courses SS0507 and SS0512; Edmund Optics, <cite>The Airy Disk and Diffraction Limit</cite>.
 */
@NullMarked
package understorey.optics;

import org.jspecify.annotations.NullMarked;
