package linewalk.importer.stroke;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.Box;
import linewalk.importer.lettering.Cell;
import linewalk.importer.page.Near;

/**
 * Blobs to rows along one direction: neighbours that stand on one baseline, drawn with one pen, at the distances of
 * letters. Small letters, stops and hyphens join the row that they stand in.
 */
final class Baselines {

    /** All in heights of a capital. */
    private static final double LEVEL = 0.1;

    private static final double SMALL_LETTER = 0.58;
    private static final double WIDEST = 1.4;
    /** With a hyphen or stroke between. */
    private static final double ACROSS = 2.3;

    /** Two letters that touch. */
    private static final double TOUCHING = 2.6;

    static final double GAP = 1.25;
    private static final double OVERLAP = -0.6;
    private static final double DESCENT = 0.45;

    /** A stop drawn as a small outline. */
    private static final double STOP = 0.25;

    /** The cap of a test point beside its name: it ends above this, and is so many times as broad as high. */
    private static final double MIDDLE = 0.5;

    private static final double FLAT = 1.5;

    private static final double SAME_HEIGHT = 0.03;

    /** Capitals are no lower than this, compared with brackets and the tallest small letters. */
    private static final double CAPITAL = 0.78;

    private static final double SAME_PEN = 0.25;

    private final Turn turn;
    private final Cell cell;
    private final List<Placed> all;
    private final Near<Integer> near;
    private final int[] parent;
    private final Set<Integer> claimed = new HashSet<>();

    private Baselines(List<Blob> blobs, Turn turn, Cell cell) {
        this.turn = turn;
        this.cell = cell;
        all = blobs.stream().map(b -> Placed.of(b, turn)).toList();
        List<Integer> index = new ArrayList<>();
        parent = new int[all.size()];
        for (int i = 0; i < parent.length; i++) {
            parent[i] = i;
            index.add(i);
        }
        near = new Near<>(index, i -> box(all.get(i)));
    }

    private static Box box(Placed p) {
        return new Box(p.u0(), p.v0(), p.u1(), p.v1());
    }

    /** A row before its letters are put together. */
    record Draft(Turn turn, List<Placed> parts, double heightPt, double baselinePt) {

        Draft without(Set<Piece> owned) {
            List<Placed> rest = parts.stream()
                    .filter(p -> !owned.contains(p.pieces().get(0)))
                    .toList();
            return new Draft(turn, rest, heightPt, baselinePt);
        }

        /** Two signs at least, and not strokes alone. */
        boolean lettered() {
            return parts.size() > 1 && parts.stream().anyMatch(p -> !p.straight());
        }
    }

    static List<Draft> find(List<Blob> blobs, Turn turn, Cell cell) {
        return new Baselines(blobs, turn, cell).rows();
    }

    private List<Draft> rows() {
        for (int i = 0; i < all.size(); i++) {
            Placed a = all.get(i);
            double reach = ACROSS * a.heightPt() / SMALL_LETTER;
            for (int j : near.touching(new Box(a.u0(), a.v0(), a.u1() + reach, a.v1()).grow(0.2 * a.heightPt()))) {
                if (j != i
                        && neighbours(a, all.get(j))
                        && (gap(a, all.get(j)) < cell.reach(GAP) || joined(a, all.get(j)))) {
                    parent[root(j)] = root(i);
                }
            }
        }
        Map<Integer, List<Integer>> groups = new HashMap<>();
        for (int i = 0; i < all.size(); i++) {
            groups.computeIfAbsent(root(i), k -> new ArrayList<>()).add(i);
        }
        List<List<Integer>> bySize = new ArrayList<>(groups.values());
        bySize.sort(Comparator.comparingInt((List<Integer> g) -> -g.size()).thenComparing(g -> g.get(0)));
        List<Draft> rows = new ArrayList<>();
        for (List<Integer> g : bySize) {
            g.removeAll(claimed);
            if (g.size() > 1 && g.stream().anyMatch(i -> !all.get(i).straight())) {
                rows.add(grown(g));
            }
        }
        return rows;
    }

    private int root(int i) {
        while (parent[i] != i) {
            parent[i] = parent[parent[i]];
            i = parent[i];
        }
        return i;
    }

