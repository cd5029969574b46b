package linewalk.renderer.scheme;

import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linewalk.renderer.iso.PortPlace;
import org.eclipse.elk.alg.layered.graph.LGraph;
import org.eclipse.elk.alg.layered.options.CrossingMinimizationStrategy;
import org.eclipse.elk.alg.layered.options.GreedySwitchType;
import org.eclipse.elk.alg.layered.options.LayeredMetaDataProvider;
import org.eclipse.elk.alg.layered.options.LayeredOptions;
import org.eclipse.elk.alg.layered.options.NodePlacementStrategy;
import org.eclipse.elk.core.data.LayoutMetaDataService;
import org.eclipse.elk.core.math.ElkPadding;
import org.eclipse.elk.core.math.KVector;
import org.eclipse.elk.core.options.Direction;
import org.eclipse.elk.core.options.EdgeRouting;
import org.eclipse.elk.core.options.PortConstraints;
import org.eclipse.elk.core.options.PortSide;
import org.eclipse.elk.graph.ElkEdge;
import org.eclipse.elk.graph.ElkEdgeSection;
import org.eclipse.elk.graph.ElkNode;
import org.eclipse.elk.graph.ElkPort;
import org.eclipse.elk.graph.util.ElkGraphUtil;

/**
 * Lays a scheme out in layers from below upwards, ports fixed, lines at right angles. The work is done by the Eclipse
 * Layout Kernel.
 */
final class Layering {

    private static final double BETWEEN_NODES_PT = 16;
    private static final double BETWEEN_LINES_PT = 10;
    private static final double BETWEEN_LAYERS_PT = 18;
    private static final double DIVISION_PT = 2;
    /** The kernel rounds places to whole numbers; a finer unit keeps lines straight to a twentieth of a point. */
    private static final double UNITS_A_PT = 10;

    private static final int THOROUGH = 12;

    static {
        LayoutMetaDataService.getInstance().registerLayoutMetaDataProviders(new LayeredMetaDataProvider());
    }

    private record Wire(Net net, Net.Meeting from, Net.Meeting to) {}

    private final Scheme scheme;
    private final ElkNode graph = ElkGraphUtil.createGraph();
    private final Map<Node, ElkNode> boxes = new LinkedHashMap<>();
    private final Map<Net.Meeting, ElkPort> ports = new LinkedHashMap<>();
    private final Map<ElkEdge, Wire> wires = new LinkedHashMap<>();
    private final List<Division> divisions = new ArrayList<>();
    private LGraph laidOut;
    private Layout layout;

    /** A point of its own where lines of a net meet, none of which leads to all others. */
    private record Division(ElkNode box, ElkPort below, ElkPort above) {

        /** All its lines come from one side. */
        boolean isTurn() {
            return below.getIncomingEdges().isEmpty()
                    || above.getOutgoingEdges().isEmpty();
        }
    }

    private Layering(Scheme scheme) {
        this.scheme = scheme;
    }

    /** @param scheme in one piece */
    static Layering of(Scheme scheme) {
        Layering layering = filled(scheme);
        layering.laidOut = Kernel.laidOut(layering.graph, layering::isTurn);
        return layering;
    }

    /** What the kernel is given, without places. */
    static ElkNode graph(Scheme scheme) {
        return filled(scheme).graph;
    }

    private static Layering filled(Scheme scheme) {
        Layering layering = new Layering(scheme);
        layering.options();
        scheme.nodes().forEach(layering::add);
        scheme.nets().forEach(layering::add);
        return layering;
    }

    private boolean isTurn(ElkNode node) {
        return divisions.stream().anyMatch(d -> d.box == node && d.isTurn());
    }

    private void options() {
        graph.setProperty(org.eclipse.elk.core.options.CoreOptions.ALGORITHM, LayeredOptions.ALGORITHM_ID);
        graph.setProperty(LayeredOptions.DIRECTION, Direction.UP);
        graph.setProperty(LayeredOptions.EDGE_ROUTING, EdgeRouting.ORTHOGONAL);
        graph.setProperty(LayeredOptions.RANDOM_SEED, 1);
        graph.setProperty(LayeredOptions.PADDING, new ElkPadding(0));
        graph.setProperty(LayeredOptions.THOROUGHNESS, THOROUGH);
        graph.setProperty(LayeredOptions.CROSSING_MINIMIZATION_STRATEGY, CrossingMinimizationStrategy.LAYER_SWEEP);
        graph.setProperty(LayeredOptions.CROSSING_MINIMIZATION_GREEDY_SWITCH_TYPE, GreedySwitchType.TWO_SIDED);
        graph.setProperty(LayeredOptions.CROSSING_MINIMIZATION_GREEDY_SWITCH_ACTIVATION_THRESHOLD, 0);
        graph.setProperty(LayeredOptions.NODE_PLACEMENT_STRATEGY, NodePlacementStrategy.NETWORK_SIMPLEX);
        graph.setProperty(LayeredOptions.SPACING_NODE_NODE, BETWEEN_NODES_PT * UNITS_A_PT);
        graph.setProperty(LayeredOptions.SPACING_EDGE_NODE, BETWEEN_LINES_PT * UNITS_A_PT);
        graph.setProperty(LayeredOptions.SPACING_EDGE_EDGE, BETWEEN_LINES_PT * UNITS_A_PT);
        graph.setProperty(LayeredOptions.SPACING_NODE_NODE_BETWEEN_LAYERS, BETWEEN_LAYERS_PT * UNITS_A_PT);
        graph.setProperty(LayeredOptions.SPACING_EDGE_NODE_BETWEEN_LAYERS, BETWEEN_LINES_PT * UNITS_A_PT);
        graph.setProperty(LayeredOptions.SPACING_EDGE_EDGE_BETWEEN_LAYERS, BETWEEN_LINES_PT * UNITS_A_PT);
    }

