/**
 * Directional valves read from their drawn symbols.
 *
 * <p>Needs a figure with its ports and the page's own marks, whoever claimed them. In order: {@code RowFinder} finds the
 * row of squares; {@code SquareReader} says what each square joins; {@code OperatorReader} says what stands at either
 * end; {@code Movers} ties squares to what moves them; {@code ValveReader} leaves positions, or a {@code Doubt} and none.
 * Everything is read in the row's own frame, in which the row lies level.
 */
package linewalk.importer.valve;
