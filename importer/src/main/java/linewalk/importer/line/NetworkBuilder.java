package linewalk.importer.line;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.lettering.Label;
import linewalk.importer.page.Fill;
import linewalk.importer.page.Near;
import linewalk.importer.page.Segment;
import linewalk.importer.page.Stroke;
import linewalk.importer.symbol.Body;
import linewalk.importer.symbol.Outline;
import linewalk.importer.symbol.Symbols;

/**
 * Line work to nets.
 *
 * <p>Needs figures and flags to have claimed their strokes. Ends that touch are joined, an end on another line's inside
 * joins it, lines that cross pass each other unless a dot is there; four ends that meet without a dot pass each other
 * two by two where the sheet has dots at its joints, else they join in doubt. Leaves every run of line work in exactly one net.
 */
public final class NetworkBuilder {

    private record Piece(Stroke stroke, List<Point> points) {
        Box box() {
            return Box.around(points);
        }
    }

    private record PieceSegment(Piece piece, int index, Segment segment) {}

    private final Symbols symbols;
    private final List<Label> texts;
    private final List<Label> references;
    private final double tolPt;
    private final List<Piece> pieces = new ArrayList<>();
    private final List<Node> nodes = new ArrayList<>();
    private final Map<Piece, TreeMap<Double, Node>> onPiece = new IdentityHashMap<>();
    private final Set<Node> dotted = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Set<Node> doubtful = Collections.newSetFromMap(new IdentityHashMap<>());
    private Near<PieceSegment> segments;

    private NetworkBuilder(Symbols symbols, List<Label> texts, List<Label> references) {
        this.symbols = symbols;
        this.texts = texts;
        this.references = references;
        this.tolPt = symbols.tolerancePt();
    }

    /**
     * @param texts that cannot be references
     * @param references what may be some
     */
    public static List<Net> build(Symbols symbols, List<Fill> fills, List<Label> texts, List<Label> references) {
        return new NetworkBuilder(symbols, texts, references).build(fills);
    }

    private List<Net> build(List<Fill> fills) {
        Clip clip = new Clip(symbols.bodies());
        for (Stroke s : symbols.lineWork()) {
            for (List<Point> p : clip.outside(s)) {
                pieces.add(new Piece(s, p));
            }
        }
        indexSegments();
        dots(fills);
        for (Outline mark : symbols.portMarks()) {
            join(mark.box().center(), mark.box().widthPt() / 2 + tolPt);
        }
        for (Piece p : pieces) {
            endNode(p, true);
            endNode(p, false);
        }
        connectRuns();
        CutCrossings.part(nodes, dotted, doubtful, tolPt);
        attach();
        new EndBars(references).drop(nodes);
        new GapBridge(nodes, texts, tolPt).bridge();
        return Net.of(nodes, doubtful::contains);
    }

    private void indexSegments() {
        List<PieceSegment> all = new ArrayList<>();
        for (Piece p : pieces) {
            onPiece.put(p, new TreeMap<>());
            for (int i = 1; i < p.points().size(); i++) {
                all.add(new PieceSegment(
                        p, i - 1, new Segment(p.points().get(i - 1), p.points().get(i))));
            }
        }
        segments = new Near<>(all, s -> s.segment().box());
    }

    private void dots(List<Fill> fills) {
        for (Fill f : fills) {
            if (f.isDot(tolPt)) {
                join(f.box().center(), f.box().widthPt() / 2 + tolPt / 2).ifPresent(dotted::add);
            }
        }
    }

    /** One node for everything that passes within the radius. */
    private Optional<Node> join(Point center, double radiusPt) {
        List<PieceSegment> hit = segments.within(center, radiusPt).stream()
                .filter(s -> s.segment().distancePt(center) <= radiusPt)
                .toList();
        if (hit.isEmpty()) {
            return Optional.empty();
        }
        Node node = new Node(center);
        nodes.add(node);
        hit.forEach(s -> put(s, center, node));
        return Optional.of(node);
    }

    private static double position(PieceSegment s, Point p) {
        return s.index() + s.segment().position(p);
    }

    private void put(PieceSegment s, Point p, Node node) {
        TreeMap<Double, Node> on = onPiece.get(s.piece());
        double at = position(s, p);
        int last = s.piece().points().size() - 1;
        Point end = s.piece().points().get(at < last / 2.0 ? 0 : last);
        if (p.distancePt(end) <= 2 * tolPt) {
            at = at < last / 2.0 ? 0 : last;
        }
        on.putIfAbsent(at, node);
    }

    private void endNode(Piece piece, boolean first) {
        TreeMap<Double, Node> on = onPiece.get(piece);
        double at = first ? 0 : piece.points().size() - 1;
        if (on.containsKey(at)) {
            return;
        }
        Point end = piece.points().get((int) at);
        List<PieceSegment> hit = segments.within(end, tolPt).stream()
                .filter(s -> s.segment().distancePt(end) <= tolPt)
                .filter(s -> s.piece() != piece || Math.abs(position(s, end) - at) > 1.01)
                .sorted(Comparator.comparingDouble(s -> s.segment().distancePt(end)))
                .toList();
        Node node = existing(hit, end);
        if (node == null) {
            node = new Node(end);
            nodes.add(node);
        }
        on.put(at, node);
        Node shared = node;
        if (crossed(piece, end, hit)) {
            doubtful.add(node);
        }
        hit.forEach(s -> put(s, end, shared));
    }

