package linewalk.samples.machine;

import java.util.List;
import linewalk.samples.symbol.Spot;

/** What is drawn beside the circuit. Places in units. */
public sealed interface Furniture {
    /** Chain line around a unit, its faces' ports named where lines cross it. */
    record Enclosure(String name, double x0, double y0, double x1, double y1, List<FacePort> ports)
            implements Furniture {}

    record FacePort(String name, double x, double y) {}

    /** Text at the end of a pointing line. */
    record Leader(Spot tip, Spot knee, String text) implements Furniture {}

    /** A part shown larger elsewhere: balloon and ring; a negative radius draws no ring but keeps its distance. */
    record Bubble(Spot ring, double radius, Spot balloon, String letter, String sheet) implements Furniture {}

    record Table(double x, double y, String title, List<Double> widths, List<List<String>> rows) implements Furniture {}

    record Dimension(double x0, double x1, double y, Words text) implements Furniture {}
}
