<#ftl output_format="Markdown">
<#-- One picture, for the Markdown twin. -->
<#import "parts.md.ftl" as parts>
<#macro picture shot>

### ${shot.number} ${shot.name}

*${shot.role}* · ${shot.subject} · ${shot.spot} · ${shot.time!"not scheduled"}

**${shot.verdict}**<#if shot.settings??>: **${shot.settings}**</#if><#if shot.lull??> (in a lull ${shot.lull})</#if><#if shot.bias??>, ${shot.bias} below the meter</#if><#if shot.bracket??>, bracket ${shot.bracket}</#if><#if shot.stack??>, **${shot.stack}**</#if><#if shot.light.grade??>; light **${shot.light.grade}**</#if>

<@parts.facts list=shot.facts + shot.light.rows />

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
<#if shot.otherLight.lines?has_content>

<@parts.table of=shot.otherLight />
</#if>
<#if shot.cover??>

<#list shot.cover.reasons as reason>
- ${reason}
</#list>

<@parts.table of=shot.cover.lenses />
</#if>
<#if (shot.tried.lines?size > 1)>

<@parts.table of=shot.tried />
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
