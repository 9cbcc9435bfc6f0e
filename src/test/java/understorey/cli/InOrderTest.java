package understorey.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class InOrderTest {

    @Test
    void givesResultsInTheOrderOfTheListWhenLaterOnesAreDoneFirst() {
        CountDownLatch third = new CountDownLatch(1);
        try (InOrder<Integer, String> results = new InOrder<>(List.of(1, 2, 3, 4), 3, item -> {
            if (item == 3) {
                third.countDown();
            }
            return item + (waits(third) ? " of 4" : " alone");
        })) {
            List<String> all = new ArrayList<>();
            results.forEachRemaining(all::add);
            assertEquals(List.of("1 of 4", "2 of 4", "3 of 4", "4 of 4"), all);
            assertThrows(NoSuchElementException.class, results::next);
        }
    }

    @Test
    void beginsFewItemsAheadOfTheOneThatIsAskedFor() {
        int[] begun = {0};
        Iterator<Integer> counted = IntStream.range(0, 1000).peek(item -> begun[0]++).iterator();
        try (InOrder<Integer, Integer> results = new InOrder<>(() -> counted, 2, item -> item)) {
            assertEquals(0, begun[0]);
            for (int item = 0; item < 10; item++) {
                assertEquals(item, results.next());
                assertEquals(item + 4, begun[0]);
            }
        }
    }

    @Test
    void throwsWhatTheWorkThrowsAtItsTurn() {
        Error fault = new StackOverflowError();
        try (InOrder<Integer, Integer> results = new InOrder<>(List.of(6, 0, 1), 2, item -> {
            if (item == 1) {
                throw fault;
            }
            return 6 / item;
        })) {
            assertEquals(1, results.next());
            assertThrows(ArithmeticException.class, results::next);
            assertSame(fault, assertThrows(StackOverflowError.class, results::next));
            assertFalse(results.hasNext());
        }
    }

    @Test
    void waitsAtTheEndForWhatIsUnderWay() {
        CountDownLatch begun = new CountDownLatch(1);
        AtomicBoolean ended = new AtomicBoolean();
        try (InOrder<Integer, Integer> results = new InOrder<>(List.of(0, 1), 2, item -> {
            if (item == 1) {
                begun.countDown();
                waits(new CountDownLatch(1));
                ended.set(true);
            }
            return item;
        })) {
            assertEquals(0, results.next());
            assertTrue(waits(begun));
        }
        assertTrue(ended.get());
    }

    private static boolean waits(CountDownLatch latch) {
        try {
            latch.await();
            return true;
        } catch (InterruptedException stop) {
            return false;
        }
    }
}
