package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.Box;
import linewalk.importer.lettering.Cell;
import linewalk.importer.page.Near;

/**
 * Finds what may be lettering by its rhythm: blobs of about one height side by side, with gaps of at most about a letter.
 * Nothing is taken for text here; reading decides.
 */
final class TextRows {

    /** Lettering on drawings is 1.8 to 10 mm high (ISO 3098: 2.5 to 5 mm), a little more room for bad scans. */
    private static final double LEAST_MM = 0.9;

    private static final double MOST_MM = 12;

    private static final double SAME_HEIGHT = 0.62;
    private static final double GAP = 1.0;

    /** How much of the lower one's height two neighbours have in common. */
    private static final double LEVEL = 0.7;

    /** A hyphen's length (0.81 in bold letters of fixed pitch), and the height of a stop or comma that could be a small letter, in heights of a capital. */
    private static final double DASH = 0.95;

    private static final double STOP = 0.55;

    /** How far a hyphen reaches off the middle of a capital, and how far from it letters stand, in heights of a capital. */
    private static final double OFF_MIDDLE = 0.3;

    private static final double BESIDE_HYPHEN = 0.4;

    private static final double BEYOND = 0.6;

    /** Share of their box that letters fill. */
    private static final double LEAST_SOLID = 0.15;

    private final Bits ink;
    private final double pxPerMm;
    private final Thickness thickness;
    private Cell cell = Cell.NONE;
    private final List<Blob> letters = new ArrayList<>();
    private final List<Blob> small = new ArrayList<>();
    private final Near<Blob> bars;

    /** @param ink of the page, line work too */
    TextRows(List<Blob> blobs, Bits ink, double pxPerMm, Thickness thickness) {
        this.ink = ink;
        this.pxPerMm = pxPerMm;
        this.thickness = thickness;
        for (Blob b : blobs) {
            if (letter(b)) {
                letters.add(b);
            } else if (b.longer() < LEAST_MM * 2 * pxPerMm && b.ink() >= 2) {
                small.add(b);
            }
        }
        bars = new Near<>(blobs.stream().filter(this::bar).toList(), TextRows::box);
    }

    private boolean letter(Blob b) {
        double least = LEAST_MM * pxPerMm;
        double most = MOST_MM * pxPerMm;
        // a few letters that touch may be wide, yet no line with something at its end
        boolean touching = b.longer() < 4 * most && b.solid() > LEAST_SOLID;
        return b.longer() > least && b.shorter() < most && b.shorter() > 1 && (b.longer() < most || touching);
    }

    /** Rows of two letters or more, and after them each letter-like blob that stands alone. */
    List<TextRow> find() {
        List<TextRow> rows = distinct();
        Cell.Measure measure = new Cell.Measure();
        rows.forEach(r -> measure.add(spans(r), r.capPx()));
        cell = measure.cell();
        return withAlone(cell.fixed() ? distinct() : rows);
    }

    private static List<Cell.Span> spans(TextRow r) {
        return r.blobs().stream()
                .map(b -> span(b, r.along()))
                .sorted(Comparator.comparingDouble(Cell.Span::from))
                .toList();
    }

    private static Cell.Span span(Blob b, boolean along) {
        return along ? new Cell.Span(b.x0(), b.x1()) : new Cell.Span(b.y0(), b.y1());
    }

    /** No blob is in two of these rows. */
    private List<TextRow> distinct() {
        List<TextRow> along = rows(true);
        List<TextRow> down = rows(false);
        Set<Blob> taken = java.util.Collections.newSetFromMap(new IdentityHashMap<>());
        List<TextRow> all = new ArrayList<>(along);
        all.addAll(down);
        all.sort(Comparator.comparingDouble(TextRows::badness));
        List<TextRow> found = new ArrayList<>();
        for (TextRow r : all) {
            if (r.blobs().stream().noneMatch(taken::contains)) {
                found.add(r);
                taken.addAll(r.blobs());
            }
        }
        return found;
    }

    private List<TextRow> withAlone(List<TextRow> rows) {
        Set<Blob> taken = set(rows);
        // a comma of large lettering is as long as a small letter, and so is a hyphen
        List<Blob> left = letters.stream().filter(b -> !taken.contains(b)).toList();
        List<Blob> marks = new ArrayList<>(small);
        marks.addAll(left);
        List<TextRow> found = joined(withSmall(rows, marks), taken);
        taken.addAll(set(found));
        List<TextRow> alone = left.stream()
                .filter(b -> !taken.contains(b) && b.longer() < MOST_MM * pxPerMm)
                .filter(b -> !bar(b) && !b.oneStroke() || found.stream().anyMatch(r -> Halves.apart(b, r, ink)))
                .map(b -> new TextRow(List.of(b), b.height() >= 0.6 * b.width(), Cell.NONE))
                .toList();
        found.addAll(
                withSmall(alone, small.stream().filter(b -> !taken.contains(b)).toList()));
        return found;
    }

