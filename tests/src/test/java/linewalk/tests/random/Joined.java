package linewalk.tests.random;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import linewalk.drawing.Component;
import linewalk.drawing.End;
import linewalk.drawing.Line;
import linewalk.drawing.Point;
import linewalk.drawing.Port;
import linewalk.drawing.ReferenceReading;
import linewalk.drawing.SheetReading;
import linewalk.samples.machine.Part;
import linewalk.samples.sheet.DrawnReference;
import linewalk.samples.sheet.DrawnSheet;
import linewalk.samples.symbol.Spot;

/** Which ends of a sheet are joined by lines, as pairs: TAG:PORT and reference ids as drawn. */
record Joined(Set<String> pairs) {
    /** Ports of one part are 0.6 units from each other at least. */
    private static final double PORT_UNITS = 0.28;

    static Joined drawn(DrawnSheet sheet) {
        Set<String> pairs = new TreeSet<>();
        sheet.plan().nets().forEach(net -> addPairs(pairs, net.ends()));
        return new Joined(pairs);
    }

    /** With ends named as drawn where the reading has them in their places, and by place where it has others. */
    static Joined read(DrawnSheet sheet, SheetReading reading, double leastConfidence) {
        Map<String, String> names = names(sheet, reading);
        Set<String> pairs = new TreeSet<>();
        for (Line line : reading.lines()) {
            if (line.confidence() >= leastConfidence) {
                addPairs(
                        pairs,
                        line.ends().stream().flatMap(end -> named(end, names)).toList());
            }
        }
        return new Joined(pairs);
    }

    private static Stream<String> named(End end, Map<String, String> names) {
        if (end instanceof End.AtPort at) {
            return Stream.of(names.get(at.port()));
        }
        return end instanceof End.AtReference at ? Stream.of(names.get(at.reference())) : Stream.of();
    }

    private static Map<String, String> names(DrawnSheet sheet, SheetReading reading) {
        Map<String, String> out = new TreeMap<>();
        for (Component component : reading.components()) {
            for (Port port : component.ports()) {
                out.put(port.id(), nameOf(sheet, component.tag(), port.place()));
            }
        }
        reading.references().forEach(reference -> out.put(reference.id(), nameOf(sheet, reference)));
        return out;
    }

    private static String nameOf(DrawnSheet sheet, String tag, Point place) {
        for (Part part : sheet.plan().parts()) {
            for (String name : part.symbol().ports().keySet()) {
                Spot at = sheet.pt(part.port(name));
                double reach = PORT_UNITS * sheet.placement().style().unitPt();
                if (place.distancePt(new Point(at.x(), at.y())) < reach) {
                    return part.tag() + ":" + name;
                }
            }
        }
        return tag + ":? at " + in(place);
    }

    private static String nameOf(DrawnSheet sheet, ReferenceReading read) {
        for (DrawnReference drawn : sheet.references()) {
            if (read.box()
                    .grow(1)
                    .contains(new Point(drawn.point().x(), drawn.point().y()))) {
                return drawn.reference().id();
            }
        }
        return "'" + read.text() + "' at " + in(read.place());
    }

    private static String in(Point place) {
        return Math.round(place.xPt()) + "," + Math.round(place.yPt());
    }

    private static void addPairs(Set<String> to, List<String> ends) {
        List<String> sorted = new ArrayList<>(new TreeSet<>(ends));
        for (int i = 0; i < sorted.size(); i++) {
            for (int j = i + 1; j < sorted.size(); j++) {
                to.add(sorted.get(i) + " - " + sorted.get(j));
            }
        }
    }

    /** What is here and not there. */
    Set<String> without(Joined other) {
        Set<String> out = new TreeSet<>(pairs);
        out.removeAll(other.pairs);
        return out;
    }
}
