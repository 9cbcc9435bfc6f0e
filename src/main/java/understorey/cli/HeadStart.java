package understorey.cli;

import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import understorey.pages.SitePages;
import understorey.reading.Plans;
import understorey.reading.PlansReader;

/**
 * Work that every build needs, started on other cores while the command line is read: opening the built-in templates,
 * and reading the plans of the folder that the command line most likely names. A wrong guess is not used.
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

    /** Starts the work if the first word is {@code build}; null for any other command line. */
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

    /** Plans of a folder: from the work already started, or read now. */
    static Plans plans(HeadStart head, Path asked) {
        return head != null && head.folder.equals(asked) ? joined(head.plans) : PlansReader.read(asked);
    }

    /** Pages with the user's own templates, or with the built-in ones already started. */
    static SitePages pages(HeadStart head, Path templates) {
        return head != null && templates == null ? joined(head.pages) : SitePages.open(templates);
    }

    /** Result of the work; throws the fault that ended it. */
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
