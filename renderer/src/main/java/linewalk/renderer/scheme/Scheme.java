package linewalk.renderer.scheme;

import java.util.List;

/** Nodes and the nets that join them, in an order that a small change of the set changes little. */
public record Scheme(List<Node> nodes, List<Net> nets) {

    public Scheme {
        nodes = List.copyOf(nodes);
        nets = List.copyOf(nets);
    }
}
