package linewalk.importer.scan;

import boofcv.struct.image.GrayU8;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntConsumer;

/**
 * A skeleton as nodes, where it ends or branches, and the ways of pixels between them. Twigs shorter than the ink is
 * thick come from rough edges and go; branch points nearer to each other than that are one.
 */
final class Web {

    /** Where ways meet or end, in pixels. */
    static final class Node {
        double x;
        double y;
        final List<Way> ways = new ArrayList<>();

        /** How thick the ink is here. */
        double thick;
    }

    /** Pixels between two nodes, without them; a ring has none. */
    static final class Way {
        Node a;
        Node b;
        int[] xs;
        int[] ys;

        int length() {
            return xs.length;
        }

        /** From its first pixel to just beyond its last, as the crow flies. */
        double reach() {
            int last = length() - 1;
            return 1 + Math.hypot(xs[last] - xs[0], ys[last] - ys[0]);
        }
    }

    private static final double TWIG = 0.75;

    private final GrayU8 skeleton;
    private final Bits ink;
    private final Gauge gauge;

    /** From a pixel to its neighbours in the raster. */
    private final int[] around;

    private final Map<Integer, Node> nodeAt = new HashMap<>();
    private final Set<Node> nodes = new LinkedHashSet<>();
    private final Set<Way> ways = new LinkedHashSet<>();

    private Web(GrayU8 skeleton, Bits ink) {
        this.skeleton = skeleton;
        this.ink = ink;
        this.gauge = new Gauge(ink);
        int s = skeleton.stride;
        around = new int[] {1, -1, s, -s, s + 1, s - 1, -s + 1, -s - 1};
    }

    /** @param ink what the skeleton was made of, or more */
    static Web of(GrayU8 skeleton, Bits ink) {
        Web web = new Web(skeleton, ink);
        web.findNodes();
        web.walkAll();
        web.prune();
        web.contract();
        web.prune();
        web.joinThrough();
        return web;
    }

    Set<Way> ways() {
        return ways;
    }

    Set<Node> nodes() {
        return nodes;
    }

    private int at(int x, int y) {
        return skeleton.startIndex + y * skeleton.stride + x;
    }

    private int degree(int at) {
        int sum = 0;
        for (int d : around) {
            sum += skeleton.data[at + d] != 0 ? 1 : 0;
        }
        return sum;
    }

    private void findNodes() {
        List<Integer> found = new ArrayList<>();
        forEachPixel(at -> {
            if (degree(at) != 2) {
                found.add(at);
            }
        });
        for (int at : found) {
            skeleton.data[at] = 2;
        }
        for (int at : found) {
            if (!nodeAt.containsKey(at)) {
                gather(at);
            }
        }
    }

    private void gather(int start) {
        Node node = new Node();
        List<Integer> pixels = new ArrayList<>(List.of(start));
        nodeAt.put(start, node);
        for (int i = 0; i < pixels.size(); i++) {
            for (int d : around) {
                int next = pixels.get(i) + d;
                if (skeleton.data[next] == 2 && nodeAt.putIfAbsent(next, node) == null) {
                    pixels.add(next);
                }
            }
        }
        for (int at : pixels) {
            node.x += x(at) / (double) pixels.size();
            node.y += y(at) / (double) pixels.size();
        }
        node.thick = gauge.thickness((int) Math.round(node.x), (int) Math.round(node.y));
        nodes.add(node);
    }

    private int x(int at) {
        return (at - skeleton.startIndex) % skeleton.stride;
    }

    private int y(int at) {
        return (at - skeleton.startIndex) / skeleton.stride;
    }

    private void walkAll() {
        for (Map.Entry<Integer, Node> e : List.copyOf(nodeAt.entrySet())) {
            for (int d : around) {
                if (skeleton.data[e.getKey() + d] == 1) {
                    walk(e.getValue(), e.getKey() + d);
                }
            }
        }
        forEachPixel(at -> {
            if (skeleton.data[at] == 1) {
                walk(null, at);
            }
        });
    }

    /** Row by row; where there is no ink there is no skeleton, and most of a page has none. */
    private void forEachPixel(IntConsumer use) {
        for (int y = 1; y + 1 < skeleton.height; y++) {
            for (int x = ink.nextInk(1, y); x + 1 < skeleton.width; x = ink.nextInk(x + 1, y)) {
                if (skeleton.data[at(x, y)] != 0) {
                    use.accept(at(x, y));
                }
            }
        }
    }

