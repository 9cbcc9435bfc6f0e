package understorey.scene.sketch;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import understorey.plan.FieldGuide;

/** The flowers and trees of {@code plants.txt}, as they are drawn. */
final class Flora {

    static final Flora BUILT_IN = new Flora();

    private final Map<String, Blossom> blossoms = new HashMap<>();
    private final Map<String, Parts> heads = new HashMap<>();
    private final Map<FieldGuide.LeafForm, Blossom> foliage = new EnumMap<>(FieldGuide.LeafForm.class);
    private final List<Bark.Tree> trees = new ArrayList<>();

    private Flora() {
        text().lines().filter(line -> !line.startsWith("#")).forEach(line -> {
            String[] sides = line.split(" = ");
            String[] named = sides[0].split(" ");
            switch (Parts.Word.of(named[0])) {
                case HEAD -> heads.put(named[1], Parts.of(sides[1]));
                case FOLIAGE -> foliage.put(FieldGuide.LeafForm.valueOf(named[1].replace('-', '_').toUpperCase(Locale.ROOT)), Blossom.of(Parts.of(sides[1])));
                case TREE -> trees.add(new Bark.Tree(named[1], Bark.valueOf(sides[1].toUpperCase(Locale.ROOT))));
                default -> blossoms.put(named[1], Blossom.of(Parts.of(sides[1])));
            }
        });
    }

    private static String text() {
        try (InputStream in = Objects.requireNonNull(Flora.class.getResourceAsStream("plants.txt"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unread) {
            throw new UncheckedIOException(unread);
        }
    }

    Blossom blossom(String name) {
        return Objects.requireNonNull(blossoms.get(name), name);
    }

    /** The leaves of one plant, in heights of them. */
    Blossom foliage(FieldGuide.LeafForm form) {
        return Objects.requireNonNull(foliage.get(form), form.name());
    }

    List<Bark.Tree> trees() {
        return trees;
    }

    /** Null where there is none of that name. */
    @Nullable Parts head(String name) {
        return heads.get(name);
    }
}
