<#ftl output_format="Markdown">
<#import "season.md.ftl" as season>
<#import "picture.md.ftl" as one>
<#import "parts.md.ftl" as parts>
# ${page.title}

${page.place.name} · ${page.date} · on site ${page.arrive}<#if page.arriveDefault??> (default: ${page.arriveDefault})</#if> to ${page.leave}<#if page.leaveAssumed> (default: four hours later)</#if> · ${page.gear} · ${page.audience}<#if page.audienceAssumed> (default)</#if>

<#list page.essentials as row>
- **${row.name}:** ${row.text}
</#list>
<#if page.story??>

${prose(page.story)}
</#if>
<#if page.findings?has_content>

## Before you go

<#list page.findings as finding>
- <#if finding.warning>**Warning:** </#if>${finding.text}
</#list>
</#if>

<@season.section season=page.season />
## The light

<#list page.places as place>
### ${place.name}

<#if place.sunlit??>The sun is above ${place.horizon} ${place.sunlit}<#if place.overTrees??>; above the treetops around the clearing: ${place.overTrees}</#if>.<#else>The sun does not rise above ${place.horizon} on this day.</#if>

${place.dayLightSays}

${place.skylineSays}
<#if place.mist?has_content>

<#list place.mist as mist>
- ${mist}
</#list>
</#if>

</#list>
<#if page.light.drops?has_content>
### Drops

<#list page.light.drops as drop>
- ${drop}
</#list>

</#if>
### Sun and moon

<@parts.facts list=page.light.sun + page.light.moon />

<#if page.light.weather.lines?has_content>
### Forecast

<@parts.table of=page.light.weather />

</#if>
### Light by the hour

<@parts.table of=page.light.table />

## Storyboard

<#list page.storyboard as shot>
${shot?counter}. *${shot.role}*: **${shot.name}** (picture ${shot.number})<#if shot.camera??>, ${shot.camera}, ${shot.height} high, ${shot.settings}<#if shot.stack??>; ${shot.stack}</#if></#if>, ${page.order.taken[shot?index]}
</#list>
<#if page.gaps?has_content>

<#list page.gaps as gap>
- ${gap}
</#list>
</#if>

### Caption drafts

<#list page.order.captions as caption>
${caption?counter}. **${page.storyboard[caption?index].name}:** ${caption}
</#list>

## The pictures
<#list page.shots as shot>
<@one.picture shot=shot />
</#list>

## Running order

Must-have pictures first, then the best light for the important ones, then an early finish. Leave the last spot by **${page.order.leaveLastSpotBy}**.

<@parts.table of=page.order.table />
<#if page.order.timeLeft??>

${page.order.timeLeft}
</#if>
<#list page.order.others as other>

### If the day is ${other.day}

<#list other.order as start><#if start?is_first>Pictures </#if>${start.number} at ${start.at}<#sep>, <#else>No picture</#list>.

<#list other.lines as line>
- ${line}
</#list>
</#list>
<#if page.order.spotPlanSays??>

### Map of the spots

${page.order.spotPlanSays}
</#if>

### Getting back

<@parts.facts list=page.order.safety />
<#if page.order.message??>
<#assign m = page.order.message>

### Message for your contact

<#if page.contact??>
Your contact: ${page.contact}.

</#if>
<#if m.ready>
> On ${m.day} I will arrive at ${m.arrive} at ${m.site}<#if m.base??>, parking at ${m.base}</#if><#if m.position??> (map position ${m.position})</#if><#if m.route??>, and walk to ${m.route}</#if>. I plan to <#if m.base?? && m.route??>be back there at<#else>leave at</#if> ${m.back} and will message you by ${m.backBy}. If you hear nothing, call me; if I do not answer by ${m.actFrom}, call the emergency services and read them this.
<#else>
No message yet: you are back at ${m.back}, after your check-in time ${m.backBy}. Change “back_by” or leave earlier.
</#if>
</#if>

## What to carry

${page.kit.weight} in total<#if page.kit.unweighed??> (items without a weight: ${page.kit.unweighed})</#if>.<#if page.kit.cards??> Cards: ${page.kit.cards}.</#if><#if page.kit.batteries??> Batteries: ${page.kit.batteries}.</#if>

<@parts.table of=page.kit.taken />
<#if page.kit.leave.lines?has_content>

<@parts.table of=page.kit.leave />
</#if>
<#if page.kit.missing?has_content>

Missing (buy, borrow or do without):

<#list page.kit.missing as help>
- ${help}
</#list>
</#if>
<#if page.kit.companions?has_content>

What your companions need to bring for these pictures:

<#list page.kit.companions as row>
- ${row.name}: ${row.text}
</#list>
</#if>

## Getting there

<#list page.place.facts as row>
- ${row.name}: ${row.text}
</#list>
<#if page.place.spots.lines?has_content>

<@parts.table of=page.place.spots />
</#if>
<#if page.place.walks.lines?has_content>

<@parts.table of=page.place.walks />
</#if>
<#if page.place.access??>

${prose(page.place.access)}
</#if>
<#if page.place.notes??>

${prose(page.place.notes)}
</#if>
<#if page.place.reports??>

Ask how the flowers are: ${link(page.place.reports)}
</#if>

## Cautions

<#list page.place.cautions as caution>
- ${prose(caution)}
</#list>
<#list page.cautions as caution>
- ${caution}
</#list>
