package understorey.publish;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.publish.PublisherTest.files;
import static understorey.publish.PublisherTest.page;
import static understorey.publish.PublisherTest.pages;
import static understorey.publish.PublisherTest.published;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.function.BiPredicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import understorey.Tree;
import understorey.pages.Page;

/** What stays whole when builds fail, are killed, run at once, or make one trip only. */
class SafePublishingTest {

    private static final BiPredicate<String, String> NOTHING = (file, audience) -> false;

    @TempDir
    private Path home;
    private Path site;

    @BeforeEach
    void nameTheFolder() {
        site = home.resolve("site");
    }

    @Test
    void changesNothingWhereANewFileCannotBeMade() throws Exception {
        publish("index.html", "old/index.html");
        List<Page> pages = List.of(new Page("index.html", "other"), page("glade/index.html"), new Page("wood/index.html", (byte[]) null));
        var before = Tree.withTimes(site);
        assertThrows(NullPointerException.class, () -> published(pages, site, "public", NOTHING));
        assertEquals(before, Tree.withTimes(site));
    }

    @Test
    void showsNoPageBeforeAllAreStagedAndLeavesNothingOfABuildThatStops() throws Exception {
        publish("index.html");
        var before = Tree.withTimes(site);
        try (Publisher half = Publisher.open(site, "private", null)) {
            half.stage(1, List.of(new Page("wood/index.html", "new")));
            half.stage(0, List.of(new Page("index.html", "new")));
            assertEquals("of index.html", Files.readString(site.resolve("index.html")));
            assertFalse(Files.exists(site.resolve("wood")));
        }
        assertEquals(before, Tree.withTimes(site));
        try (Publisher half = Publisher.open(home.resolve("deep/new"), "private", null)) {
            half.stage(0, pages("index.html"));
        }
        assertFalse(Files.exists(home.resolve("deep")), "nor a folder that was made for it");
    }

    @Test
    void saysTheFirstFaultInTheOrderOfThePages() throws Exception {
        try (Publisher faulty = Publisher.open(site, "private", null)) {
            assertFalse(faulty.stage(2, pages("../two.html")));
            assertFalse(faulty.stage(1, pages("../one.html")));
            assertTrue(faulty.stage(0, pages("index.html")));
            assertEquals("'../one.html' is not a valid page name",
                    assertThrows(Refusal.class, () -> faulty.publish(NOTHING)).getMessage());
        }
        assertFalse(Files.exists(site));
    }

    @Test
    void sweepsAwayWhatAKilledRunLeftAndNothingOfTheUsers() throws Exception {
        publish("index.html");
        Files.writeString(site.resolve(".understorey-new"), "half a pa");
        Files.writeString(site.resolve(".understorey-new-0a1b2c3d-17"), "half a pa");
        Files.writeString(site.resolve(".understorey-lock"), "");
        Files.writeString(site.resolve(".understorey-new-plans"), "mine");
        Files.createDirectory(site.resolve(".understorey-new-0a1b2c3d-18"));
        publish("index.html");
        assertEquals(List.of(".understorey-files", ".understorey-new-plans", "index.html"), files(site));
        assertTrue(Files.isDirectory(site.resolve(".understorey-new-0a1b2c3d-18")));
    }

    @Test
    void waitsForAnotherBuildAndGivesUpWithOneSentence() throws Exception {
        publish("index.html");
        Path lock = site.resolve(FolderLock.FILE);
        CountDownLatch taken = new CountDownLatch(1);
        CountDownLatch done = new CountDownLatch(1);
        Thread holder = new Thread(() -> {
            try (FolderLock held = FolderLock.take(site, 0)) {
                assertTrue(Files.exists(lock), held.toString());
                taken.countDown();
                done.await();
            } catch (Exception fault) {
                throw new IllegalStateException(fault);
            }
        });
        holder.start();
        taken.await();
        Refusal refusal = assertThrows(Refusal.class,
                () -> Publisher.open(site, 0, "private", null));
        assertEquals("another build is writing into '" + site + "': try again when it has ended", refusal.getMessage());
        assertFalse(Files.exists(site.resolve("wood")));
        done.countDown();
        holder.join();
        assertEquals(1, publish("index.html", "wood/index.html").written());
        assertFalse(Files.exists(lock));
    }

