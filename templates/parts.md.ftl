<#ftl output_format="Markdown">
<#-- Pieces of the Markdown twin. -->
<#macro facts list>
| | |
|---|---|
<#list list as row>
| ${row.name} | ${row.text} |
</#list>
</#macro>

<#macro table of>
<#if of.lines?has_content>
<#if of.caption?has_content>
${of.caption}

</#if>
|<#list of.flat as head> ${head.text} |</#list>
|<#list of.flat as head><#if head.figure>--:<#else>---</#if>|</#list>
<#list of.lines as line>
|<#list line.cells as cell> <#if line.strong && cell?is_first>**${cell.text}**<#else>${cell.text}</#if> |</#list>
</#list>
</#if>
</#macro>