    /** A row goes on after a comma that stands between two of them. */
    private List<TextRow> joined(List<TextRow> rows, Set<Blob> letters) {
        List<TextRow> joined = new ArrayList<>();
        for (TextRow row : rows) {
            TextRow whole = row;
            for (TextRow other : List.copyOf(joined)) {
                if (goesOn(other, whole, letters) || goesOn(whole, other, letters)) {
                    joined.remove(other);
                    whole = other.with(whole.blobs());
                }
            }
            joined.add(whole);
        }
        return joined;
    }

    private boolean goesOn(TextRow a, TextRow b, Set<Blob> letters) {
        if (a.along() != b.along() || !alike(a.capPx(), b.capPx())) {
            return false;
        }
        Blob last = a.last(letters::contains);
        Blob first = b.first(letters::contains);
        Blob mark = a.last(x -> true) == last ? b.first(x -> true) : a.last(x -> true);
        double across = a.along()
                ? Math.min(a.y1(), b.y1()) - Math.max(a.y0(), b.y0())
                : Math.min(a.x1(), b.x1()) - Math.max(a.x0(), b.x0());
        double high = Math.max(a.capPx(), b.capPx());
        Cell.Span from = span(last, a.along());
        Cell.Span to = span(first, a.along());
        double room = Math.max(cell.pitch(), span(mark, a.along()).width() / high);
        return !letters.contains(mark)
                && across > LEVEL * high
                && to.from() > from.to()
                && cell.gap(from, to, high) < cell.reach(GAP) + room;
    }

    private static boolean alike(double capPx, double otherPx) {
        return Math.min(capPx, otherPx) > SAME_HEIGHT * Math.max(capPx, otherPx);
    }

    private static Set<Blob> set(List<TextRow> rows) {
        Set<Blob> set = java.util.Collections.newSetFromMap(new IdentityHashMap<>());
        rows.forEach(r -> set.addAll(r.blobs()));
        return set;
    }

    /** Longer rows with tighter gaps first: letters of a column of figures also stand one above the other. */
    private static double badness(TextRow r) {
        double length = r.along() ? r.x1() - r.x0() : r.y1() - r.y0();
        double ink = r.blobs().stream()
                .mapToDouble(b -> r.along() ? b.width() : b.height())
                .sum();
        double gaps = Math.max(0, length - ink) / Math.max(1, r.blobs().size() - 1);
        return gaps / r.capPx() - 0.05 * Math.min(8, r.blobs().size());
    }

    private List<TextRow> rows(boolean along) {
        List<Blob> able = letters.stream().filter(b -> stands(b, along)).toList();
        Near<Blob> near = new Near<>(able, TextRows::box);
        Map<Blob, List<Blob>> group = new IdentityHashMap<>();
        able.forEach(b -> group.put(b, new ArrayList<>(List.of(b))));
        for (Blob b : able) {
            for (Blob o : near.touching(reach(b, along))) {
                if (o != b && group.get(o) != group.get(b) && beside(b, o, along)) {
                    List<Blob> into = group.get(b);
                    List<Blob> from = group.get(o);
                    into.addAll(from);
                    from.forEach(x -> group.put(x, into));
                }
            }
        }
        Set<List<Blob>> distinct = java.util.Collections.newSetFromMap(new IdentityHashMap<>());
        return able.stream()
                .map(group::get)
                .filter(distinct::add)
                .filter(g -> g.size() > 1 && g.stream().anyMatch(b -> !bar(b) && !b.oneStroke()))
                .map(g -> new TextRow(List.copyOf(g), along, cell))
                .sorted(Comparator.comparingInt(TextRow::y0).thenComparingInt(TextRow::x0))
                .toList();
    }

    /** High enough across the row; a bar lying along the row is a dash. */
    private boolean stands(Blob b, boolean along) {
        double height = along ? b.height() : b.width();
        double length = along ? b.width() : b.height();
        return height > LEAST_MM * pxPerMm && height < MOST_MM * pxPerMm && length < 12 * height;
    }

    private boolean bar(Blob b) {
        return b.solid() > 0.75 && b.shorter() < 1.6 * thickness.thickPx() && b.longer() > 2.5 * b.shorter();
    }

    private static Box box(Blob b) {
        return new Box(b.x0(), b.y0(), b.x1(), b.y1());
    }

