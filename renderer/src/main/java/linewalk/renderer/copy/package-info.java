/** Copies of the set's own PDF files that keep every original byte and add annotations behind them. */
package linewalk.renderer.copy;
