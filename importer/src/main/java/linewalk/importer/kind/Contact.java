package linewalk.importer.kind;

import linewalk.drawing.Port;

/**
 * A port and the line that meets the figure there.
 *
 * @param dashed the line is a pilot or drain line
 * @param toTank the line ends in a reservoir on the same sheet
 */
public record Contact(Port port, boolean dashed, boolean toTank) {}
