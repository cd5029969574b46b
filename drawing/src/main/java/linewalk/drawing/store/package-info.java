/**
 * Reads and writes the files of a set folder. Everything written is written whole or not at all; malformed files are
 * named with line and column.
 */
package linewalk.drawing.store;
