package linewalk.renderer.scheme;

import java.util.List;
import linewalk.renderer.iso.Side;

/**
 * A line that joins two or more nodes.
 *
 * @param name unique in the scheme and the same in every run
 * @param height between the nodes it joins, 0 to 1
 */
public record Net(String name, double height, List<Meeting> meetings) {

    /** Where a net meets a node. */
    public record Meeting(Node node, String port) {}

    /** The node lies below the net: its line leaves upwards. */
    public static boolean leavesUpwards(Meeting m, double netHeight) {
        Side side = m.node().figure().place(m.port()).side();
        return side == Side.TOP || side != Side.BOTTOM && m.node().height() <= netHeight;
    }

    public Net {
        meetings = List.copyOf(meetings);
    }

    /** Of the name alone, which is kept: nets are keys where each layout is tried. */
    @Override
    public int hashCode() {
        return name.hashCode();
    }
}
