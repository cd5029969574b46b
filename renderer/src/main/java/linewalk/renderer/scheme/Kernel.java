package linewalk.renderer.scheme;

import java.util.function.Predicate;
import org.eclipse.elk.alg.layered.ElkLayered;
import org.eclipse.elk.alg.layered.graph.LGraph;
import org.eclipse.elk.alg.layered.graph.transform.ElkGraphTransformer;
import org.eclipse.elk.alg.layered.options.LayeredOptions;
import org.eclipse.elk.alg.layered.p4nodes.NetworkSimplexPlacer;
import org.eclipse.elk.core.alg.ILayoutProcessor;
import org.eclipse.elk.core.testing.TestController;
import org.eclipse.elk.core.util.BasicProgressMonitor;
import org.eclipse.elk.graph.ElkNode;

/**
 * The layout kernel with a phase of our own put in: {@link NeighbourOrder} comes after the kernel's crossing
 * minimisation, when lines of one net that came to stand side by side have been merged. The kernel has no other place for
 * a foreign phase than the one made for watching it.
 */
final class Kernel implements TestController.ILayoutExecutionListener {

    private final Predicate<ElkNode> turns;

    private Kernel(Predicate<ElkNode> turns) {
        this.turns = turns;
    }

    /**
     * Lays a graph out, without telling its nodes and edges their places.
     *
     * @param turns nodes at which lines only turn back
     */
    static LGraph laidOut(ElkNode graph, Predicate<ElkNode> turns) {
        TestController phases = new TestController(LayeredOptions.ALGORITHM_ID);
        phases.addLayoutExecutionListener(new Kernel(turns));
        ElkLayered layered = new ElkLayered();
        layered.setTestController(phases);
        LGraph inner = new ElkGraphTransformer().importGraph(graph);
        layered.doLayout(inner, new BasicProgressMonitor());
        return inner;
    }

    /** Tells the nodes and edges from which a layout was made their places. */
    static void place(LGraph laidOut) {
        new ElkGraphTransformer().applyLayout(laidOut);
    }

    @Override
    public void layoutProcessorReady(ILayoutProcessor<?> phase, Object graph, boolean isRoot) {
        if (phase instanceof NetworkSimplexPlacer) {
            NeighbourOrder.improve((LGraph) graph, turns);
        }
    }

    @Override
    public void layoutProcessorFinished(ILayoutProcessor<?> phase, Object graph, boolean isRoot) {
        // only what comes before a phase is of use
    }
}
