package linewalk.renderer.scheme;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.eclipse.elk.alg.common.networksimplex.NEdge;
import org.eclipse.elk.alg.common.networksimplex.NGraph;
import org.eclipse.elk.alg.common.networksimplex.NNode;
import org.eclipse.elk.alg.common.networksimplex.NetworkSimplex;

/**
 * Tells about how large the layout of a piece will be: its boxes are put in layers as the kernel does it, but neither in
 * an order nor in places. Measured on 10,000 layouts of random circuits: eight heights of ten came within 0.03 of what is
 * told, and eight widths of ten between 0.91 and 1.22 times.
 */
final class Outline {

    private static final double BETWEEN_BOXES_PT = 16;
    private static final double BETWEEN_LINES_PT = 10;
    /** Layouts are so much wider than their widest layer. */
    private static final double WIDER = 1.1;
    /** Layouts have so much between two layers, and so much more for each net that passes there. */
    private static final double GAP_PT = 15.6;

    private static final double NET_IN_GAP_PT = 1.9;

    private record Line(int from, int to, int net) {}

    private static final class Layer {
        double boxesPt;
        double heightPt;
        int boxes;
        int sideways;
        final BitSet passing = new BitSet();
        final BitSet above = new BitSet();

        double widthPt() {
            return boxesPt + (boxes - 1) * BETWEEN_BOXES_PT + (passing.cardinality() + sideways) * BETWEEN_LINES_PT;
        }
    }

    private final List<Size> boxes = new ArrayList<>();
    private final List<Integer> sideways = new ArrayList<>();
    private final List<Line> lines = new ArrayList<>();
    private int nets;

    /** @return its number */
    int add(Size box) {
        boxes.add(box);
        sideways.add(0);
        return boxes.size() - 1;
    }

    /** A line leaves a box on its left or right. */
    void leavesSideways(int box) {
        sideways.set(box, sideways.get(box) + 1);
    }

    /** A net, by the numbers of the boxes below and above it. */
    void add(List<Integer> below, List<Integer> above) {
        if (below.isEmpty() || above.isEmpty()) {
            int turn = add(new Size(0, 0));
            below.forEach(b -> line(b, turn));
            above.forEach(a -> line(turn, a));
        } else {
            above.forEach(a -> line(below.get(0), a));
            below.subList(1, below.size()).forEach(b -> line(b, above.get(0)));
        }
        nets++;
    }

    private void line(int from, int to) {
        if (from != to) {
            lines.add(new Line(from, to, nets));
        }
    }

    Size size() {
        List<Layer> layers = layers();
        double widthPt = layers.stream().mapToDouble(Layer::widthPt).max().orElse(0);
        double heightPt = layers.stream().mapToDouble(l -> l.heightPt).sum();
        int between = layers.size() - 1;
        int above = layers.stream().mapToInt(l -> l.above.cardinality()).sum();
        return new Size(
                boxes.size() == 1 ? widthPt : WIDER * widthPt, heightPt + between * GAP_PT + above * NET_IN_GAP_PT);
    }

    private List<Layer> layers() {
        int[] layerOf = layerOfBoxes();
        List<Layer> layers = new ArrayList<>();
        for (int i = 0; i < layerOf.length; i++) {
            while (layers.size() <= layerOf[i]) {
                layers.add(new Layer());
            }
            Layer l = layers.get(layerOf[i]);
            l.boxesPt += boxes.get(i).widthPt();
            l.heightPt = Math.max(l.heightPt, boxes.get(i).heightPt());
            l.sideways += sideways.get(i);
            l.boxes++;
        }
        for (Line line : lines) {
            int low = Math.min(layerOf[line.from], layerOf[line.to]);
            int high = Math.max(layerOf[line.from], layerOf[line.to]);
            for (int i = low; i < high; i++) {
                layers.get(i).above.set(line.net);
                layers.get(i)
                        .passing
                        .set(line.net, i > low || layers.get(i).passing.get(line.net));
            }
        }
        return layers;
    }

    private int[] layerOfBoxes() {
        NGraph graph = new NGraph();
        List<NNode> nodes = new ArrayList<>();
        for (int i = 0; i < boxes.size(); i++) {
            nodes.add(NNode.of().id(i).create(graph));
        }
        for (Line l : new Upwards().lines()) {
            NEdge.of()
                    .source(nodes.get(l.from))
                    .target(nodes.get(l.to))
                    .delta(1)
                    .weight(1)
                    .create();
        }
        NetworkSimplex.forGraph(graph).withBalancing(true).execute();
        return nodes.stream().mapToInt(n -> n.layer).toArray();
    }

    /** Lines turned about where they would close a circle. */
    private final class Upwards {

        private final List<List<Line>> leaving = new ArrayList<>();
        private final BitSet met = new BitSet();
        private final BitSet open = new BitSet();
        private final List<Line> upwards = new ArrayList<>();

        List<Line> lines() {
            boxes.forEach(b -> leaving.add(new ArrayList<>()));
            lines.forEach(l -> leaving.get(l.from).add(l));
            for (int i = 0; i < boxes.size(); i++) {
                follow(i);
            }
            return upwards;
        }

        private void follow(int box) {
            if (met.get(box)) {
                return;
            }
            met.set(box);
            open.set(box);
            for (Line l : leaving.get(box)) {
                upwards.add(open.get(l.to) ? new Line(l.to, l.from, l.net) : l);
                follow(l.to);
            }
            open.clear(box);
        }
    }
}