    private Box reach(Blob b, boolean along) {
        double high = along ? b.height() : b.width();
        double r = (cell.reach(GAP) + cell.width() + DASH) * high / SAME_HEIGHT;
        return along
                ? new Box(b.x0() - r, b.y0(), b.x1() + r, b.y1())
                : new Box(b.x0(), b.y0() - r, b.x1(), b.y1() + r);
    }

    private boolean beside(Blob a, Blob b, boolean along) {
        double ha = along ? a.height() : a.width();
        double hb = along ? b.height() : b.width();
        if (!alike(ha, hb)) {
            return false;
        }
        double overlap = along
                ? Math.min(a.y1(), b.y1()) - Math.max(a.y0(), b.y0())
                : Math.min(a.x1(), b.x1()) - Math.max(a.x0(), b.x0());
        Cell.Span sa = span(a, along);
        Cell.Span sb = span(b, along);
        double high = Math.max(ha, hb);
        double apart = Math.max(sa.from(), sb.from()) - Math.min(sa.to(), sb.to());
        double gap = sa.from() < sb.from() ? cell.gap(sa, sb, high) : cell.gap(sb, sa, high);
        return overlap > LEVEL * Math.min(ha, hb)
                && (gap < cell.reach(GAP)
                        || hyphened(sa.from() < sb.from() ? a : b, sa.from() < sb.from() ? b : a, along))
                && apart > -0.5 * Math.min(ha, hb)
                && !walled(a, b, along);
    }

    /** A line stands between them over all of the height that they share: one is within a figure. */
    private boolean walled(Blob a, Blob b, boolean along) {
        int from = along ? Math.min(a.x1(), b.x1()) : Math.min(a.y1(), b.y1());
        int to = along ? Math.max(a.x0(), b.x0()) : Math.max(a.y0(), b.y0());
        int low = along ? Math.max(a.y0(), b.y0()) : Math.max(a.x0(), b.x0());
        int high = along ? Math.min(a.y1(), b.y1()) : Math.min(a.x1(), b.x1());
        for (int across = low; across < high; across++) {
            boolean inked = false;
            for (int i = from; i < to && !inked; i++) {
                inked = along ? ink.get(i, across) : ink.get(across, i);
            }
            if (!inked) {
                return false;
            }
        }
        return to > from;
    }

    /** A bar at half their height fills the gap between two letters. */
    private boolean hyphened(Blob a, Blob b, boolean along) {
        double high = Math.max(along ? a.height() : a.width(), along ? b.height() : b.width());
        double middle = along ? (a.middleY() + b.middleY()) / 2 : (a.middleX() + b.middleX()) / 2;
        double half = OFF_MIDDLE * high;
        double from = span(a, along).to();
        double to = span(b, along).from();
        Box gap = along
                ? new Box(from, middle - half, to, middle + half)
                : new Box(middle - half, from, middle + half, to);
        return to > from
                && bars.touching(gap).stream()
                        .filter(bar -> gap.contains(box(bar)) && bar.longer() < DASH * high)
                        .map(bar -> span(bar, along))
                        .anyMatch(bar -> Math.max(bar.from() - from, to - bar.to()) < BESIDE_HYPHEN * high);
    }

    /** A bar beyond the row's ends may be a dash of a line that leads to the text. */
    private static boolean between(Blob b, TextRow r) {
        return r.along() ? b.x0() > r.x0() && b.x1() < r.x1() : b.y0() > r.y0() && b.y1() < r.y1();
    }

    /** Points, dashes, commas and accents go to the row that they stand in. */
    private List<TextRow> withSmall(List<TextRow> rows, List<Blob> marks) {
        Near<Blob> near = new Near<>(marks, TextRows::box);
        List<TextRow> out = new ArrayList<>();
        Set<Blob> used = java.util.Collections.newSetFromMap(new IdentityHashMap<>());
        for (TextRow r : rows) {
            double cap = r.capPx();
            double beyond = Math.max(BEYOND, cell.pitch()) * cap;
            Box band = r.along()
                    ? new Box(r.x0() - beyond, r.y0() - 0.3 * cap, r.x1() + beyond, r.y1() + 0.3 * cap)
                    : new Box(r.x0() - 0.3 * cap, r.y0() - beyond, r.x1() + 0.3 * cap, r.y1() + beyond);
            List<Blob> own = near.touching(band).stream()
                    .filter(b -> band.contains(box(b)) && b.longer() < (letter(b) && !bar(b) ? STOP : DASH) * cap)
                    .filter(b -> !bar(b) || between(b, r))
                    .filter(used::add)
                    .toList();
            out.add(r.blobs().size() == 1 && own.isEmpty() ? r : r.with(own));
        }
        return out;
    }
}
