/**
 * With which settings a picture begins, and what limits them: markings of the third-stop scales, the shutter
 * time for a light, how long a hand holds still and how long a stem in the wind does.
 *
 * <p>Start at {@link understorey.exposure.Exposure Exposure}, which finds the {@link
 * understorey.exposure.Settings Settings} of a lens on a picture in the {@link
 * understorey.exposure.Conditions Conditions} of an hour.
 *
 * <p>Times are seconds, light is EV at ISO 100, losses are stops, wind is metres a second, sway and blur are
 * millimetres. Sources: APEX (ASA PH2.5-1960, through secondary copies), ISO 12232 preferred speeds, Beaufort
 * scale and NWCG wind factors; what is common practice or an assumption says so where it stands.
 */
@NullMarked
package understorey.exposure;

import org.jspecify.annotations.NullMarked;
