package linewalk.importer.valve;

import java.util.List;
import linewalk.drawing.Kind;
import linewalk.drawing.Position;

/**
 * What a row of squares says.
 *
 * @param positions empty where a square could not be read surely
 * @param doubt why not, or null
 */
record ValveReading(Kind kind, List<Position> positions, String doubt) {}
