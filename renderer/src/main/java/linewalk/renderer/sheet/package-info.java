/** Pages, lettering and running text of a print. Knows nothing of drawings. All lengths are points, y downwards. */
package linewalk.renderer.sheet;
