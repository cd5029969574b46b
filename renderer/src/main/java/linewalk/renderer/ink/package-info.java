/**
 * How the lines of a print look: colour, weight and pattern of each pressure class. Every class is known by its pattern
 * alone, so that it survives a black-and-white copy. All lengths are points.
 */
package linewalk.renderer.ink;
