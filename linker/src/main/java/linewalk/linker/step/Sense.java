package linewalk.linker.step;

/** What oil does where a line ends, seen from the line. */
public enum Sense {
    /** It comes into the line here. */
    IN,
    /** It leaves the line here. */
    OUT,
    /** It stands. */
    STILL,
    /** Nothing tells. */
    UNKNOWN;

    Sense opposite() {
        return this == IN ? OUT : this == OUT ? IN : this;
    }

    /** Of two together: what stands adds nothing, and the two others together tell nothing. */
    public Sense and(Sense other) {
        if (this == other || other == STILL) {
            return this;
        }
        return this == STILL ? other : UNKNOWN;
    }
}
