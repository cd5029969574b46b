package linewalk.renderer.iso;

/** The strokes of a symbol within its body, origin at the body's top left corner. */
@FunctionalInterface
interface Art {
    void draw(Pen pen);
}
