/**
 * Pages that are images. Ink is told from paper, registered on the drawing's own lines, lettering is read, and the rest
 * becomes strokes and filled shapes: the same marks that a vector page gives, so that every later phase runs unchanged.
 */
package linewalk.importer.scan;
