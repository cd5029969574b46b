/**
 * A circuit laid out anew: nodes with ports and the nets that join them, pumps and tanks below, actuators above, lines at
 * right angles. Knows nothing of drawings; lengths are points, y downwards.
 *
 * <p>The way: a {@link linewalk.renderer.scheme.Scheme} is divided into {@linkplain linewalk.renderer.scheme.Paging
 * pages} that fit the paper, and each page is {@linkplain linewalk.renderer.scheme.Layering laid out} in layers.
 */
package linewalk.renderer.scheme;