    @Test
    void neverMixesTwoSitesThatAreWrittenAtOnce() throws Exception {
        List<Page> one = new ArrayList<>();
        List<Page> two = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            one.add(new Page("a" + i % 3 + "/p" + i + ".html", "one"));
            two.add(new Page("a" + i % 5 + "/p" + i + ".html", "two"));
        }
        for (int round = 0; round < 10; round++) {
            Thread other = new Thread(() -> assertDoesNotThrow(() -> published(two, site, "private", NOTHING)));
            other.start();
            published(one, site, "private", NOTHING);
            other.join();
            List<String> found = files(site);
            String text = Files.readString(site.resolve("a0/p0.html"));
            List<Page> last = text.equals("one") ? one : two;
            List<String> expected = Stream.concat(Stream.of(".understorey-files"), last.stream().map(Page::path)).sorted().toList();
            assertEquals(expected, found);
            for (Page page : last) {
                assertEquals(text, Files.readString(site.resolve(page.path())));
            }
        }
    }

    @Test
    void writesTheTripThatIsAskedForAndLeavesTheRest() throws Exception {
        publish("index.html", "wood/index.html", "glade/index.html", "sites/a.html");
        List<Page> pages = List.of(new Page("index.html", "small"), new Page("wood/index.html", "new"), page("sites/b.html"));
        assertEquals(new Publisher.Outcome(2, 0, 0), published(pages, Publisher.open(site, "private", "wood"), NOTHING));
        assertEquals("new", Files.readString(site.resolve("wood/index.html")));
        assertEquals("of index.html", Files.readString(site.resolve("index.html")));
        assertEquals("# for private\nglade/index.html\nindex.html\nsites/a.html\nsites/b.html\nwood/index.html\n",
                Files.readString(site.resolve(Publisher.LIST)));
        Refusal refusal = assertThrows(Refusal.class, () -> published(pages, Publisher.open(site, "public", "wood"), NOTHING));
        assertTrue(refusal.getMessage().contains("holds pages for another audience"), refusal.getMessage());
    }

    @Test
    void makesAWholeSiteOfOneTripWhereThereIsNone() throws Exception {
        published(pages("index.html", "wood/index.html"), Publisher.open(site, "private", "wood"), NOTHING);
        assertEquals(List.of(".understorey-files", "index.html", "wood/index.html"), files(site));
    }

    @Test
    void namesTheFolderThatCannotBeWritten() throws Exception {
        Path file = Files.writeString(home.resolve("file"), "mine");
        FileSystemException fault = assertThrows(FileSystemException.class,
                () -> published(pages("index.html"), file.resolve("site"), "private", NOTHING));
        assertEquals(file.resolve("site").toString(), fault.getFile());
        IOException denied = new OutFolder(site).fault(new AccessDeniedException(site.resolve(FolderLock.FILE).toString()));
        assertEquals(site.toString(), ((AccessDeniedException) denied).getFile());
        IOException full = new OutFolder(site).fault(new IOException("No space left on device"));
        assertEquals(site + ": No space left on device", full.getMessage());
    }

    @Test
    void goesIntoAFolderThatALinkNames() throws Exception {
        Path real = Files.createDirectory(home.resolve("real"));
        Files.createSymbolicLink(site, real);
        publish("index.html", "wood/index.html");
        assertEquals(List.of(".understorey-files", "index.html", "wood/index.html"), files(real));
    }

    private Publisher.Outcome publish(String... paths) throws Refusal, IOException {
        return published(pages(paths), site, "private", NOTHING);
    }
}