    private void walk(Node from, int start) {
        List<Integer> pixels = new ArrayList<>();
        Node to = null;
        for (int at = start; at >= 0; ) {
            pixels.add(at);
            skeleton.data[at] = 3;
            int next = -1;
            for (int d : around) {
                byte v = skeleton.data[at + d];
                if (v == 1 && next < 0) {
                    next = at + d;
                } else if (v == 2) {
                    Node n = nodeAt.get(at + d);
                    // the first pixel of a way touches the node that it comes from
                    to = n != from || pixels.size() > 2 ? n : to;
                }
            }
            at = to != null ? -1 : next;
        }
        Way way = new Way();
        way.xs = pixels.stream().mapToInt(this::x).toArray();
        way.ys = pixels.stream().mapToInt(this::y).toArray();
        way.a = from;
        way.b = from != null && to == null ? lostEnd(way) : to;
        add(way);
    }

    /** A way that stops beside its own start. */
    private Node lostEnd(Way way) {
        Node n = new Node();
        n.x = way.xs[way.length() - 1];
        n.y = way.ys[way.length() - 1];
        n.thick = gauge.thickness((int) n.x, (int) n.y);
        nodes.add(n);
        return n;
    }

    private void add(Way way) {
        ways.add(way);
        if (way.a != null) {
            way.a.ways.add(way);
        }
        if (way.b != null) {
            way.b.ways.add(way);
        }
    }

    private void remove(Way way) {
        ways.remove(way);
        for (Node n : new Node[] {way.a, way.b}) {
            if (n != null) {
                n.ways.removeIf(w -> w == way);
                if (n.ways.isEmpty()) {
                    nodes.remove(n);
                }
            }
        }
    }

    private void prune() {
        List<Way> twigs = new ArrayList<>();
        for (Way w : ways) {
            if (w.a == null || w.b == null) {
                continue;
            }
            Node free = w.a.ways.size() == 1 ? w.a : w.b.ways.size() == 1 ? w.b : null;
            Node tree = free == w.a ? w.b : w.a;
            boolean twig =
                    free != null && tree.ways.size() > 2 && w.reach() < TWIG * Math.max(tree.thick, thickAlong(w)) + 1;
            if (twig || w.a == w.b && w.length() < w.a.thick) {
                twigs.add(w);
            }
        }
        twigs.forEach(this::remove);
        nodes.removeIf(n -> n.ways.isEmpty());
    }

    private double thickAlong(Way w) {
        return gauge.thickness(w.xs[w.length() / 2], w.ys[w.length() / 2]);
    }

    private void contract() {
        for (Way w : List.copyOf(ways)) {
            boolean between = w.a != null && w.b != null && w.a != w.b && w.a.ways.size() > 2 && w.b.ways.size() > 2;
            if (between && ways.contains(w) && w.length() < 0.8 * Math.min(w.a.thick, w.b.thick)) {
                merge(w);
            }
        }
    }

    private void merge(Way w) {
        Node a = w.a;
        Node b = w.b;
        a.x = (a.x + b.x) / 2;
        a.y = (a.y + b.y) / 2;
        a.thick = Math.max(a.thick, b.thick);
        a.ways.removeIf(x -> x == w);
        for (Way other : b.ways) {
            if (other != w) {
                other.a = other.a == b ? a : other.a;
                other.b = other.b == b ? a : other.b;
                a.ways.add(other);
            }
        }
        ways.remove(w);
        nodes.remove(b);
    }

    /** Where a twig went, the two ways left are one. */
    private void joinThrough() {
        for (Node n : List.copyOf(nodes)) {
            if (n.ways.size() == 2 && n.ways.get(0) != n.ways.get(1)) {
                Way one = n.ways.get(0);
                Way two = n.ways.get(1);
                Way whole = new Way();
                boolean forth = one.b == n;
                boolean on = two.a == n;
                whole.a = forth ? one.a : one.b;
                whole.b = on ? two.b : two.a;
                whole.xs = chained(one.xs, forth, two.xs, on);
                whole.ys = chained(one.ys, forth, two.ys, on);
                remove(one);
                remove(two);
                nodes.remove(n);
                if (whole.a != null) {
                    nodes.add(whole.a);
                }
                if (whole.b != null) {
                    nodes.add(whole.b);
                }
                add(whole);
            }
        }
    }

    private static int[] chained(int[] a, boolean forth, int[] b, boolean on) {
        int[] out = new int[a.length + b.length];
        for (int i = 0; i < a.length; i++) {
            out[i] = a[forth ? i : a.length - 1 - i];
        }
        for (int i = 0; i < b.length; i++) {
            out[a.length + i] = b[on ? i : b.length - 1 - i];
        }
        return out;
    }
}
