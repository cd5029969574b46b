/** Prints of a trace: the drawn look, the cuttings look, and the walk in plain words. */
package linewalk.renderer;
