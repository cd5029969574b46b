package linewalk.renderer.iso;

/**
 * A symbol without its ports' lines: a size in modules and strokes that stay inside.
 *
 * @param asks a question mark stands for what was not made out
 */
record Body(double width, double height, Art art, boolean asks) {

    Body(double width, double height, Art art) {
        this(width, height, art, false);
    }

    Body asking(boolean untold) {
        return new Body(width, height, art, asks || untold);
    }
}
