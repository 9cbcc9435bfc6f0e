package understorey.pages.templates;

import freemarker.cache.ClassTemplateLoader;
import freemarker.cache.FileTemplateLoader;
import freemarker.cache.MultiTemplateLoader;
import freemarker.cache.TemplateLoader;
import freemarker.core.HTMLOutputFormat;
import freemarker.core.ParseException;
import freemarker.core.TemplateClassResolver;
import freemarker.core.TemplateHTMLOutputModel;
import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModelException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TimeZone;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import understorey.pages.markdown.MarkdownFormat;
import understorey.pages.markdown.MarkdownProse;
import understorey.pages.words.BuiltInTemplates;
import understorey.pages.words.TemplateFault;

/**
 * The templates of the pages: the jar's own, or a folder of the user's whose files stand in front of them. A
 * template sees record components and nothing else; a value that is missing stops the page.
 */
public final class Templates {

    private static final Pattern BLANK_LINES = Pattern.compile("\n{3,}");

    private final Configuration configuration;
    private final MarkdownProse prose = new MarkdownProse();
    private final TemplateMethodModelEx link = arguments -> MarkdownFormat.INSTANCE.fromMarkup(
            MarkdownProse.link(String.valueOf(arguments.get(0))));
    private static final TemplateMethodModelEx CODE = arguments -> MarkdownFormat.INSTANCE.fromMarkup(
            MarkdownProse.code(String.valueOf(arguments.get(0))));
    private final @Nullable Path folder;

    /**
     * Opens the templates.
     *
     * @param folder of the user's own; null for the jar's only
     */
    public Templates(@Nullable Path folder) {
        this.folder = folder;
        System.setProperty("org.freemarker.loggerLibrary", "none");
        configuration = new Asking();
        configuration.setTemplateLoader(new Dress.Loader(loader(folder)));
        configuration.setObjectWrapper(new RecordWrapper());
        configuration.setOutputFormat(HTMLOutputFormat.INSTANCE);
        configuration.setRegisteredCustomOutputFormats(List.of(MarkdownFormat.INSTANCE));
        configuration.setRecognizeStandardFileExtensions(true);
        configuration.setTemplateConfigurations(Dress.formats());
        configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        configuration.setLogTemplateExceptions(false);
        configuration.setWrapUncheckedExceptions(true);
        configuration.setFallbackOnNullLoopVariable(false);
        configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
        configuration.setAPIBuiltinEnabled(false);
        configuration.setLocale(Locale.ROOT);
        configuration.setTimeZone(TimeZone.getTimeZone("UTC"));
        configuration.setNumberFormat("computer");
        configuration.setBooleanFormat("c");
        configuration.setLocalizedLookup(false);
        configuration.setDefaultEncoding("UTF-8");
    }

    /** Reads a template; it is kept. */
    public Template open(String template) {
        try {
            return configuration.getTemplate(template);
        } catch (ParseException fault) {
            throw unread(fault);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    private static TemplateFault unread(ParseException fault) {
        return new TemplateFault(Dress.file(fault.getTemplateName()), fault.getLineNumber(), fault.getColumnNumber(),
                fault.getEditorMessage());
    }

    /** A fault in a template that another one imports is the imported one's. */
    private static TemplateFault unfilled(String template, TemplateException fault) {
        for (Throwable cause = fault.getCause(); cause != null; cause = cause.getCause()) {
            if (cause instanceof ParseException parse) {
                return unread(parse);
            }
        }
        String blamed = fault.getBlamedExpressionString();
        return new TemplateFault(Dress.file(fault.getTemplateSourceName() == null ? template : fault.getTemplateSourceName()),
                fault.getLineNumber() == null ? 1 : fault.getLineNumber(),
                fault.getColumnNumber() == null ? 1 : fault.getColumnNumber(),
                blamed == null ? fault.getMessageWithoutStackTop().lines().findFirst().orElse("cannot fill in")
                        : "cannot fill in " + blamed);
    }

    /** Fills a template with the record {@code page}. */
    public String fill(String template, Object page) {
        try {
            return Filling.of(open(template), Map.of("page", page, "prose", prose, "link", link, "code", CODE, "dress", Dress.macros(template)));
        } catch (TemplateException fault) {
            throw unfilled(template, fault);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** Fills a template of Markdown; one blank line parts two blocks, and no blank is hard. */
    public String markdown(String template, Object page) {
        return BLANK_LINES.matcher(fill(template, page).replace('\u00a0', ' ')).replaceAll("\n\n").strip() + "\n";
    }

    /** A file beside the templates, as it is. */
    public String text(String name) {
        try {
            if (folder != null && Files.isRegularFile(folder.resolve(name))) {
                return Files.readString(folder.resolve(name));
            }
            return BuiltInTemplates.text(name);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** HTML that is ready, so that no template escapes it again. */
    public static TemplateHTMLOutputModel html(String markup) {
        try {
            return HTMLOutputFormat.INSTANCE.fromMarkup(markup);
        } catch (TemplateModelException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static TemplateLoader loader(@Nullable Path folder) {
        TemplateLoader jar = new ClassTemplateLoader(Templates.class, BuiltInTemplates.FOLDER);
        if (folder == null) {
            return jar;
        }
        try {
            OwnTemplates.check(folder);
            return new MultiTemplateLoader(new TemplateLoader[] {new FileTemplateLoader(folder.toFile()), jar});
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** Has each template ask at every turn whether it may go on, those that another one imports too. */
    private static final class Asking extends Configuration {

        private final Set<Template> asking = Collections.newSetFromMap(new IdentityHashMap<>());

        Asking() {
            super(VERSION_2_3_34);
        }

        @Override
        public synchronized Template getTemplate(String name, Locale locale, Object condition, String encoding, boolean parse,
                                    boolean ignoreMissing) throws IOException {
            Template template = super.getTemplate(name, locale, condition, encoding, parse, ignoreMissing);
            if (template != null && asking.add(template)) {
                Filling.askAtEveryTurn(template);
            }
            return template;
        }
    }
}
