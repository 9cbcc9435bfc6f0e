package understorey.pages;

import understorey.pages.words.Sentences;
import understorey.plan.Display;
import understorey.scene.Wording;

/** The words of drawings in the templates that come with the project. */
public final class DrawingWords {

    public static final Wording BUILT_IN = Sentences.builtIn();
    public static final Wording IN_FEET = Sentences.builtIn().in(new Display(Display.UnitSystem.IMPERIAL, Display.Clock.HOURS_24));

    private DrawingWords() {
    }
}
