package linewalk.renderer.iso;

/** Draws parts of one kind. */
@FunctionalInterface
interface Family {
    Plan plan(Drafting d);
}
