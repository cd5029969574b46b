package linewalk.renderer.scheme;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import linewalk.renderer.iso.Side;

/** How large parts of a scheme are likely to be once they are laid out, each with its match marks. */
final class Expected {

    /** Of a net, at the node of this number. */
    private record End(int node, boolean isUpwards, boolean isSideways) {}

    private final Numbered scheme;
    private final Function<Net, Size> mark;
    private final List<List<End>> ends;
    private final Map<BitSet, List<Size>> known = new ConcurrentHashMap<>();

    /** @param mark the size of a net's match mark */
    Expected(Numbered scheme, Function<Net, Size> mark) {
        this.scheme = scheme;
        this.mark = mark;
        ends = scheme.scheme().nets().stream().map(this::ends).toList();
    }

    private List<End> ends(Net net) {
        return net.meetings().stream()
                .map(m -> {
                    Side side = m.node().figure().place(m.port()).side();
                    return new End(
                            scheme.number(m.node()),
                            Net.leavesUpwards(m, net.height()),
                            side == Side.LEFT || side == Side.RIGHT);
                })
                .toList();
    }

    /** @param acrossPt width that the pieces of the part may take */
    Size size(BitSet part, double acrossPt) {
        return Shelves.size(pieces(part), acrossPt);
    }

    /** Of each piece. */
    List<Size> pieces(BitSet part) {
        List<Size> pieces = known.get(part);
        if (pieces == null) {
            pieces = outlines(part);
            known.put(part, pieces);
        }
        return pieces;
    }

    private List<Size> outlines(BitSet part) {
        List<Size> pieces = new ArrayList<>();
        BitSet left = (BitSet) part.clone();
        while (!left.isEmpty()) {
            BitSet piece = piece(left);
            left.andNot(piece);
            pieces.add(outline(piece));
        }
        return pieces;
    }

    /** What nets join to the first node of a part. */
    private BitSet piece(BitSet part) {
        BitSet piece = new BitSet();
        BitSet open = new BitSet();
        open.set(part.nextSetBit(0));
        while (!open.isEmpty()) {
            piece.or(open);
            BitSet nets = scheme.netsOf(open);
            open.clear();
            nets.stream().forEach(n -> open.or(scheme.nodesOf(n)));
            open.and(part);
            open.andNot(piece);
        }
        return piece;
    }

    private Size outline(BitSet piece) {
        Outline outline = new Outline();
        int[] boxes = new int[piece.length()];
        piece.stream().forEach(n -> boxes[n] = outline.add(scheme.node(n).size()));
        scheme.netsOf(piece).stream().forEach(n -> add(n, piece, boxes, outline));
        return outline.size();
    }

    private void add(int net, BitSet piece, int[] boxes, Outline outline) {
        List<Integer> below = new ArrayList<>();
        List<Integer> above = new ArrayList<>();
        for (End end : ends.get(net)) {
            if (piece.get(end.node)) {
                (end.isUpwards ? below : above).add(boxes[end.node]);
                if (end.isSideways) {
                    outline.leavesSideways(boxes[end.node]);
                }
            }
        }
        if (below.size() + above.size() < ends.get(net).size()) {
            (below.isEmpty() ? below : above).add(outline.add(mark.apply(scheme.net(net))));
        }
        outline.add(below, above);
    }
}
