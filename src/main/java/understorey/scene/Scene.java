package understorey.scene;

/** A drawing before it has its words. Their width decides where the marks go. */
@FunctionalInterface
public interface Scene {

    Drawing drawing(Wording wording);
}
