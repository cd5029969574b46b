/**
 * Circuits drawn by chance, for tests: any parts at any places, joined by any lines, but drawn as a careful drafter
 * would. Lines keep apart and off symbols and texts, they cross at right angles away from bends and joins, and texts
 * stand free. Same seed, same drawing.
 */
package linewalk.samples.random;