    private Node existing(List<PieceSegment> hit, Point end) {
        for (PieceSegment s : hit) {
            TreeMap<Double, Node> on = onPiece.get(s.piece());
            double at = position(s, end);
            for (Map.Entry<Double, Node> e :
                    on.subMap(at - 1, true, at + 1, true).entrySet()) {
                if (e.getValue().place().distancePt(end) <= 2 * tolPt) {
                    return e.getValue();
                }
            }
        }
        return null;
    }

    /** Four ends in two straight lines meet: drawn so, a crossing and a join look alike. */
    private boolean crossed(Piece piece, Point end, List<PieceSegment> hit) {
        long ends = hit.stream()
                .filter(s -> {
                    List<Point> p = s.piece().points();
                    return p.get(0).distancePt(end) <= tolPt
                            || p.get(p.size() - 1).distancePt(end) <= tolPt;
                })
                .map(PieceSegment::piece)
                .distinct()
                .count();
        long through = hit.stream().map(PieceSegment::piece).distinct().count() - ends;
        return ends >= 3 || through >= 1 && ends >= 1 && opposite(piece, end, hit);
    }

    private boolean opposite(Piece piece, Point end, List<PieceSegment> hit) {
        Point first = piece.points().get(0);
        Point last = piece.points().get(piece.points().size() - 1);
        Point far = first.distancePt(end) > last.distancePt(end) ? first : last;
        return hit.stream().filter(s -> s.piece() != piece).anyMatch(s -> {
            List<Point> p = s.piece().points();
            boolean ends =
                    p.get(0).distancePt(end) <= tolPt || p.get(p.size() - 1).distancePt(end) <= tolPt;
            return ends && !s.segment().box().grow(tolPt).contains(far);
        });
    }

    private void connectRuns() {
        for (Piece p : pieces) {
            Map.Entry<Double, Node> before = null;
            for (Map.Entry<Double, Node> e : onPiece.get(p).entrySet()) {
                if (before != null) {
                    run(p, before, e);
                }
                before = e;
            }
        }
    }

    private static void run(Piece p, Map.Entry<Double, Node> from, Map.Entry<Double, Node> to) {
        List<Point> points = new ArrayList<>();
        points.add(from.getValue().place());
        for (int i = (int) Math.floor(from.getKey()) + 1; i < to.getKey(); i++) {
            points.add(p.points().get(i));
        }
        points.add(to.getValue().place());
        boolean loop = from.getValue() == to.getValue();
        if (loop && points.size() < 4 || points.size() == 2 && drawnAlready(from.getValue(), to.getValue())) {
            return;
        }
        Run run = new Run(
                from.getValue(),
                to.getValue(),
                points,
                p.stroke().widthPt(),
                p.stroke().dash(),
                false);
        from.getValue().runs().add(run);
        if (!loop) {
            to.getValue().runs().add(run);
        }
    }

    /** Where the ends of two lines lie on one another. */
    private static boolean drawnAlready(Node from, Node to) {
        return from.runs().stream()
                .anyMatch(r -> r.other(from) == to && r.points().size() == 2);
    }

    /** Line ends at figures and flags. */
    private void attach() {
        Near<Body> bodies = new Near<>(symbols.bodies(), Body::box);
        Near<Outline> flags = new Near<>(symbols.flags(), Outline::box);
        double reach = 1.5 * tolPt;
        for (Node n : nodes) {
            flags.within(n.place(), reach).stream()
                    .filter(o -> o.covers(n.place()) || o.edgeDistancePt(n.place()) <= reach)
                    .findFirst()
                    .ifPresent(n::flag);
            bodies.within(n.place(), reach).stream()
                    .filter(b -> b.distancePt(n.place()) <= reach)
                    // what stands in a reservoir, such as a strainer, has its own lines
                    .min(Comparator.comparing(Body::reservoir).thenComparingDouble(b -> b.distancePt(n.place())))
                    .filter(b -> !b.reservoir() || n.runs().size() == 1)
                    .ifPresent(n::body);
        }
        nodes.stream().filter(this::passesMark).toList().forEach(n -> n.body(null));
    }

    /** A line that goes on to the figure passes a mark of it, such as its own pilot line, and does not end there. */
    private boolean passesMark(Node n) {
        Body b = n.body();
        return b != null
                && n.runs().size() > 1
                && b.outlines().stream().noneMatch(o -> o.edgeDistancePt(n.place()) <= 1.5 * tolPt)
                && n.runs().stream().anyMatch(r -> r.other(n).body() == b);
    }
}
