package linewalk.linker.step;

/**
 * What is taken of parts whose passages are not known and of line ends that lead nowhere known. A class that is the
 * same whatever is taken does not depend on them.
 */
enum Guess {
    /** They join nothing. */
    SHUT,
    /** All their ports are joined; loose ends lead to tank. */
    JOINED,
    /** All their ports but those towards the tank are joined; loose ends bring oil under pressure. */
    PRESSED
}
