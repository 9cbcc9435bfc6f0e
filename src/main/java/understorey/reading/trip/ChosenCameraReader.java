package understorey.reading.trip;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import understorey.plan.Bag;
import understorey.plan.Body;
import understorey.plan.ChosenCamera;
import understorey.plan.Lens;
import understorey.yaml.Fields;
import understorey.yaml.finding.Suggestion;
import understorey.yaml.tree.Node;

/** Reads the body and the lens that the author decided on for a shot. Both must be in the bag, and fit each other. */
record ChosenCameraReader(Fields shot, Bag bag, ChosenCamera chosen) {

    /**
     * The author's choice.
     *
     * @param bag null when it could not be read: then no name is checked
     */
    static ChosenCamera read(Fields shot, @Nullable Bag bag) {
        ChosenCamera chosen = new ChosenCamera(shot.text("body"), shot.text("lens"));
        if (bag != null) {
            new ChosenCameraReader(shot, bag, chosen).check();
        }
        return chosen;
    }

    private void check() {
        List<String> bodies = bag.bodies().stream().map(Body::name).toList();
        List<String> lenses = lenses(bag.bodies()).map(Lens::name).distinct().toList();
        if (known("body", chosen.body(), bodies) & known("lens", chosen.lens(), lenses)) {
            fit();
        }
    }

    private boolean known(String key, @Nullable String name, List<String> names) {
        if (name == null || names.contains(name)) {
            return true;
        }
        shot.refuse(key, "there is no " + key + " " + Node.quote(name) + " in the bag", Suggestion.among(names, name, "known names"));
        return false;
    }

    private void fit() {
        List<Body> bodies = bag.bodies().stream().filter(body -> chosen.body() == null || chosen.body().equals(body.name())).toList();
        List<String> fitting = bodies.stream().flatMap(this::fitting).map(Lens::name).distinct().toList();
        if (chosen.lens() != null && !fitting.contains(chosen.lens())) {
            shot.refuse("lens", "the lens " + Node.quote(chosen.lens()) + " does not fit "
                    + (chosen.body() == null ? "any body of the bag" : "the body " + Node.quote(chosen.body())),
                    fitting.isEmpty() ? "choose a body with the mount of the lens" : "lenses that fit: " + String.join(", ", fitting));
        } else if (chosen.body() != null && fitting.isEmpty()) {
            shot.refuse("body", "no lens of the bag fits the body " + Node.quote(chosen.body()), "choose another body");
        }
    }

    private Stream<Lens> fitting(Body body) {
        return lenses(List.of(body)).filter(lens -> lens.builtIn() || Objects.equals(lens.mount(), body.mount()));
    }

    private Stream<Lens> lenses(List<Body> bodies) {
        return Stream.concat(bodies.stream().flatMap(body -> body.fixedLenses().stream()), bag.lenses().stream());
    }
}
