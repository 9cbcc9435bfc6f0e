package understorey.pages;

import understorey.pages.words.Sentences;
import understorey.scene.Wording;

/** The words of drawings in the templates that come with the project. */
public final class DrawingWords {

    public static final Wording BUILT_IN = Sentences.builtIn()::of;

    private DrawingWords() {
    }
}
