package understorey.publish;

/** A folder that cannot be published into, and why. Nothing was written. */
public final class Refusal extends Exception {

    private static final long serialVersionUID = 1;

    Refusal(String says) {
        super(says);
    }
}
