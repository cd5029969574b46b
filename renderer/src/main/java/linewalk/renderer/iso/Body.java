package linewalk.renderer.iso;

/** A symbol without its ports' lines: a size in modules and strokes that stay inside. */
record Body(double width, double height, Art art) {}
