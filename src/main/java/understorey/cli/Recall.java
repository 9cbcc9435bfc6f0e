package understorey.cli;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/** Makes something, or gives back what it made before from the same things. Several threads may ask at once. */
interface Recall {

    /** Keeps nothing: what is built once needs no memory. */
    Recall NOTHING = new Recall() {
        @Override
        public <T> T of(Class<T> type, String name, List<?> from, Supplier<T> make) {
            return make.get();
        }
    };

    /**
     * One thing.
     *
     * @param name of this thing among others of its type
     * @param from all that it is made from
     */
    <T> T of(Class<T> type, String name, List<?> from, Supplier<T> make);

    /** Keeps the last thing of each name. */
    final class Latest implements Recall {

        private record Key(Class<?> type, String name) {
        }

        private record Made(List<?> from, Object thing) {
        }

        private final Map<Key, Made> made = new ConcurrentHashMap<>();

        @Override
        public <T> T of(Class<T> type, String name, List<?> from, Supplier<T> make) {
            Key key = new Key(type, name);
            Made before = made.get(key);
            if (before != null && before.from().equals(from)) {
                return type.cast(before.thing());
            }
            made.remove(key);
            T thing = make.get();
            made.put(key, new Made(from, thing));
            return thing;
        }

        /** Forgets what has another name. */
        void keepOnly(Set<String> names) {
            made.keySet().removeIf(key -> !names.contains(key.name()));
        }
    }
}
