<#ftl output_format="Markdown">
<#-- When to go, for the Markdown twin. -->
<#macro section season>
<#if season.windows?has_content || season.weeks?has_content>
## The season

<#list season.windows as window>
### ${window.subject?cap_first}

<#list window.rows as row>
- ${row.name}: ${row.text}
</#list>
<#list window.reasons as reason>
- ${reason}
</#list>

${window.chartSays}

</#list>
<#if season.reports??>
${season.reports}

</#if>
<#if season.weeks?has_content>
| Mon | Tue | Wed | Thu | Fri | Sat | Sun |
|---|---|---|---|---|---|---|
<#list season.weeks as week>
|<#list week.days as cell> <#if cell.best>**</#if>${cell.day}<#if cell.best>**</#if><#if cell.chance??> ${cell.chance}</#if><#if cell.note??> ${cell.note}</#if> |</#list>
</#list>

<#list season.best as day>
${day?counter}. **${day.date}**. <#list day.reasons as reason>${reason} </#list>Pictures: ${day.shots?join("; ")}.
</#list>

</#if>
</#if>
</#macro>
