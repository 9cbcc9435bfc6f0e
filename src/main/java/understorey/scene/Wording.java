package understorey.scene;

/** The words for the facts of a drawing. */
@FunctionalInterface
public interface Wording {

    String of(Fact fact);
}
