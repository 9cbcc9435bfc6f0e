<#import dress as d>
<#-- Whether the figure of the visit has bars of this look. -->
<#function drawn look><#return page.visit.rows?filter(row -> row.bars?filter(bar -> bar.look == look)?has_content)?has_content></#function>
<@d.page title=page.title css=page.css published=page.published!{}>
<@d.navigation links=page.links previous=page.previous! next=page.next! />
<@d.head>
<@d.h1>${page.title}</@d.h1>
<#if page.hopeless??><@d.hopeless>${page.hopeless}</@d.hopeless></#if>
<@d.when>${page.date}, ${page.arrive} to ${page.leave}, <@d.a href=page.siteHref>${page.place.name}</@d.a></@d.when>
<@d.answers>
<@d.answer name="Go"><@d.b>${page.go.arrive}</@d.b><#if page.go.base??> at ${page.go.base}</#if><#if page.go.arriveBy??> (or <@d.b>${page.go.arriveBy}</@d.b>)</#if><#if page.go.torch??>; head torch ${page.go.torch}</#if><#if page.go.back??>; <#if page.go.base??>back<#else>last picture ends</#if> at ${page.go.back}</#if>; leave the last spot by <@d.b>${page.go.leaveBy}</@d.b> at the latest</@d.answer>
<@d.answer name="Where"><#list page.go.stops as stop>${stop.spot}<#if stop.minutes??>, ${stop.minutes} min ${stop?is_first?then("in", "on")}</#if>, for ${stop.pictures}<#sep>; </#list></@d.answer>
<@d.answer name=page.whyName><#if page.why.chance??><@d.b>${page.why.chance}</@d.b> </#if>${page.why.text}</@d.answer>
<@d.answer name="Carry"><@d.b>${page.kit.weight}</@d.b>: ${page.kit.names}</@d.answer>
<#if page.spoilers?has_content><@d.answer name="Spoils it">${page.spoilers}</@d.answer></#if>
</@d.answers>
<@d.margin>
<#if page.season.windows?has_content>
<@d.drawing of=page.season.windows[0].chart>Thin: first flowers to over. Thick: full flower. Curve: chance of full flower this year, its likely peak below it. Vertical line: <#if page.season.monthAlone>the middle of the month<#else>the trip</#if>.</@d.drawing>
</#if>
</@d.margin>
</@d.head>
<#if page.visit??>
<@d.day visit=page.visit shots=page.taken />
<@d.key>Black: taking the picture. Outlined: setting up.<#if drawn("walk")> Dashes: walking.</#if><#if drawn("wait")> Dots: waiting.</#if><#if drawn("window")> Tint: hours of its light.</#if> <#if page.visit.light.expected?has_content>Curve<#else>Band</#if>: EV at ISO 100<#if page.visit.place??> at ${page.visit.place}</#if><#if page.visit.light.expected?has_content>, band: any sky<#else> under any sky</#if>.</@d.key>
</#if>
<#if page.notTaken?has_content><@d.p><@d.b>Not taken:</@d.b> <#list page.notTaken as shot>${shot.number} ${shot.name}<#sep>, </#list>.</@d.p></#if>
<@d.sentences list=page.findings?filter(finding -> finding.warning) />
<#list page.taken + page.notTaken as shot>
<@d.shot shot=shot />
</#list>
<#if page.story??>
<@d.h2 id="story">The story</@d.h2>
<@d.prose text=page.story html=page.storyHtml! />
</#if>
<#assign notes = page.findings?filter(finding -> !finding.warning)>
<#if notes?has_content>
<@d.h2 id="findings">Before you go</@d.h2>
<@d.sentences list=notes />
</#if>
<@d.h2 id="order">If the day differs</@d.h2>
<#if page.order.others?has_content>
<#list page.order.others as other>
<@d.p><@d.b>${other.day?cap_first}:</@d.b> <#list other.order as start><#if start?is_first>pictures </#if>${start.number} at ${start.at}<#sep>, <#else>no picture</#list>.</@d.p>
</#list>
<#else>
<@d.p>The same order suits a clear, an overcast, a wet and a windy day.</@d.p>
</#if>
<#if page.order.timeLeft??><@d.p>${page.order.timeLeft}</@d.p></#if>

