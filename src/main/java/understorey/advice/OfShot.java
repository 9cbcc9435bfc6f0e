package understorey.advice;

/** Advice on one picture of the trip. */
public interface OfShot {

    /** Name of the picture. */
    String shot();
}
