package understorey.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.BiPredicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import understorey.pages.Page;

class PublisherTest {

    private static final BiPredicate<String, String> NOTHING = (file, audience) -> false;
    private static final FileTime LONG_AGO = FileTime.fromMillis(1_000_000_000_000L);

    /** A name that can be asked for, in a folder that cannot be made: the file beside it is in the way. */
    private static final String UNWRITABLE = "new/index.html/x.html";

    @TempDir
    private Path home;
    private Path site;

    @BeforeEach
    void nameTheFolder() {
        site = home.resolve("site");
    }

    @Test
    void makesANewFolderAndFillsAnEmptyOne() throws Exception {
        assertEquals(new Publisher.Outcome(2, 0, 0), publish("index.html", "wood/index.html"));
        assertEquals(List.of(".understorey-files", "index.html", "wood/index.html"), files(site));
        Path empty = Files.createDirectory(home.resolve("empty"));
        published(pages("index.html"), empty, "private", NOTHING);
        assertEquals("of index.html", Files.readString(empty.resolve("index.html")));
    }

    @Test
    void writesItsListSortedBelowTheAudience() throws Exception {
        publish("wood/index.html", "index.html");
        assertEquals("# for private\nindex.html\nwood/index.html\n", list());
    }

    @Test
    void leavesTheTimeOfWhatIsUnchanged() throws Exception {
        publish("index.html", "wood/index.html");
        for (String file : files(site)) {
            Files.setLastModifiedTime(site.resolve(file), LONG_AGO);
        }
        List<Page> pages = List.of(page("index.html"), new Page("wood/index.html", "other"));
        assertEquals(new Publisher.Outcome(1, 1, 0), published(pages, site, "private", NOTHING));
        assertEquals(LONG_AGO, Files.getLastModifiedTime(site.resolve("index.html")));
        assertEquals(LONG_AGO, Files.getLastModifiedTime(site.resolve(Publisher.LIST)));
        assertTrue(Files.getLastModifiedTime(site.resolve("wood/index.html")).compareTo(LONG_AGO) > 0);
        assertEquals("other", Files.readString(site.resolve("wood/index.html")));
    }

    @Test
    void deletesWhatItMadeAndNoPlanMakesAnyMoreWithTheFolderLeftEmpty() throws Exception {
        publish("index.html", "old/index.html", "old/deep/er.html", "kept/index.html");
        Files.writeString(site.resolve("kept/mine.txt"), "mine");
        Files.writeString(site.resolve("mine.txt"), "mine");
        assertEquals(new Publisher.Outcome(0, 1, 3), publish("index.html"));
        assertEquals(List.of(".understorey-files", "index.html", "kept/mine.txt", "mine.txt"), files(site));
        assertFalse(Files.exists(site.resolve("old")));
        assertEquals("# for private\nindex.html\n", list());
    }

    @Test
    void keepsAndListsWhatItIsAskedToKeep() throws Exception {
        publish("index.html", "faulty/index.html", "gone/index.html");
        List<String> asked = new ArrayList<>();
        Publisher.Outcome outcome = published(pages("index.html"), site, "public", (file, audience) -> {
            asked.add(file + " for " + audience);
            return file.startsWith("faulty/");
        });
        assertEquals(new Publisher.Outcome(0, 1, 1), outcome);
        assertEquals(List.of("faulty/index.html for private", "gone/index.html for private"), asked);
        assertEquals("# for public\nfaulty/index.html\nindex.html\n", list());
        assertTrue(Files.exists(site.resolve("faulty/index.html")));
    }

    @Test
    void doesNotListWhatTheUserTookAway() throws Exception {
        publish("index.html", "faulty/index.html");
        Files.delete(site.resolve("faulty/index.html"));
        published(pages("index.html"), site, "private", (file, audience) -> true);
        assertEquals("# for private\nindex.html\n", list());
    }

    @Test
    void refusesAFolderThatItDidNotMake() throws Exception {
        Files.createDirectory(site);
        Files.writeString(site.resolve("letter.txt"), "mine");
        refuses("is not empty and was not made by this tool", "index.html");
        assertEquals(List.of("letter.txt"), files(site));
    }

    @Test
    void refusesAFile() throws Exception {
        Files.writeString(site, "mine");
        refuses("is a file, not a folder", "index.html");
        assertEquals("mine", Files.readString(site));
    }

    @Test
    void refusesToWriteOverAFileOfTheUsersInItsOwnFolder() throws Exception {
        publish("index.html");
        Files.createDirectory(site.resolve("wood"));
        Files.writeString(site.resolve("wood/index.html"), "mine");
        refuses("was not made by this tool and would be overwritten", "index.html", "wood/index.html");
        assertEquals("mine", Files.readString(site.resolve("wood/index.html")));
    }

    @Test
    void refusesAFileWhereAFolderBelongsAndAFolderWhereAPageBelongs() throws Exception {
        publish("index.html");
        Files.writeString(site.resolve("wood"), "mine");
        refuses("is a file where pages need a folder", "wood/index.html");
        Files.createDirectories(site.resolve("glade/index.html"));
        refuses("is a folder where a page needs a file", "glade/index.html");
        assertEquals("mine", Files.readString(site.resolve("wood")));
    }

    @Test
    void refusesTwoPagesOfOnePathBeforeItWritesAny() throws Exception {
        refuses("two pages need the same file 'b.html'", "a.html", "b.html", "b.html");
        assertFalse(Files.exists(site));
    }

    @Test
    void refusesNamesThatOneDiskTakesForOneAndNamesThatAreTooLong() throws Exception {
        refuses("the pages 'sites/Wood.html' and 'sites/wood.html' differ in capitals only", "sites/Wood.html", "sites/wood.html");
        refuses("is too long for a file", "sites/" + "w".repeat(251) + ".html");
        publish("sites/" + "w".repeat(250) + ".html");
    }

