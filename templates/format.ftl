<#import dress as d>
<#-- The reference of the three files, block by block, from their schema. -->
<#function anchor title><#return title?lower_case?replace(" ", "-")?replace("[,/']", "", "r")></#function>
<#macro ticked text><#list text?split("`") as part><#if part?is_odd_item>${part}<#else><@d.code text=part /></#if></#list></#macro>
<#macro takes of><#if of.list>list of </#if><#if of.words?has_content><#list of.words as word><@d.code text=word.word /><#if word.meaning?has_content> ${word.meaning}</#if><#sep>, </#list><#else><@d.a href="#" + anchor(of.heading)>${of.what}</@d.a></#if></#macro>
<@d.page title="The format" css=page.css published={}>
<@d.navigation links=page.links previous="" next="" />
<@d.h1>The format</@d.h1>
<@d.when>Every key of a trip, a site and a bag, what it takes, what holds without it, and an example.</@d.when>
<@d.p>Three kinds of file lie in a folder of plans: trips in it, sites in <@d.code text="sites/" />, bags in <@d.code text="gear/" />. A quantity has its unit in the text: <@d.code text="50 mm" />, <@d.code text="1.4 kg" />, <@d.code text="3 m/s" />. Only keys marked <@d.b>required</@d.b> have to be there. An unknown key is an error, with its place and a suggestion. A list of one needs no brackets: <@d.code text="light: mist" />. Words may be in capitals or small letters.</@d.p>
<@d.p>For completion in an editor that knows JSON Schema, run <@d.code text="understorey schema --out plans/schema" />. Begin each file with the line that it prints, for example <@d.code text="# yaml-language-server: $schema=schema/trip.schema.json" />.</@d.p>
<@d.jump><#list page.reference.blocks as block><@d.target to=anchor(block.title)>${block.title}</@d.target></#list></@d.jump>
<#list page.reference.blocks as block>
<@d.h2 id=anchor(block.title)>${block.title}</@d.h2>
<@d.p><@ticked text=block.about /></@d.p>
<@d.keys list=block.keys; key, part><#if part == "name"><@d.code text=key.name /><#if key.required> <@d.b>required</@d.b></#if><#elseif part == "about"><@ticked text=key.about?cap_first?ensure_ends_with(".") /><#elseif part == "takes"><#list key.takes as of><@takes of=of /><#sep>, or </#list><#if key.leftOut??>; left out: ${key.leftOut}</#if><#elseif key.example??><@d.code text=key.name + ": " + key.example /></#if></@d.keys>
</#list>
<@d.h2 id="values">Values</@d.h2>
<#list page.reference.values as value>
<@d.h3 id=anchor(value.title)>${value.title?cap_first}</@d.h3>
<@d.p>${value.about}<#if value.units?has_content> Units: <#list value.units as unit><@d.code text=unit /><#sep>, </#list>.</#if></@d.p>
</#list>
</@d.page>
