package linewalk.renderer;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import linewalk.drawing.Box;
import linewalk.drawing.Component;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.End;
import linewalk.drawing.Line;
import linewalk.drawing.PageKey;
import linewalk.drawing.Point;
import linewalk.drawing.Port;
import linewalk.drawing.Reference;
import linewalk.linker.Excerpt;
import linewalk.linker.Leg;

/**
 * What a trace does on one sheet, from where it enters to where it leaves.
 *
 * @param entry null where the trace starts
 * @param exit null where the trace ends
 * @param beside other parts at the ends of a circuit's lines
 * @param references where it enters and leaves; of a circuit, all at its lines
 * @param courses by leg, the drawn way; a line whose course was never traced has none
 * @param lines by leg, the line of each course
 */
record Stay(
        PageKey page,
        Reference entry,
        Reference exit,
        int firstLeg,
        int lastLeg,
        List<Leg.Through> parts,
        List<Leg.Through> beside,
        List<Leg.Along> alongs,
        List<Reference> references,
        Map<Integer, List<Point>> courses,
        Map<Integer, Line> lines) {

    /** A part larger than this (a tank) is shown only about the ports that the path uses. */
    private static final double LARGE_PT = 260;

    private static final double AROUND_PART_PT = 36;
    /** How far from a part its designation is looked for, and what is shown about it. */
    static final double DESIGNATION_REACH_PT = 90;

    private static final double AROUND_DESIGNATION_PT = 14;
    private static final double AROUND_PORT_PT = 45;
    /** Lettering that sticks out farther than this is cut. */
    private static final double MOST_LETTERING_PT = 90;

    private static final double AROUND_REFERENCE_PT = 12;
    private static final double AROUND_BEND_PT = 22;
    /** A course that strays less than this is straight: it hops over another line. */
    private static final double HOP_PT = 10;

    static List<Stay> of(List<Leg> legs) {
        List<Stay> stays = new ArrayList<>();
        Reference entry = null;
        int from = 0;
        for (int i = 0; i < legs.size(); i++) {
            if (legs.get(i) instanceof Leg.Across x) {
                stays.add(stay(legs, from, i, entry, x.from()));
                entry = x.to();
                from = i + 1;
            }
        }
        if (from < legs.size() || entry != null) {
            stays.add(stay(legs, from, legs.size(), entry, null));
        }
        return stays;
    }

    private static Stay stay(List<Leg> legs, int from, int to, Reference entry, Reference exit) {
        List<Leg.Through> parts = new ArrayList<>();
        List<Leg.Along> alongs = new ArrayList<>();
        Map<Integer, List<Point>> courses = new LinkedHashMap<>();
        Map<Integer, Line> lines = new LinkedHashMap<>();
        PageKey page = entry != null ? entry.page() : exit != null ? exit.page() : null;
        for (int i = from; i < to; i++) {
            if (legs.get(i) instanceof Leg.Through t) {
                parts.add(t);
                page = t.component().page();
            } else if (legs.get(i) instanceof Leg.Along a) {
                alongs.add(a);
                page = a.line().page();
                int leg = i;
                RunWay.between(a.line().runs(), a.from().place(), a.to().place())
                        .ifPresent(way -> courses.put(leg, way));
                lines.put(leg, a.line());
            }
        }
        List<Reference> references = Stream.of(Optional.ofNullable(entry), Optional.ofNullable(exit))
                .flatMap(Optional::stream)
                .toList();
        return new Stay(page, entry, exit, from, to, parts, List.of(), alongs, references, courses, lines);
    }

    /** What a circuit has on each sheet; nothing is entered or left. Courses are the runs of its lines. */
    static List<Stay> of(Excerpt circuit, DrawingSet set) {
        Map<PageKey, Stay> stays = new LinkedHashMap<>();
        circuit.parts().forEach(c -> on(c.page(), stays));
        Map<String, Reference> references = new HashMap<>();
        set.references().forEach(r -> references.put(r.id(), r));
        for (Line line : circuit.lines()) {
            Stay stay = on(line.page(), stays);
            for (int i = 0; i < line.ends().size(); i++) {
                End end = line.ends().get(i);
                if (i > 0) {
                    stay.alongs.add(new Leg.Along(line, line.ends().get(0), end));
                }
                if (end instanceof End.AtReference r && references.containsKey(r.reference())) {
                    stay.references.add(references.get(r.reference()));
                }
            }
            for (List<Point> run : line.runs()) {
                stay.lines.put(stay.courses.size(), line);
                stay.courses.put(stay.courses.size(), run);
            }
        }
        circuit.parts().forEach(c -> parts(c, circuit, on(c.page(), stays).parts));
        beside(circuit, set).forEach(c -> parts(c, circuit, on(c.page(), stays).beside));
        return List.copyOf(stays.values());
    }

    private static List<Component> beside(Excerpt circuit, DrawingSet set) {
        Set<String> ends = circuit.lines().stream()
                .flatMap(l -> l.ends().stream())
                .filter(End.AtPort.class::isInstance)
                .map(e -> ((End.AtPort) e).component())
                .collect(Collectors.toSet());
        return set.components().stream()
                .filter(c -> ends.contains(c.id()) && !circuit.parts().contains(c))
                .toList();
    }

    private static Stay on(PageKey page, Map<PageKey, Stay> stays) {
        return stays.computeIfAbsent(
                page,
                k -> new Stay(
                        k,
                        null,
                        null,
                        0,
                        0,
                        new ArrayList<>(),
                        new ArrayList<>(),
                        new ArrayList<>(),
                        new ArrayList<>(),
                        new LinkedHashMap<>(),
                        new LinkedHashMap<>()));
    }

    /** A large part is shown about each port that the circuit's lines meet. */
    private static void parts(Component c, Excerpt circuit, List<Leg.Through> parts) {
        List<Port> met = c.ports().stream()
                .filter(p -> circuit.lines().stream()
                        .flatMap(l -> l.ends().stream())
                        .anyMatch(e -> e instanceof End.AtPort at && at.port().equals(p.id())))
                .toList();
        if (c.box().widthPt() < LARGE_PT && c.box().heightPt() < LARGE_PT || met.isEmpty()) {
            parts.add(new Leg.Through(c, null, null, null, null));
        } else {
            met.forEach(p -> parts.add(new Leg.Through(c, p, null, null, null)));
        }
    }

    /**
     * The areas that must be seen: parts with their designations, references, ends and bends.
     *
     * @param scale of the cutting; a larger one needs less about each thing
     */
    List<Box> keys(List<SourceLetters.Letter> letters, double scale) {
        double less = 1 / Math.max(1, scale);
        List<Box> keys = new ArrayList<>();
        for (Leg.Through t : Stream.concat(parts.stream(), beside.stream()).toList()) {
            Box around = around(t, less);
            keys.add(SourceLetters.word(t.component().tag(), letters, anchor(t), DESIGNATION_REACH_PT)
                    .map(w -> around.union(w.grow(AROUND_DESIGNATION_PT * less)))
                    .orElse(around));
        }
        for (Reference r : references) {
            keys.add(r.box().grow(AROUND_REFERENCE_PT * less));
        }
        for (Leg.Along a : alongs) {
            keys.add(Box.around(a.from().place()).grow(AROUND_BEND_PT * less));
            keys.add(Box.around(a.to().place()).grow(AROUND_BEND_PT * less));
        }
        for (List<Point> course : courses.values()) {
            List<Point> corners = Outline.of(course, HOP_PT);
            for (int i = 1; i < corners.size() - 1; i++) {
                keys.add(Box.around(corners.get(i)).grow(AROUND_BEND_PT * less));
            }
        }
        List<Box> phrases = SourceLetters.phrases(letters);
        return keys.stream()
                .map(k -> whole(k, phrases, MOST_LETTERING_PT * less))
                .toList();
    }

    /** An area grown to the end of the words that it would cut. */
    static Box whole(Box key, List<Box> phrases, double mostPt) {
        Box grown = key;
        Box most = key.grow(mostPt);
        for (Box p : phrases) {
            if (p.intersects(key) && most.contains(p)) {
                grown = grown.union(p.grow(2));
            }
        }
        return grown;
    }

    /** The bend, or the other end, before a place where a course starts or stops; empty where none does. */
    Optional<Point> lastBend(Point end) {
        for (List<Point> course : courses.values()) {
            List<Point> corners = Outline.of(course, HOP_PT);
            int n = corners.size();
            if (n > 1 && corners.get(0).distancePt(end) < 1) {
                return Optional.of(corners.get(1));
            }
            if (n > 1 && corners.get(n - 1).distancePt(end) < 1) {
                return Optional.of(corners.get(n - 2));
            }
        }
        return Optional.empty();
    }

    private static Box around(Leg.Through t, double less) {
        Component c = t.component();
        if (c.box().widthPt() < LARGE_PT && c.box().heightPt() < LARGE_PT) {
            return c.box().grow(AROUND_PART_PT * less);
        }
        return anchor(t).grow(AROUND_PORT_PT * less);
    }

    /** The part's outline, or its used ports where the outline is large. */
    static Box anchor(Leg.Through t) {
        Component c = t.component();
        if (c.box().widthPt() < LARGE_PT && c.box().heightPt() < LARGE_PT) {
            return c.box();
        }
        List<Point> places = new ArrayList<>();
        for (Port p : new Port[] {t.in(), t.out()}) {
            if (p != null) {
                places.add(p.place());
            }
        }
        return places.isEmpty() ? Box.around(c.place()) : Box.around(places);
    }
}
