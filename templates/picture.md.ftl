<#ftl output_format="Markdown">
<#-- One picture, for the Markdown twin. -->
<#macro picture shot>

### ${shot.number} ${shot.name}

*${shot.role}* · ${shot.subject} · ${shot.spot} · ${shot.time!"not scheduled"}

**${shot.verdict}**<#if shot.settings??>: **${shot.settings}**</#if><#if shot.lull??> (in a lull ${shot.lull})</#if><#if shot.bias??>, ${shot.bias} below the meter</#if><#if shot.bracket??>, bracket ${shot.bracket}</#if><#if shot.stack??>, **${shot.stack}**</#if><#if shot.light.grade??>; light **${shot.light.grade}**</#if>

| | |
|---|---|
<#list shot.facts + shot.light.rows as row>
| ${row.name} | ${row.text} |
</#list>

<#if shot.sketchSays??>
${shot.sketchSays} ${shot.sideViewSays}

</#if>
<#list shot.reasons as reason>
- ${reason}
</#list>
<#if shot.compose?? || shot.look?has_content>

Composition<#if shot.compose??>: ${shot.compose}</#if>

<#list shot.look as look>
- ${look}
</#list></#if>
<#if shot.helps?has_content>

What would help:

<#list shot.helps as help>
- ${help}
</#list>
</#if>
<#if shot.skies?has_content>

| Other sky or hour | EV | Aperture | Shutter | ISO | White balance | Bracket, problem |
|---|--:|--:|--:|--:|--:|---|
<#list shot.skies + shot.hours as sky>
| ${sky.when} | ${sky.ev} | ${sky.fNumber} | ${sky.shutter} | ${sky.iso} | ${sky.kelvin} | ${sky.bracket!}<#if sky.bracket?? && sky.verdict??>; </#if>${sky.verdict!} |
</#list>
</#if>
<#if shot.cover??>

<#list shot.cover.reasons as reason>
- ${reason}
</#list>

| Lens | Nearest | Ground covered | near, mid, far | Frame filled | Depth | Trunk size, 10 m behind |
|---|--:|--:|--:|--:|--:|--:|
<#list shot.cover.lenses as lens>
| ${lens.lens}<#if lens.planned> **(planned)**</#if> | ${lens.nearest} | ${lens.cover} | ${lens.byDepth} | ${lens.frame} | ${lens.depth} | ${lens.trunk} |
</#list>
</#if>
<#if (shot.tried?size > 1)>

| Lens | For this picture | Why |
|---|---|---|
<#list shot.tried as tried>
| ${tried.lens} | ${tried.verdict} | ${tried.why} |
</#list>
</#if>
<#if shot.companions?has_content>

<#list shot.companions as row>
- ${row.name}: ${row.text}
</#list>
</#if>
<#if shot.notes??>

${prose(shot.notes)}
</#if>
<#if shot.otherwise??>

**Plan B:** ${prose(shot.otherwise)}
</#if>
<#if shot.defaults?has_content>

*Defaults: <#list shot.defaults as row>${row.name} ${row.text}<#sep>; </#list>.*
</#if>
</#macro>
