package linewalk.importer.kind;

import linewalk.drawing.Port;

/**
 * A port and the line that meets the figure there.
 *
 * @param dashed the line is a pilot or drain line
 */
public record Contact(Port port, boolean dashed) {}
