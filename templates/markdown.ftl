<#ftl output_format="Markdown">
<#-- The Markdown dress of the plan page: markup only, no words of the plan. -->
<#macro page title css published><#nested></#macro>
<#macro navigation links previous next></#macro>
<#macro head><#nested></#macro>
<#macro answers>

<#nested></#macro>
<#macro answer name>- **${name}:** <#nested></#macro>
<#macro margin></#macro>
<#macro h1># <#nested></#macro>
<#macro h2 id>

## <#nested>

</#macro>
<#macro h3 id="">

### <#nested>

</#macro>
<#macro hopeless>

**<#nested>**</#macro>
<#macro when>

<#nested></#macro>
<#macro p>

<#nested></#macro>
<#macro key></#macro>
<#macro quote>

> <#nested>
</#macro>
<#macro b>**<#nested>**</#macro>
<#macro code text>${.data_model.code(text)}</#macro>
<#macro jump>

<#nested>
</#macro>
<#macro target to>- [<#nested>](#${to})
</#macro>
<#macro keys list>

<#list list as key>
- **<#nested key, "name">**: <#nested key, "about"> <#nested key, "takes">. <#nested key, "example">

</#list>
</#macro>
<#macro a href>[<#nested>](${href})</#macro>
<#macro prose text html>

${.data_model.prose(text)}
</#macro>
<#macro columns><#nested></#macro>
<#macro column><#nested></#macro>
<#macro appendix><#nested></#macro>
<#macro foot></#macro>
<#macro drawing of>

${of.says}
</#macro>
<#macro facts list class=""><#if list?has_content>

<#list list as row>
- **${row.name}:** ${row.text}
</#list>
</#if></#macro>
<#macro sentences list class=""><#if list?has_content>

<#list list as sentence>
- <#if sentence?is_hash><#if sentence.warning>**Warning:** </#if>${sentence.text}<#else>${sentence}</#if>
</#list>
</#if></#macro>
<#macro points><#nested></#macro>
<#macro point name>- **${name}:** <#nested></#macro>
<#macro numbered list>

<#list list as line>
${line?counter}. ${line}
</#list>
</#macro>
<#macro cautions own plain list>

<#list plain as caution>
- ${.data_model.prose(caution)}
</#list>
<#list list as caution>
- ${caution}
</#list>
</#macro>
<#macro day visit shots>

## The pictures in the order taken

<#list shots as shot>
- **${shot.time}** ${shot.spot}: **${shot.number} ${shot.name}**<#if shot.settings??>, ${shot.settings.line}<#if shot.verdict != "fits"> (${shot.verdict})</#if></#if><#if shot.camera??>, ${shot.camera}</#if><#if shot.support??>, ${shot.support}</#if><#if (shot.settings.stack)??>, ${shot.settings.stack}</#if>
</#list>

${visit.says}

<#list visit.events as event>
- ${event.text}
</#list>
</#macro>
<#macro besides settings><#if settings.lull??> · in a lull ${settings.lull}</#if><#if settings.bias??> · ${settings.bias}</#if><#if settings.bracket??> · bracket ${settings.bracket}</#if><#if settings.stack??> · ${settings.stack}</#if></#macro>
<#macro shot shot>

## ${shot.number} ${shot.name}

${shot.role}, ${shot.rank} · ${shot.time!"not taken"} at ${shot.spot}<#if shot.light.grade??> · light ${shot.light.grade}<#if shot.light.windows??> (best ${shot.light.windows})</#if></#if>

<#if shot.settings??>**${shot.settings.line}** · ${shot.verdict}<@besides settings=shot.settings /><#else>**${shot.verdict}**</#if>
<@facts list=shot.facts />
<@sentences list=shot.why />
<#if shot.compose??>

Composition: ${shot.compose}.
</#if>
<#if shot.notes??>

${.data_model.prose(shot.notes)}
</#if>
<#if shot.otherwise??>

**Plan B:** ${.data_model.prose(shot.otherwise)}
</#if>
<#if shot.sketch??>

${shot.sketch.says} ${shot.sideView.says}<#if shot.curve??> ${shot.curve.says}</#if>
</#if>
<@table of=shot.otherLight />
</#macro>
<#macro more shot>
<#if shot.defaults?has_content || shot.more?has_content || shot.light.rows?has_content || (shot.tried.lines?size > 1)>

#### ${shot.number} ${shot.name}
<#if shot.defaults?has_content>

*Defaults: <#list shot.defaults as row>${row.name} ${row.text}<#sep>; </#list>.*
</#if>
<@facts list=shot.light.rows />
<@sentences list=shot.more />
<@facts list=shot.companions />
<#if (shot.tried.lines?size > 1)><@table of=shot.tried /></#if>
</#if>
</#macro>
<#macro season season>
<#list season.windows as window>
<@h3>${window.subject?cap_first}</@h3>
<@facts list=window.rows />
<@sentences list=window.reasons />

${window.chart.says}
</#list>
<#if season.reports??>

${season.reports}
</#if>
<#if season.calendar.lines?has_content>
<@table of=season.calendar />

<#list season.best as day>
${day?counter}. **${day.date}**. <#list day.reasons as reason>${reason} </#list>Pictures: ${day.shots?join("; ")}.
</#list>
</#if>
</#macro>
<#macro spots place>
<@table of=place.spots />
<@table of=place.walks />
</#macro>
<#macro directions place>
<#if place.access??>

${.data_model.prose(place.access)}
</#if>
<#if place.notes??>

${.data_model.prose(place.notes)}
</#if>
<#if place.reports??>

Ask how the flowers are: ${.data_model.link(place.reports)}
</#if>
</#macro>
<#macro table of label="" class="">
<#if of.lines?has_content>

<#if of.caption?has_content>
${of.caption}

</#if>
|<#list of.flat as head> ${head.text} |</#list>
|<#list of.flat as head><#if head.figure>--:<#else>---</#if>|</#list>
<#list of.lines as line>
|<#list line.cells as cell> <#if cell.strong>**</#if>${cell.text?replace("\n", ", ")}<#if cell.strong>**</#if> |</#list>
</#list>
</#if>
</#macro>
