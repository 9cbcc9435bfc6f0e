package understorey.advice;

/**
 * Advice to the reader of a plan, as facts: a record each, named as its sentence in the templates, its
 * components named as the words in braces there. Other rooms construct it, and only {@code pages} words it.
 */
public sealed interface Advice permits ApertureAdvice, BagAdvice, CautionAdvice, ColourAdvice, ComposeAdvice, CoverAdvice, DayAdvice,
        DepthAdvice, DirectionAdvice, FitAdvice, HelpAdvice, LeftOutAdvice, LightAdvice,
        MotionAdvice, PhoneAdvice, PolariserAdvice, RoomAdvice, SeasonAdvice, SetAdvice, ShutterAdvice, SpoilerAdvice, StoryAdvice,
        SupportAdvice, ToneAdvice, TripAdvice, VisitAdvice, WaitAdvice, WeatherAdvice {

    /** How much depends on it. */
    enum Severity {
        NOTE,
        /** A picture is a compromise, or cannot be taken. */
        OBJECTION,
        /** The visit may be spoilt, or people endangered. */
        WARNING
    }

    default Severity severity() {
        return Severity.NOTE;
    }
}
