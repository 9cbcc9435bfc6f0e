package understorey.scene;

/** The words for the facts of a drawing. */
@FunctionalInterface
public interface Wording {

    String of(Fact fact);

    /** The unit, m, that the scale of a drawing counts in where it is so long. */
    default double scaleUnitM(double longestM) {
        return 1;
    }
}
