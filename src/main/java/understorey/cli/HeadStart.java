package understorey.cli;

import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import understorey.pages.SitePages;
import understorey.reading.Plans;
import understorey.reading.PlansReader;

/**
 * What a build needs in any case, begun on other cores while the command line is read: the built-in templates, and
 * the plans of the folder that the command line most likely names. A wrong guess costs nothing but the guess.
 */
final class HeadStart {

    private final Path folder;
    private final CompletableFuture<Plans> plans;
    private final CompletableFuture<SitePages> pages;

    private HeadStart(Path folder) {
        this.folder = folder;
        this.plans = CompletableFuture.supplyAsync(() -> PlansReader.read(folder));
        this.pages = CompletableFuture.supplyAsync(() -> SitePages.open(null));
    }

    /** Begins where the first word is {@code build}; null for any other command line. */
    static HeadStart of(String[] arguments) {
        if (arguments.length == 0 || !arguments[0].equals(BuildCommand.NAME)) {
            return null;
        }
        boolean named = arguments.length > 1 && !arguments[1].startsWith("-") && !arguments[1].startsWith("@")
                && !arguments[1].isBlank();
        try {
            return new HeadStart(Path.of(named ? arguments[1] : Command.PLANS));
        } catch (java.nio.file.InvalidPathException odd) {
            return null;
        }
    }

    /** The plans of a folder: those begun, or read now. */
    static Plans plans(HeadStart head, Path asked) {
        return head != null && head.folder.equals(asked) ? joined(head.plans) : PlansReader.read(asked);
    }

    /** Pages by the user's own templates, or by the built-in ones begun. */
    static SitePages pages(HeadStart head, Path templates) {
        return head != null && templates == null ? joined(head.pages) : SitePages.open(templates);
    }

    /** The result, or the fault that the work came to. */
    private static <T> T joined(CompletableFuture<T> work) {
        try {
            return work.join();
        } catch (CompletionException wrapped) {
            if (wrapped.getCause() instanceof RuntimeException fault) {
                throw fault;
            }
            throw wrapped;
        }
    }
}