    @Test
    void refusesAPageWhoseNameLeadsOutOfTheFolder() throws Exception {
        for (String path : List.of("../b.html", "a/../../b.html", "/b.html", "a//b.html", ".understorey-files",
                "c:/b.html", "a\\b.html", "")) {
            refuses("is not a valid page name", path);
        }
        assertEquals(List.of(), files(home));
    }

    @Test
    void writesThroughNoLink() throws Exception {
        publish("index.html");
        Path elsewhere = Files.createDirectory(home.resolve("elsewhere"));
        Path letter = Files.writeString(home.resolve("letter.txt"), "mine");
        Files.createSymbolicLink(site.resolve("wood"), elsewhere);
        refuses("is a link", "index.html", "wood/index.html");
        Files.delete(site.resolve("wood"));
        Files.delete(site.resolve("index.html"));
        Files.createSymbolicLink(site.resolve("index.html"), letter);
        refuses("is a link", "index.html");
        Files.delete(site.resolve("index.html"));
        Files.createSymbolicLink(site.resolve(".understorey-new"), letter);
        publish("index.html");
        assertEquals("mine", Files.readString(letter));
        assertEquals(List.of(), files(elsewhere));
    }

    @Test
    void deletesThroughNoLink() throws Exception {
        publish("index.html", "wood/index.html");
        Path elsewhere = Files.createDirectory(home.resolve("elsewhere"));
        Files.writeString(elsewhere.resolve("index.html"), "mine");
        Files.delete(site.resolve("wood/index.html"));
        Files.delete(site.resolve("wood"));
        Files.createSymbolicLink(site.resolve("wood"), elsewhere);
        assertEquals(0, publish("index.html").deleted());
        assertEquals("mine", Files.readString(elsewhere.resolve("index.html")));
    }

    @Test
    void followsNoNameOfItsListThatLeadsElsewhere() throws Exception {
        publish("index.html", "wood/index.html");
        Path letter = Files.writeString(home.resolve("letter.txt"), "mine");
        Path own = Files.writeString(site.resolve("own.txt"), "mine");
        Files.writeString(site.resolve(Publisher.LIST), String.join("\n", "# for private", "../letter.txt",
                letter.toString(), own.toAbsolutePath().toString(), "wood/../own.txt", "./own.txt", "wood/../../letter.txt",
                "", "  ", "nul\u0000.txt", "index.html", "wood") + "\n");
        publish("index.html");
        assertEquals("mine", Files.readString(letter));
        assertEquals("mine", Files.readString(own));
        assertTrue(Files.exists(site.resolve("wood/index.html")), "a folder is never deleted with what is in it");
        assertEquals("# for private\nindex.html\n", list());
    }

    @Test
    void readsAListThatIsNoText() throws Exception {
        publish("index.html");
        Files.write(site.resolve(Publisher.LIST), new byte[] {(byte) 0xff, (byte) 0xfe, 0, '\n', 'i'});
        assertEquals(new Publisher.Outcome(0, 1, 0), publish("index.html"));
    }

    @Test
    void forgetsNothingOfARunThatWasCutOff() throws Exception {
        publish("index.html", "old/index.html");
        assertThrows(IOException.class, () -> published(pages("index.html", "new/index.html", UNWRITABLE), site,
                "public", NOTHING));
        assertTrue(Files.exists(site.resolve("new/index.html")));
        assertEquals("index.html\nnew/index.html\n" + UNWRITABLE + "\nold/index.html\n", list(),
                "and whom they are for is not certain");
        assertEquals(new Publisher.Outcome(0, 1, 2), publish("index.html"));
        assertEquals(List.of(".understorey-files", "index.html"), files(site));
    }

    @Test
    void beginsAgainWhereAFirstRunWasCutOffBeforeItsList() throws Exception {
        Files.createDirectory(site);
        Files.writeString(site.resolve(".understorey-new"), "# for pri");
        assertEquals(new Publisher.Outcome(1, 0, 0), publish("index.html"));
        assertEquals(List.of(".understorey-files", "index.html"), files(site));
    }

    private Publisher.Outcome publish(String... paths) throws Refusal, IOException {
        return published(pages(paths), site, "private", NOTHING);
    }

    private void refuses(String says, String... paths) throws IOException {
        List<String> before = files(home);
        Refusal refusal = assertThrows(Refusal.class, () -> publish(paths));
        assertTrue(refusal.getMessage().contains(says), refusal.getMessage());
        assertEquals(before, files(home));
    }

    private String list() throws IOException {
        return Files.readString(site.resolve(Publisher.LIST));
    }

    /** Publishes a whole site at once. */
    static Publisher.Outcome published(List<Page> pages, Path site, String audience, BiPredicate<String, String> keepOld)
            throws Refusal, IOException {
        return published(pages, Publisher.open(site, audience, null), keepOld);
    }

    static Publisher.Outcome published(List<Page> pages, Publisher site, BiPredicate<String, String> keepOld)
            throws Refusal, IOException {
        try (site) {
            site.stage(0, pages);
            return site.publish(keepOld);
        }
    }

    static List<Page> pages(String... paths) {
        return Stream.of(paths).map(PublisherTest::page).toList();
    }

    static Page page(String path) {
        return new Page(path, "of " + path);
    }

    /** The files below a folder; links are not followed. */
    static List<String> files(Path folder) throws IOException {
        TreeMap<String, Path> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            all.filter(path -> !Files.isDirectory(path) && !Files.isSymbolicLink(path))
                    .forEach(path -> files.put(folder.relativize(path).toString().replace('\\', '/'), path));
        }
        return List.copyOf(files.keySet());
    }
}
