package understorey.plan;

/** What a picture does for the story, in the order in which a story is told. */
public enum Role { OPENING, APPROACH, DETAIL, CLOSING, EXTRA }
