package understorey.plan;

/** Part of a picture in the story, in the order of a story. */
public enum Role { OPENING, APPROACH, DETAIL, CLOSING, EXTRA }
