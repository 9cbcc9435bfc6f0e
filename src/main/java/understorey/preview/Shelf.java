package understorey.preview;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterOutputStream;
import org.jspecify.annotations.Nullable;
import understorey.pages.Page;

/**
 * The last good pages, in memory, and what is wrong with the plans since then. Several threads may put and take pages.
 * Pages are packed: of a hundred trips they take about 10 MB.
 */
public final class Shelf {

    private record Packed(String tag, byte[] bytes) {
    }

    /**
     * What a browser shows.
     *
     * @param tag    of its page, which differs when the page does; empty for none
     * @param faults over the page; empty for none
     */
    public record Shown(String tag, String faults) {
    }

    private final Map<String, Packed> pages = new HashMap<>();
    private String faults = "";
    private boolean closed;

    /** Puts pages in the place of those with the same names; browsers that show one of these hear of it at once. */
    public void put(List<Page> made) {
        for (Page page : made) {
            String tag = tag(page.bytes());
            if (!tag(page.path()).equals(tag)) {
                Packed packed = new Packed(tag, pack(page.bytes()));
                synchronized (this) {
                    pages.put(page.path(), packed);
                    notifyAll();
                }
            }
        }
    }

    /** Removes all other pages. */
    public synchronized void keepOnly(Predicate<String> names) {
        pages.keySet().removeIf(names.negate());
        notifyAll();
    }

    /** What to show over the pages from now on. */
    public synchronized void faults(String text) {
        faults = text;
        notifyAll();
    }

    /** A page; null for a name that none has. */
    public byte @Nullable [] page(String name) {
        Packed packed;
        synchronized (this) {
            packed = pages.get(name);
        }
        return packed == null ? null : unpack(packed.bytes());
    }

    /** Tag of a page as it is now; empty for none. */
    synchronized String tag(String name) {
        Packed packed = pages.get(name);
        return packed == null ? "" : packed.tag();
    }

    /** What a browser is to show, as soon as it differs from what it shows; the same after a while, and at the end. */
    public synchronized Shown await(String name, Shown known, long longestMs) throws InterruptedException {
        Shown now = new Shown(tag(name), faults);
        if (now.equals(known) && !closed) {
            wait(longestMs);
            now = new Shown(tag(name), faults);
        }
        return now;
    }

    synchronized boolean isClosed() {
        return closed;
    }

    /** Lets all who wait go on. */
    synchronized void close() {
        closed = true;
        notifyAll();
    }

    private static String tag(byte[] bytes) {
        CRC32 sum = new CRC32();
        sum.update(bytes);
        return Long.toHexString(sum.getValue()) + "-" + Integer.toHexString(bytes.length);
    }

    private static byte[] pack(byte[] bytes) {
        Deflater fast = new Deflater(Deflater.BEST_SPEED);
        ByteArrayOutputStream packed = new ByteArrayOutputStream(bytes.length / 4);
        try (DeflaterOutputStream out = new DeflaterOutputStream(packed, fast)) {
            out.write(bytes);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        } finally {
            fast.end();
        }
        return packed.toByteArray();
    }

    private static byte[] unpack(byte[] packed) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(packed.length * 6);
        try (InflaterOutputStream out = new InflaterOutputStream(bytes)) {
            out.write(packed);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }
}
