package linewalk.samples.style;

/** What the drawing program writes for a letter. */
public enum LetterForm {
    /** A text layer. */
    TEXT,
    /** Strokes: narrow upright letters with cut corners, all letters of a text in one path. */
    NARROW,
    /** Strokes: round letters that lean by 15 degrees, as ISO 3098 permits; a path a letter. */
    ROUND,
    /** Painted outlines of a text face. */
    OUTLINE,
    /** Round letters as strokes; bold ones are a text layer. */
    PART
}
