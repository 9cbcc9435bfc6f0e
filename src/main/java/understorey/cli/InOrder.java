package understorey.cli;

import java.util.ArrayDeque;
import java.util.Iterator;
import java.util.NoSuchElementException;
import java.util.Queue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;

/**
 * Work on the items of a list by several threads, its results in the order of the list. Twice as many items as threads are
 * under way or done at a time, so that a list of any length needs the memory of a few.
 *
 * @param <T> an item
 * @param <R> a result
 */
final class InOrder<T, R> implements Iterator<R>, AutoCloseable {

    private final Iterator<T> items;
    private final Function<T, R> work;
    private final ExecutorService pool;
    private final int most;
    private final Queue<Future<R>> begun = new ArrayDeque<>();

    InOrder(Iterable<T> items, int threads, Function<T, R> work) {
        this.items = items.iterator();
        this.work = work;
        this.pool = Executors.newFixedThreadPool(threads);
        this.most = 2 * threads;
    }

    @Override
    public boolean hasNext() {
        return !begun.isEmpty() || items.hasNext();
    }

    /** The next result; what the work throws is thrown here. */
    @Override
    public R next() {
        if (!hasNext()) {
            throw new NoSuchElementException();
        }
        while (begun.size() < most && items.hasNext()) {
            T item = items.next();
            begun.add(pool.submit(() -> work.apply(item)));
        }
        try {
            return begun.remove().get();
        } catch (ExecutionException fault) {
            if (fault.getCause() instanceof Error error) {
                throw error;
            }
            throw fault.getCause() instanceof RuntimeException odd ? odd : new IllegalStateException(fault.getCause());
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(stop);
        }
    }

    /** Begins no more items, and waits for those under way. */
    @Override
    public void close() {
        pool.shutdownNow();
        try {
            while (!pool.awaitTermination(1, TimeUnit.MINUTES)) {
                continue;
            }
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
        }
    }
}