    private void add(Node node) {
        Figure f = node.figure();
        ElkNode box = ElkGraphUtil.createNode(graph);
        box.setDimensions(f.widthPt() * UNITS_A_PT, f.heightPt() * UNITS_A_PT);
        box.setProperty(LayeredOptions.PORT_CONSTRAINTS, PortConstraints.FIXED_POS);
        boxes.put(node, box);
    }

    private void add(Net net) {
        List<Net.Meeting> below = new ArrayList<>();
        List<Net.Meeting> above = new ArrayList<>();
        for (Net.Meeting m : net.meetings()) {
            (Net.leavesUpwards(m, net.height()) ? below : above).add(m);
        }
        if (below.isEmpty() || above.isEmpty()) {
            turnBack(net, below, above);
            return;
        }
        above.forEach(m -> wire(net, below.get(0), m));
        below.subList(1, below.size()).forEach(m -> wire(net, m, above.get(0)));
    }

    /** All ends lie on one side: the lines meet at a point of its own beyond them. */
    private void turnBack(Net net, List<Net.Meeting> below, List<Net.Meeting> above) {
        Division division = division();
        below.forEach(m -> wires.put(ElkGraphUtil.createSimpleEdge(port(m), division.below), new Wire(net, m, null)));
        above.forEach(m -> wires.put(ElkGraphUtil.createSimpleEdge(division.above, port(m)), new Wire(net, null, m)));
    }

    private void wire(Net net, Net.Meeting from, Net.Meeting to) {
        wires.put(ElkGraphUtil.createSimpleEdge(port(from), port(to)), new Wire(net, from, to));
    }

    private Division division() {
        ElkNode box = ElkGraphUtil.createNode(graph);
        box.setDimensions(DIVISION_PT * UNITS_A_PT, DIVISION_PT * UNITS_A_PT);
        box.setProperty(LayeredOptions.PORT_CONSTRAINTS, PortConstraints.FIXED_POS);
        ElkPort below = port(box, PortSide.SOUTH, DIVISION_PT / 2, DIVISION_PT);
        ElkPort above = port(box, PortSide.NORTH, DIVISION_PT / 2, 0);
        Division division = new Division(box, below, above);
        divisions.add(division);
        return division;
    }

    private ElkPort port(Net.Meeting m) {
        return ports.computeIfAbsent(m, k -> {
            Figure f = m.node().figure();
            PortPlace place = f.place(m.port());
            return switch (place.side()) {
                case TOP -> port(boxes.get(m.node()), PortSide.NORTH, place.offsetPt(), 0);
                case BOTTOM -> port(boxes.get(m.node()), PortSide.SOUTH, place.offsetPt(), f.heightPt());
                case LEFT -> port(boxes.get(m.node()), PortSide.WEST, 0, place.offsetPt());
                case RIGHT -> port(boxes.get(m.node()), PortSide.EAST, f.widthPt(), place.offsetPt());
            };
        });
    }

    private static ElkPort port(ElkNode box, PortSide side, double x, double y) {
        ElkPort port = ElkGraphUtil.createPort(box);
        port.setProperty(LayeredOptions.PORT_SIDE, side);
        port.setLocation(x * UNITS_A_PT, y * UNITS_A_PT);
        return port;
    }

    Scheme scheme() {
        return scheme;
    }

    Size size() {
        KVector size = laidOut.getActualSize();
        return new Size(size.x / UNITS_A_PT, size.y / UNITS_A_PT);
    }

    /** Made when it is first asked for: of most layouts only the size is wanted. */
    synchronized Layout layout() {
        if (layout == null) {
            Kernel.place(laidOut);
            layout = drawn();
        }
        return layout;
    }

    private Layout drawn() {
        Map<Node, Point2D> places = new LinkedHashMap<>();
        boxes.forEach((node, box) -> places.put(node, point(box.getX(), box.getY())));
        List<Layout.Course> courses = new ArrayList<>();
        wires.forEach((edge, wire) -> {
            for (ElkEdgeSection s : edge.getSections()) {
                courses.add(new Layout.Course(wire.net, wire.from, wire.to, points(s)));
            }
        });
        List<Layout.Course> drawn = Junctions.withoutTails(courses);
        Size size = size();
        return new Layout(size.widthPt(), size.heightPt(), places, drawn, Junctions.dots(drawn));
    }

    private static List<Point2D> points(ElkEdgeSection s) {
        List<Point2D> points = new ArrayList<>();
        points.add(point(s.getStartX(), s.getStartY()));
        s.getBendPoints().forEach(b -> points.add(point(b.getX(), b.getY())));
        points.add(point(s.getEndX(), s.getEndY()));
        return points;
    }

    private static Point2D point(double x, double y) {
        return new Point2D.Double(x / UNITS_A_PT, y / UNITS_A_PT);
    }
}
