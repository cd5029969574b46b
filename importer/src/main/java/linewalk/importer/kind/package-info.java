/**
 * From a drawn figure to its kind and to what it joins inside, by the rules of ISO 1219-1.
 *
 * <p>Needs figures, arrowheads and line work of {@code symbol} and the places where lines meet a figure. {@code Picture}
 * holds what stands in and around one figure as shapes, arrows, springs, pieces and arcs; motifs (checks, throttles,
 * controls) are found in it; each rule says a kind, how likely it is, and why, in words. All measures are relative to
 * the figure, so scale, turn and mirroring do not matter. What could be two kinds names both; what is not surely read
 * gets no passages.
 */
package linewalk.importer.kind;
