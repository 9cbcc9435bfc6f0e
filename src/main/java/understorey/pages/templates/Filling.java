package understorey.pages.templates;

import freemarker.core.Environment;
import freemarker.core._CoreAPI;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import java.io.IOException;
import java.io.Writer;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import understorey.pages.Page;
import understorey.pages.words.TemplateFault;

/**
 * A template being filled in, on a thread of its own, so that one that never ends can be ended. Freemarker asks the
 * thread at every turn of a loop and at every call of a macro or function whether it was interrupted; here each
 * question is one step, and a page may take so many.
 */
final class Filling extends Thread {

    /** The fullest page of the demo takes about 600. */
    private static final int MOST_STEPS = 1_000_000;
    /** Calls within calls; the stack holds a few times as many. */
    private static final int DEEPEST = 1000;
    private static final int MOST_CHARACTERS = 20_000_000;
    private static final int LOOK_EVERY = 100;
    /** For what takes no steps, such as an endless sequence that is filtered. */
    private static final long LONGEST_MS = 30_000;
    private static final long STACK_BYTES = 16L << 20;

    private final Template template;
    private final Map<String, Object> model;
    private final Page text = new Page();
    private int steps;
    private @Nullable TemplateException seen;
    private @Nullable Throwable fault;

    private Filling(Template template, Map<String, Object> model) {
        super(null, null, "template", STACK_BYTES);
        setDaemon(true);
        this.template = template;
        this.model = model;
    }

    /** Has Freemarker ask at every turn. */
    static void askAtEveryTurn(Template template) {
        _CoreAPI.addThreadInterruptedChecks(template);
    }

    /**
     * The filled template.
     *
     * @throws TemplateFault when it goes on without end
     */
    static String of(Template template, Map<String, Object> model) throws TemplateException, IOException {
        Filling filling = new Filling(template, model);
        filling.start();
        try {
            filling.join(LONGEST_MS);
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
        }
        if (filling.isAlive()) {
            throw new TemplateFault(template.getName(), 1, 1, "this template has not ended after half a minute", true);
        }
        return filling.result();
    }

    @Override
    public void run() {
        try {
            template.process(model, text);
        } catch (TemplateException | IOException | RuntimeException | StackOverflowError | OutOfMemoryError end) {
            fault = end;
        }
    }

    private String result() throws TemplateException, IOException {
        for (Throwable cause = fault; cause != null; cause = cause.getCause()) {
            if (cause instanceof TemplateFault ours) {
                throw ours;
            }
            if (cause instanceof StackOverflowError) {
                throw endless(seen, "this template uses itself without end");
            }
            if (cause instanceof OutOfMemoryError) {
                throw endless(seen, "this template needs more memory than there is");
            }
            if (cause instanceof SecurityException) {
                throw new TemplateFault(template.getName(), 1, 1, "a template here is a link out of the folder of templates");
            }
        }
        if (fault instanceof TemplateException said) {
            throw said;
        }
        if (fault instanceof IOException disk) {
            throw disk;
        }
        if (fault instanceof RuntimeException odd) {
            throw odd;
        }
        return text.toString();
    }

    /** Freemarker's question, and so a step. */
    @Override
    public boolean isInterrupted() {
        if (Thread.currentThread() == this && ++steps % LOOK_EVERY == 0) {
            Environment now = Environment.getCurrentEnvironment();
            seen = new TemplateException("", now);
            if (_CoreAPI.getInstructionStackSnapshot(now).length > DEEPEST) {
                throw endless(seen, "this template uses itself without end");
            }
            if (steps > MOST_STEPS) {
                throw endless(seen, "this template goes on without end");
            }
        }
        return super.isInterrupted();
    }

    private TemplateFault endless(@Nullable TemplateException at, String says) {
        return at == null || at.getTemplateSourceName() == null || at.getLineNumber() == null
                ? new TemplateFault(template.getName(), 1, 1, says, true)
                : new TemplateFault(at.getTemplateSourceName(), at.getLineNumber(), at.getColumnNumber(), says, true);
    }

    /** What was written so far. */
    private final class Page extends Writer {

        private final StringBuilder text = new StringBuilder(32 * 1024);

        @Override
        public void write(char[] characters, int from, int length) {
            if (text.length() + length > MOST_CHARACTERS) {
                throw endless(new TemplateException("", Environment.getCurrentEnvironment()),
                        "this template makes a page of more than 20 million characters");
            }
            text.append(characters, from, length);
        }

        @Override
        public void flush() {
        }

        @Override
        public void close() {
        }

        @Override
        public String toString() {
            return text.toString();
        }
    }
}