<@d.h2 id="carry">Carry</@d.h2>
<@d.p><@d.b>${page.kit.weight}</@d.b> in total<#if page.kit.unweighed??> (items without a weight: ${page.kit.unweighed})</#if>.<#if page.kit.cards??> Cards: ${page.kit.cards}.</#if><#if page.kit.batteries??> Batteries: ${page.kit.batteries}.</#if></@d.p>
<@d.columns>
<@d.column><@d.table of=page.kit.taken /></@d.column>
<@d.column>
<@d.table of=page.kit.leave />
<#if page.kit.missing?has_content>
<@d.p>Missing: buy, borrow or do without.</@d.p>
<@d.sentences list=page.kit.missing />
</#if>
<#if page.kit.companions?has_content>
<@d.h3>Companions</@d.h3>
<@d.facts list=page.kit.companions />
</#if>
</@d.column>
</@d.columns>

<@d.h2 id="place">Getting there and back</@d.h2>
<@d.columns>
<@d.column>
<@d.facts list=page.place.facts />
<@d.facts list=page.order.safety />
<@d.directions place=page.place />
</@d.column>
<@d.column>
<#if page.order.spotPlan??>
<@d.drawing of=page.order.spotPlan>To scale, north up. Dashed: the walks. Distances are straight lines, times are by day.</@d.drawing>
</#if>
<#if page.order.message??>
<#assign m = page.order.message>
<@d.h3>Message for your contact</@d.h3>
<#if page.contact??><@d.p>Your contact: ${page.contact}.</@d.p></#if>
<#if m.ready>
<@d.quote>On ${m.day} I will arrive at ${m.arrive} at ${m.site}<#if m.base??>, parking at ${m.base}</#if><#if m.position??> (map position ${m.position})</#if><#if m.route??>, and walk to ${m.route}</#if>. I plan to <#if m.base?? && m.route??>be back there at<#else>leave at</#if> ${m.back} and will message you by ${m.backBy}. If you hear nothing, call me. If I do not answer by ${m.actFrom}, call the emergency services and read them this.</@d.quote>
<#else>
<@d.p>No message yet: you are back at ${m.back}, after your check-in time ${m.backBy}. Change “back_by” or leave earlier.</@d.p>
</#if>
</#if>
</@d.column>
</@d.columns>
<@d.spots place=page.place />

<@d.h2 id="cautions">Cautions</@d.h2>
<@d.cautions own=page.place.cautionsHtml plain=page.place.cautions list=page.cautions />

<@d.appendix>
<@d.h2 id="appendix">Appendix: the figures behind the plan</@d.h2>
<@d.p>How they are calculated, and how far to trust them: <@d.a href="../methods.html">methods</@d.a>. ${page.basis}</@d.p>
<#if page.season.windows?has_content || page.season.calendar.lines?has_content>
<@d.season season=page.season />
</#if>
<@d.h3 id="light">Light and weather</@d.h3>
<#list page.places as place>
<@d.p><@d.b>${place.name}.</@d.b> <#if place.sunlit??>Sun above ${place.horizon}: ${place.sunlit}.<#if place.overTrees??> Sun above the treetops around the clearing: ${place.overTrees}.</#if><#else>The sun does not rise above ${place.horizon} on this day.</#if></@d.p>
<@d.sentences list=place.mist />
</#list>
<@d.sentences list=page.light.drops />
<@d.columns>
<@d.column><@d.facts list=page.light.sun /></@d.column>
<@d.column><@d.facts list=page.light.moon /></@d.column>
</@d.columns>
<@d.table of=page.light.weather label="Forecast" />
<@d.table of=page.light.table label="Light table" class="light" />
<@d.h3 id="notes">More about each picture</@d.h3>
<#list page.taken + page.notTaken as shot>
<@d.more shot=shot />
</#list>
<#if page.order.captions?has_content>
<@d.h3 id="captions">Caption drafts, in the order of the story</@d.h3>
<@d.numbered list=page.order.captions />
</#if>
</@d.appendix>
<@d.foot><@d.a href="plan.md">Markdown</@d.a> · <@d.a href="plan.json">plan.json</@d.a><#if page.located> · <@d.a href="trip.ics">calendar</@d.a> · <@d.a href="spots.gpx">waypoints</@d.a></#if> · <@d.a href="field-sheet.html">field sheet</@d.a></@d.foot>
</@d.page>