    private static boolean neighbours(Placed a, Placed b) {
        double high = Math.max(a.heightPt(), b.heightPt());
        double low = Math.min(a.heightPt(), b.heightPt());
        double gap = b.u0() - a.u1();
        boolean level = Math.abs(a.v1() - b.v1()) < LEVEL * high || Math.abs(a.v0() - b.v0()) < LEVEL / 2 * high;
        return low > SMALL_LETTER * high
                && level
                && a.widthPt() < WIDEST * high
                && b.widthPt() < WIDEST * high
                && b.u0() > a.u0()
                && gap < ACROSS * high
                && gap > OVERLAP * high
                && samePen(a.penPt(), b.penPt());
    }

    private double gap(Placed a, Placed b) {
        return cell.gap(a.span(), b.span(), Math.max(a.heightPt(), b.heightPt()));
    }

    /** A hyphen, stroke or stop stands between two letters. */
    private boolean joined(Placed a, Placed b) {
        double high = Math.max(a.heightPt(), b.heightPt());
        double base = Math.min(a.v1(), b.v1());
        Box between = new Box(a.u1(), base - high, b.u0(), base);
        return near.touching(between).stream()
                .map(all::get)
                .anyMatch(p -> p != a
                        && p != b
                        && (p.straight() || p.heightPt() < STOP * high && p.widthPt() < STOP * high)
                        && fits(p, high, base)
                        && samePen(p.penPt(), a.penPt())
                        && cell.gap(a.span(), p.span(), high) < GAP / 2
                        && cell.gap(p.span(), b.span(), high) < GAP / 2);
    }

    private static boolean samePen(double a, double b) {
        return Math.abs(a - b) <= SAME_PEN * Math.max(a, b);
    }

    /** With everything that stands in the row: stops, hyphens, letters that reach below the baseline, words after a stroke. */
    private Draft grown(List<Integer> group) {
        double base = median(group.stream().map(i -> all.get(i).v1()).toList());
        double high = high(group, base);
        double pen = all.get(group.get(0)).penPt();
        double left = group.stream().mapToDouble(i -> all.get(i).u0()).min().orElseThrow();
        double right = group.stream().mapToDouble(i -> all.get(i).u1()).max().orElseThrow();
        List<Integer> row = new ArrayList<>(group);
        claimed.addAll(group);
        boolean grew = true;
        while (grew) {
            grew = false;
            double reach = cell.reach(GAP) * high;
            Box band = new Box(left - reach, base - 1.2 * high, right + reach, base + DESCENT * high);
            for (int j : near.touching(band).stream().sorted().toList()) {
                Placed p = all.get(j);
                if (!claimed.contains(j) && fits(p, high, base) && samePen(p.penPt(), pen)) {
                    row.add(j);
                    claimed.add(j);
                    left = Math.min(left, p.u0());
                    right = Math.max(right, p.u1());
                    grew = true;
                }
            }
        }
        high = high(row, base);
        List<Placed> parts = new ArrayList<>(row.stream().map(all::get).toList());
        parts.sort(Comparator.comparingDouble(Placed::u0));
        return new Draft(turn, parts, high, base);
    }

    /** Of capitals: the height that most signs on the baseline have, small letters aside. */
    private double high(List<Integer> row, double base) {
        List<Double> heights = new ArrayList<>();
        for (int i : row) {
            Placed p = all.get(i);
            if (Math.abs(p.v1() - base) < LEVEL * p.heightPt()) {
                heights.add(p.heightPt());
            }
        }
        double highest = heights.stream().mapToDouble(h -> h).max().orElse(0);
        double best = highest;
        long most = 0;
        for (double h : heights) {
            long like = heights.stream()
                    .filter(o -> Math.abs(o - h) < SAME_HEIGHT * h)
                    .count();
            if (h > CAPITAL * highest && (like > most || like == most && h > best)) {
                best = h;
                most = like;
            }
        }
        return best;
    }

    private static boolean fits(Placed p, double high, double base) {
        // as high as a letter and above the baseline: it belongs to a text of another size beside this one
        boolean floats = p.heightPt() > SMALL_LETTER * high && p.v1() < base - LEVEL * high;
        // flat, and as high up as a degree or inch sign, which are not flat
        boolean cap = !p.straight() && p.v1() < base - MIDDLE * high && p.widthPt() > FLAT * p.heightPt();
        return !floats
                && !cap
                && p.v0() > base - 1.2 * high
                && p.v1() < base + DESCENT * high
                && p.widthPt() < TOUCHING * high;
    }

    static double median(List<Double> values) {
        List<Double> sorted = values.stream().sorted().toList();
        return sorted.get((sorted.size() - 1) / 2);
    }
}
