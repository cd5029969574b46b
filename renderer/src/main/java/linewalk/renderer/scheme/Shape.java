package linewalk.renderer.scheme;

import java.awt.geom.Point2D;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linewalk.renderer.iso.PortPlace;

/** All that the kernel is told of a piece, without what stands in its nodes: pieces of one shape are laid out alike. */
record Shape(List<Size> nodes, List<List<End>> nets) {

    /** A net's end at a node, which goes by its place in the scheme. */
    private record End(int node, String port, PortPlace place, boolean isUpwards) {}

    static Shape of(Scheme scheme) {
        Map<Node, Integer> numbers = new IdentityHashMap<>();
        scheme.nodes().forEach(n -> numbers.put(n, numbers.size()));
        return new Shape(
                scheme.nodes().stream().map(Node::size).toList(),
                scheme.nets().stream()
                        .map(net -> net.meetings().stream()
                                .map(m -> new End(
                                        numbers.get(m.node()),
                                        m.port(),
                                        m.node().figure().place(m.port()),
                                        Net.leavesUpwards(m, net.height())))
                                .toList())
                        .toList());
    }

    /**
     * The layout of one scheme for another of the same shape.
     *
     * @param from what was laid out
     */
    static Layout carried(Layout layout, Scheme from, Scheme to) {
        Map<Node, Node> nodes = new HashMap<>();
        Map<Net, Net> nets = new IdentityHashMap<>();
        Map<Net.Meeting, Net.Meeting> meetings = new IdentityHashMap<>();
        for (int i = 0; i < from.nodes().size(); i++) {
            nodes.put(from.nodes().get(i), to.nodes().get(i));
        }
        for (int i = 0; i < from.nets().size(); i++) {
            Net net = from.nets().get(i);
            nets.put(net, to.nets().get(i));
            for (int m = 0; m < net.meetings().size(); m++) {
                meetings.put(net.meetings().get(m), to.nets().get(i).meetings().get(m));
            }
        }
        Map<Node, Point2D> places = new LinkedHashMap<>();
        layout.places().forEach((node, at) -> places.put(nodes.get(node), at));
        List<Layout.Course> courses = layout.courses().stream()
                .map(c ->
                        new Layout.Course(nets.get(c.net()), meetings.get(c.from()), meetings.get(c.to()), c.points()))
                .toList();
        return new Layout(layout.widthPt(), layout.heightPt(), places, courses, layout.dots());
    }
}
