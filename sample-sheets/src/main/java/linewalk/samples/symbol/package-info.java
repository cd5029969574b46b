/**
 * Symbols after ISO 1219-1 in drawing units, drawn on any {@link linewalk.samples.symbol.Ink}. They know their ports
 * and positions and nothing of sheets, styles or files.
 */
package linewalk.samples.symbol;
