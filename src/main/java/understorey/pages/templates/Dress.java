package understorey.pages.templates;

import freemarker.cache.ConditionalTemplateConfigurationFactory;
import freemarker.cache.FileExtensionMatcher;
import freemarker.cache.FirstMatchTemplateConfigurationFactory;
import freemarker.cache.TemplateConfigurationFactory;
import freemarker.cache.TemplateLoader;
import freemarker.core.HTMLOutputFormat;
import freemarker.core.OutputFormat;
import freemarker.core.TemplateConfiguration;
import java.io.IOException;
import java.io.Reader;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import understorey.pages.markdown.MarkdownFormat;

/**
 * One template in two dresses: {@code plan.ftl} is filled as {@code plan.html.ftl} and as {@code plan.md.ftl}, each
 * with the macros of its dress, so that the two pages cannot say different things.
 */
enum Dress {

    HTML(".html.ftl", "html.ftlh", HTMLOutputFormat.INSTANCE), MARKDOWN(".md.ftl", "markdown.ftl", MarkdownFormat.INSTANCE);

    private static final String BOTH = ".ftl";

    private final String ending;
    private final String macros;
    private final OutputFormat format;

    Dress(String ending, String macros, OutputFormat format) {
        this.ending = ending;
        this.macros = macros;
        this.format = format;
    }

    /** The file of macros for a template of that name. */
    static String macros(String template) {
        return template.endsWith(MARKDOWN.ending) ? MARKDOWN.macros : HTML.macros;
    }

    /** The file that a template is read from. */
    static String file(String template) {
        for (Dress dress : values()) {
            if (template.endsWith(dress.ending)) {
                return template.substring(0, template.length() - dress.ending.length()) + BOTH;
            }
        }
        return template;
    }

    /** Each dress escapes in its own way. */
    static TemplateConfigurationFactory formats() {
        return new FirstMatchTemplateConfigurationFactory(Arrays.stream(values()).map(Dress::escaping)
                .toArray(TemplateConfigurationFactory[]::new)).allowNoMatch(true);
    }

    private TemplateConfigurationFactory escaping() {
        TemplateConfiguration escaping = new TemplateConfiguration();
        escaping.setOutputFormat(format);
        return new ConditionalTemplateConfigurationFactory(new FileExtensionMatcher(ending.substring(1)), escaping);
    }

    /** Reads both dresses from their one file. */
    record Loader(TemplateLoader files) implements TemplateLoader {

        @Override
        public @Nullable Object findTemplateSource(String name) throws IOException {
            return files.findTemplateSource(file(name));
        }

        @Override
        public long getLastModified(Object source) {
            return files.getLastModified(source);
        }

        @Override
        public Reader getReader(Object source, String encoding) throws IOException {
            return files.getReader(source, encoding);
        }

        @Override
        public void closeTemplateSource(Object source) throws IOException {
            files.closeTemplateSource(source);
        }
    }
}
