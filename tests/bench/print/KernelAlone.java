package linewalk.renderer.scheme;

import org.eclipse.elk.core.RecursiveGraphLayoutEngine;
import org.eclipse.elk.core.util.BasicProgressMonitor;
import org.eclipse.elk.graph.ElkNode;

/** The layout kernel as it comes, on the graph that a print gives it. */
public final class KernelAlone {

    private KernelAlone() {}

    /** @return milliseconds for the layout alone; the graph is made before the clock starts */
    public static double layOutMs(Scheme scheme) {
        ElkNode graph = Layering.graph(scheme);
        long start = System.nanoTime();
        new RecursiveGraphLayoutEngine().layout(graph, new BasicProgressMonitor());
        return (System.nanoTime() - start) / 1e6;
    }
}
