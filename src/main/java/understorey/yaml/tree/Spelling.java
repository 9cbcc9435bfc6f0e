package understorey.yaml.tree;

import java.util.Map;

/** Words that are spelt in two ways. */
public final class Spelling {

    private static final Map<String, String> AMERICAN = Map.of("color", "colour", "diopters", "dioptres", "gray", "grey",
            "polarizer", "polariser", "stabilized", "stabilised");

    private Spelling() {
    }

    /** A key or a word in small letters as the format spells it; any other word as it is. */
    public static String british(String word) {
        return AMERICAN.getOrDefault(word, word);
    }
}
