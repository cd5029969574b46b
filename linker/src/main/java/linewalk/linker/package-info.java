/**
 * Readings, hand tags and settings become one {@link linewalk.drawing.DrawingSet}; traces are walked over it. A pure
 * function: the same input gives the same output, whatever the order of pages and files, and no file is touched.
 */
package linewalk.linker;
