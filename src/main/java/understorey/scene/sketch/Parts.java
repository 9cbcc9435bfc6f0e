package understorey.scene.sketch;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** One line of {@code plants.txt}: parts, each a word and figures or names; a word may come several times. */
record Parts(Map<Word, List<List<String>>> parts) {

    /** A word of that file, in small letters there. */
    enum Word {
        BLOSSOM, HEAD, TREE, FOLIAGE, TUBE, VEINS, PETALS, LEAVES, STAMENS, SPECKS, EYE, DISC, ONE, DOME, ALONG, STEM, AT, SPREAD, ROUND, SIDE, SPIRE, TWO,
        PITCH, SIZE, STALK, BUDS, BUD, LEAF;

        static Word of(String word) {
            return valueOf(word.toUpperCase(Locale.ROOT));
        }
    }

    static Parts of(String text) {
        return new Parts(Arrays.stream(text.split("\\|")).map(part -> List.of(part.strip().split("[ ,]+"))).collect(Collectors.groupingBy(
                part -> Word.of(part.get(0)), () -> new EnumMap<>(Word.class),
                Collectors.mapping(part -> part.subList(1, part.size()), Collectors.toList()))));
    }

    boolean has(Word word) {
        return parts.containsKey(word);
    }

    List<List<String>> all(Word word) {
        return parts.getOrDefault(word, List.of());
    }

    /** The figures of a part, or others where it is missing. */
    double[] figures(Word word, double... otherwise) {
        return has(word) ? all(word).get(0).stream().mapToDouble(Double::parseDouble).toArray() : otherwise;
    }
}
