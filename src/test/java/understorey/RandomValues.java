package understorey;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Values at and near the limits that the readers allow, written as YAML. */
final class RandomValues {

    private final Random random;

    RandomValues(long seed) {
        this.random = new Random(seed);
    }

    /** A block of keys that can be filled in one chain of calls. */
    final class Block {

        private final Map<String, Object> entries = new LinkedHashMap<>();

        Block put(String key, Object value) {
            if (value != null) {
                entries.put(key, value);
            }
            return this;
        }

        /** A key that is there half the time. */
        Block maybe(String key, Object value) {
            return chance(2) ? put(key, value) : this;
        }

        /** A key that is there once in {@code times}. */
        Block seldom(int times, String key, Object value) {
            return chance(times) ? put(key, value) : this;
        }

        /** In braces on one line. */
        String flow() {
            List<String> parts = new ArrayList<>();
            entries.forEach((key, value) -> parts.add(key + ": " + RandomValues.flow(value)));
            return "{" + String.join(", ", parts) + "}";
        }

        /** One key a line, the entries of a list one a line. */
        String lines() {
            StringBuilder out = new StringBuilder();
            entries.forEach((key, value) -> {
                if (value instanceof List<?> list && !list.isEmpty() && list.get(0) instanceof Block) {
                    out.append(key).append(":\n");
                    list.forEach(item -> out.append("  - ").append(RandomValues.flow(item)).append('\n'));
                } else {
                    out.append(key).append(": ").append(RandomValues.flow(value)).append('\n');
                }
            });
            return out.toString();
        }
    }

    Block block() {
        return new Block();
    }

    /** True once in so many times. */
    boolean chance(int times) {
        return random.nextInt(times) == 0;
    }

    int upTo(int most) {
        return random.nextInt(most + 1);
    }

    @SafeVarargs
    final <T> T any(T... values) {
        return values[random.nextInt(values.length)];
    }

    <T> T any(List<T> values) {
        return values.get(random.nextInt(values.size()));
    }

    /** A limit, just inside one, or anything between them. */
    double number(double least, double most) {
        double step = Math.min(0.001, (most - least) / 1000);
        return switch (random.nextInt(8)) {
            case 0, 1 -> least;
            case 2, 3 -> most;
            case 4 -> least + step;
            case 5 -> most - step;
            case 6 -> least + random.nextDouble() * (most - least);
            default -> between(least, most);
        };
    }

    /** As small as it is large: even in the logarithm where both limits are above zero. */
    private double between(double least, double most) {
        return least > 0 ? least * Math.pow(most / least, random.nextDouble())
                : least + Math.pow(random.nextDouble(), 4) * (most - least);
    }

    int whole(int least, int most) {
        return (int) Math.rint(number(least, most));
    }

    /** A number with a unit behind it. */
    String of(double least, double most, String unit) {
        return written(number(least, most)) + " " + unit;
    }

    String clock() {
        return chance(3) ? any("00:00", "00:01", "12:00", "23:58", "23:59")
                : String.format("%02d:%02d", random.nextInt(24), random.nextInt(60));
    }

    Object bearing() {
        return chance(2) ? any("N", "ENE", "NbW", "SW") : written(number(0, 360));
    }

    /** No exponent, no more digits than a reader takes. */
    static String written(double value) {
        return BigDecimal.valueOf(value).setScale(6, java.math.RoundingMode.HALF_EVEN).stripTrailingZeros()
                .toPlainString();
    }

    private static String flow(Object value) {
        if (value instanceof Block block) {
            return block.flow();
        }
        if (value instanceof List<?> list) {
            return list.stream().map(RandomValues::flow).toList().toString();
        }
        if (value instanceof Number number) {
            return written(number.doubleValue());
        }
        String text = value.toString();
        return text.matches("[A-Za-z0-9][A-Za-z0-9./ °%²-]*") ? text : '"' + text + '"';
    }
}
