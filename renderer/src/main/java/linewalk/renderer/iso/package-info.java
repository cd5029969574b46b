/**
 * Symbols of parts after the rules of ISO 1219-1, on one grid and with one line width. A symbol has its ports where the
 * standard has them: supply and return below, actuators above.
 */
package linewalk.renderer.iso;
