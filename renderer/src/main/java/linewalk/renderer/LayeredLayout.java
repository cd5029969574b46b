package linewalk.renderer;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linewalk.renderer.symbol.Side;
import linewalk.renderer.symbol.Symbol;
import org.eclipse.elk.alg.layered.options.CycleBreakingStrategy;
import org.eclipse.elk.alg.layered.options.LayeredMetaDataProvider;
import org.eclipse.elk.alg.layered.options.LayeredOptions;
import org.eclipse.elk.core.RecursiveGraphLayoutEngine;
import org.eclipse.elk.core.data.LayoutMetaDataService;
import org.eclipse.elk.core.options.CoreOptions;
import org.eclipse.elk.core.options.Direction;
import org.eclipse.elk.core.options.EdgeRouting;
import org.eclipse.elk.core.options.PortConstraints;
import org.eclipse.elk.core.options.PortSide;
import org.eclipse.elk.core.util.BasicProgressMonitor;
import org.eclipse.elk.graph.ElkBendPoint;
import org.eclipse.elk.graph.ElkEdge;
import org.eclipse.elk.graph.ElkEdgeSection;
import org.eclipse.elk.graph.ElkNode;
import org.eclipse.elk.graph.ElkPort;
import org.eclipse.elk.graph.util.ElkGraphUtil;

/** Lays the stops out top to bottom with right-angled lines between fixed ports. Same input, same layout. */
final class LayeredLayout {

    private static final double BETWEEN_LAYERS_PT = 34;
    private static final double BETWEEN_PARTS_PT = 26;
    private static final double LINES_APART_PT = 18;

    final Map<StopFigure, Rectangle2D> boxes = new LinkedHashMap<>();
    final Map<FlowGraph.Edge, List<Point2D>> lines = new LinkedHashMap<>();
    private final Map<FlowGraph.Stop, ElkNode> nodes = new HashMap<>();
    private final Map<String, ElkPort> ports = new HashMap<>();

    LayeredLayout(List<StopFigure> figures, List<FlowGraph.Edge> edges) {
        LayoutMetaDataService.getInstance().registerLayoutMetaDataProviders(new LayeredMetaDataProvider());
        ElkNode root = ElkGraphUtil.createGraph();
        settings(root);
        figures.forEach(f -> node(root, f));
        Map<FlowGraph.Edge, ElkEdge> drawn = new LinkedHashMap<>();
        for (FlowGraph.Edge e : edges) {
            drawn.put(e, ElkGraphUtil.createSimpleEdge(port(e.from(), e.fromKey()), port(e.to(), e.toKey())));
        }
        new RecursiveGraphLayoutEngine().layout(root, new BasicProgressMonitor());
        for (StopFigure f : figures) {
            ElkNode n = nodes.get(f.stop);
            boxes.put(f, new Rectangle2D.Double(n.getX(), n.getY(), n.getWidth(), n.getHeight()));
        }
        drawn.forEach((e, elk) -> lines.put(e, course(elk)));
    }

    private static void settings(ElkNode root) {
        root.setProperty(CoreOptions.ALGORITHM, LayeredOptions.ALGORITHM_ID);
        root.setProperty(CoreOptions.DIRECTION, Direction.DOWN);
        root.setProperty(CoreOptions.EDGE_ROUTING, EdgeRouting.ORTHOGONAL);
        root.setProperty(CoreOptions.RANDOM_SEED, 1);
        root.setProperty(LayeredOptions.CYCLE_BREAKING_STRATEGY, CycleBreakingStrategy.DEPTH_FIRST);
        root.setProperty(LayeredOptions.SPACING_NODE_NODE_BETWEEN_LAYERS, BETWEEN_LAYERS_PT);
        root.setProperty(CoreOptions.SPACING_NODE_NODE, BETWEEN_PARTS_PT);
        root.setProperty(CoreOptions.SPACING_EDGE_NODE, LINES_APART_PT);
        root.setProperty(LayeredOptions.SPACING_EDGE_NODE_BETWEEN_LAYERS, LINES_APART_PT);
        root.setProperty(CoreOptions.SPACING_EDGE_EDGE, LINES_APART_PT);
        root.setProperty(LayeredOptions.SPACING_EDGE_EDGE_BETWEEN_LAYERS, LINES_APART_PT);
    }

    private void node(ElkNode root, StopFigure f) {
        ElkNode n = ElkGraphUtil.createNode(root);
        n.setDimensions(f.widthPt(), f.heightPt());
        n.setProperty(CoreOptions.PORT_CONSTRAINTS, PortConstraints.FIXED_POS);
        nodes.put(f.stop, n);
        for (Symbol.Use u : f.stop.uses) {
            ElkPort p = ElkGraphUtil.createPort(n);
            boolean top = f.side(u.key()) == Side.TOP;
            p.setProperty(CoreOptions.PORT_SIDE, top ? PortSide.NORTH : PortSide.SOUTH);
            p.setLocation(f.offsetPt(u.key()), top ? 0 : f.heightPt());
            ports.put(key(f.stop, u.key()), p);
        }
    }

    private ElkPort port(FlowGraph.Stop stop, String key) {
        return ports.get(key(stop, key));
    }

    private static String key(FlowGraph.Stop stop, String port) {
        return stop.firstLeg + " " + port;
    }

    private static List<Point2D> course(ElkEdge edge) {
        List<Point2D> points = new ArrayList<>();
        for (ElkEdgeSection s : edge.getSections()) {
            points.add(new Point2D.Double(s.getStartX(), s.getStartY()));
            for (ElkBendPoint b : s.getBendPoints()) {
                points.add(new Point2D.Double(b.getX(), b.getY()));
            }
            points.add(new Point2D.Double(s.getEndX(), s.getEndY()));
        }
        return points;
    }
}
