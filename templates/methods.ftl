<#import dress as d>
<#-- How the figures are calculated: on the site and in the documents. -->
<@d.page title="Methods" css=page.css published={}>
<@d.navigation links=page.links previous="" next="" />
<@d.h1>Methods</@d.h1>
<@d.when>How every figure is calculated, where the method comes from, and how large its error is.</@d.when>
<@d.h2 id="sun-and-moon">Sun and moon</@d.h2>
<@d.points>
<@d.point name="Rise, set and twilight">From the library commons-suncalc. The sun’s times agree with precise ephemerides within about 10 seconds. Between 60° S and 60° N, they agree with published almanacs within one minute; those of the moon within two. They are for sea level and a flat horizon, rounded to the minute. Refraction varies: allow a minute near the horizon. For a visit past midnight, all figures are from noon to noon, with the leaves and flowers of the first date.</@d.point>
<@d.point name="Low sun (golden hour)">Sun between −4° and +6°, a rule of thumb.</@d.point>
<@d.point name="Deep twilight (blue hour)">Sun between −6° and −4°, a rule of thumb.</@d.point>
<@d.point name="Sun at a spot">To the minute for the skyline you gave. Half a degree of hill shifts it by two to five minutes.</@d.point>
</@d.points>
<@d.h2 id="light">Light</@d.h2>
<@d.points>
<@d.point name="Light in the open">Daylight availability of the Illuminating Engineering Society (1984) with the air mass of Kasten and Young (1989). Skies: clear up to 2 okta, partly cloudy at 4.5, overcast at 8. Below 5° it is joined to Seidelmann’s twilight table; moonlight is by the same author. Real skies differ by up to a stop.</@d.point>
<@d.point name="EV at ISO 100">From illuminance after ISO 2720 with C = 250. “Sun” is for an upright subject lit from the front or for level ground, whichever is brighter. Shade, broken and overcast are for the ground, level or sloping as at the spot. Hills around a place hide part of the sky; this is included.</@d.point>
<@d.point name="Under trees">Gap fraction (Beer–Lambert) with an effective plant area index of 0.8 leafless, 1.2 bud burst, 2.1 half leaf, 3.2 full leaf. In a clearing only the trees up to the treetops around it count. Woods differ: allow a stop, and meter.</@d.point>
<@d.point name="Light quality (good, fair, poor)">From the sun’s height and direction, cloud, skyline and leaves. The limits are rules of thumb.</@d.point>
<@d.point name="Colour temperature">Published lists differ by 20 %. Shoot RAW with a grey card to be sure.</@d.point>
</@d.points>
<@d.h2 id="mist-and-drops">Mist and drops</@d.h2>
<@d.points>
<@d.point name="Chance of mist and drops">Rules of thumb or a published index, named where they are used. They are chances, not promises.</@d.point>
<@d.point name="Dew point">Magnus formula with the constants of Alduchov and Eskridge (1996).</@d.point>
</@d.points>
<@d.h2 id="lenses-and-settings">Lenses and settings</@d.h2>
<@d.points>
<@d.point name="Depth of field">Thin-lens formula, circle of confusion = sensor diagonal ÷ 1500, diffraction from the Airy disc. Distances are from the front of the lens, to about 10 %. Focus distances are from the sensor, as on a lens’s distance scale.</@d.point>
<@d.point name="Settings">A starting point, in ⅓ stops. Check the histogram and protect the brightest petals. Shoot RAW if the camera can.</@d.point>
<@d.point name="Bag">The lightest set that serves every picture equally well. That means the same verdict, support and height, within half a stop, with the polariser on. A smaller sensor, no macro lens for a close-up, and a distance that is too short or too long cost stops. These costs are rules of thumb. Items without a weight count as zero.</@d.point>
<@d.point name="Cards and batteries">Rules of thumb: twenty frames per picture or five focus stacks. A battery gives 10 % less per ${page.colder} below ${page.warm}.</@d.point>
</@d.points>
<@d.h2 id="flowers">Flowers</@d.h2>
<@d.points>
<@d.point name="Flower cover">Gap fraction over each row of the frame, from the catalogue’s flower area index, which may be half or double. It is the cover in full flower; sketches show what is open on the day. Flowers grow in clumps, and leaves are not counted. Use it to compare lenses, not as an exact figure.</@d.point>
<@d.point name="Full flower">An estimate: about ten days off with four years of records at one wood. It is the average of the years on record, with Student’s t for the coming year. A temperature model is used only if it predicts left-out years at least 5 % better. Without records: the catalogue’s months, shifted by four days per degree of latitude or ${page.climb} (source not checked). “Likely” means four years in five. In published series, that range held 78 to 88 % of the years left out, on average (Kyoto, Tullgarn, Harvard Forest). They were predicted from 4 to 10 other years; the worst single series held 76 %. “Full flower” runs from the last third of the rise to the first third of the decline. Sightings count by how well their stage fits. These last two are rules of thumb.</@d.point>
<@d.point name="Best day">Chance of full flower × light quality at the best time of the visit (by priority) × hours × weather. Use it only to compare the days of one trip.</@d.point>
</@d.points>
<@d.h2 id="order-and-walks">Order and walks</@d.h2>
<@d.points>
<@d.point name="Running order">The best of all orders and starts on a five-minute grid, for up to twelve pictures. Beyond that a good one, never worse than the order in your file. Idle minutes, waits and moves to another spot have a price. Pictures of raindrops lose worth from the end of the rain, close ones up to twice as fast. Light is compared in steps of 5 %. A picture counts by the worse half of its stay if that is clearly worse. A rainy day counts as overcast with ${page.rain} per hour. Rules of thumb: three minutes to set up, two to change the lens.</@d.point>
<@d.point name="Untimed walks">Tobler’s walking speed with a load, on a winding path, slower in the dark. Five published formulas differ by 20 % on one route. Distances are on a sphere, within 0.4 % of the ellipsoid.</@d.point>
</@d.points>
</@d.page>
