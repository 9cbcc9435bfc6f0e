package understorey.publish;

/** Advice for not publishing into a folder. Nothing was written. */
public final class Refusal extends Exception {

    private static final long serialVersionUID = 1;

    Refusal(String says) {
        super(says);
    }
}
