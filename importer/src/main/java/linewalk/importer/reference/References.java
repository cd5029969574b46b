package linewalk.importer.reference;

import java.util.Map;
import java.util.Set;
import linewalk.drawing.ReferenceReading;
import linewalk.importer.lettering.Label;
import linewalk.importer.line.Node;

/**
 * Reference candidates of a page.
 *
 * @param at the line end of each candidate that has one
 * @param used labels that are references
 */
public record References(Map<Node, ReferenceReading> at, java.util.List<ReferenceReading> all, Set<Label> used) {}
