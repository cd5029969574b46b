package linewalk.importer.page;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import linewalk.drawing.Point;

/**
 * Short pieces of one pen in one straight line, with even gaps shorter than themselves, are one dashed stroke; where long
 * and short pieces alternate it is a chain line. Its ends reach over the last gap to what they point at.
 */
final class DashedRuns {

    private static final int PIECES = 4;
    /** So few are enough where longer rows of the page show the same dashes: a short leg between two corners. */
    private static final int KNOWN_PIECES = 2;

    private static final double LONGEST_TOL = 45;
    private static final double TOUCH_TOL = 0.1;
    private static final double CUT_ALIKE = 0.85;
    private static final double EVEN = 0.35;
    private static final double SHORTEST_TOL = 4;

    /** How long one dash alone is at most where programs fit dashes to the leg, in those of the next leg. */
    private static final double LAST_LEG = 2;

    /** Gaps of a chain line, in its dots. */
    private static final double TIGHT = 0.9;

    /** Cosine of the sharpest turn from piece to piece of a circle. */
    private static final double GENTLY = 0.64;

    /** How wide a gap left for a crossing line may be, in tolerances. */
    private static final double BREAK_TOL = 12;

    /** Width of a thin pen in tolerances; a line of the usual width has about 0.9. */
    private static final double THIN_TOL = 0.62;

    private final double tolPt;
    private List<Stroke> curves = List.of();

    DashedRuns(double tolPt) {
        this.tolPt = tolPt;
    }

    /** A piece along the common direction; a program may have written it in several strokes that touch. */
    private record Piece(List<Stroke> strokes, double from, double to, double across) {
        double length() {
            return to - from;
        }

        Stroke stroke() {
            return strokes.get(0);
        }

        Piece with(Piece next) {
            List<Stroke> all = new ArrayList<>(strokes);
            all.addAll(next.strokes);
            return new Piece(all, from, Math.max(to, next.to), across);
        }
    }

    private record Found(Stroke stroke, double gapPt, List<Piece> run) {

        boolean alike(Found o) {
            double on = stroke.dash().onPt();
            return samePen(stroke, o.stroke)
                    && stroke.dash().chain() == o.stroke.dash().chain()
                    && Math.abs(on - o.stroke.dash().onPt()) < EVEN * on
                    && Math.abs(gapPt - o.gapPt) < EVEN * Math.max(gapPt, o.gapPt);
        }

        Found with(Found next) {
            List<Point> ends = List.of(stroke.first(), next.stroke.last());
            return new Found(new Stroke(ends, false, false, stroke.widthPt(), stroke.dash(), false), gapPt, run);
        }

        /** Two pieces that could be a cut-out of this row. */
        boolean like(Piece a, Piece b) {
            return !stroke.dash().chain()
                    && samePen(stroke, a.stroke())
                    && Math.max(a.length(), b.length()) < 1.3 * stroke.dash().onPt()
                    && Math.abs(b.from() - a.to() - gapPt) < EVEN * gapPt;
        }
    }

    /** What stands in rows like dashes, row by row: of chain lines, or of others, among which may be letters. */
    List<List<Stroke>> rows(List<Stroke> strokes, boolean chains) {
        List<Found> found = new ArrayList<>();
        Set<Stroke> used = Collections.newSetFromMap(new IdentityHashMap<>());
        byDirection(strokes).values().forEach(pieces -> rows(pieces, PIECES, List.of(), found, used));
        return found.stream()
                .filter(f -> f.stroke().dash().chain() == chains)
                .map(f -> f.run().stream().flatMap(p -> p.strokes().stream()).toList())
                .toList();
    }

    private Map<Long, List<Piece>> byDirection(List<Stroke> strokes) {
        Map<Long, List<Piece>> byDirection = new TreeMap<>();
        for (Stroke s : strokes) {
            boolean candidate =
                    s.points().size() == 2 && !s.closed() && s.dash().solid();
            if (candidate && s.lengthPt() < LONGEST_TOL * tolPt && s.lengthPt() > 0.5 * tolPt) {
                long angle = angle(s);
                byDirection.computeIfAbsent(angle, k -> new ArrayList<>()).add(piece(s, angle));
            }
        }
        return byDirection;
    }

    List<Stroke> join(List<Stroke> strokes) {
        curves = strokes.stream().filter(s -> s.curved() && !s.closed()).toList();
        Set<Stroke> used = Collections.newSetFromMap(new IdentityHashMap<>());
        List<Found> found = found(byDirection(strokes), used);
        if (found.isEmpty()) {
            return strokes;
        }
        List<Stroke> rest = new ArrayList<>(strokes);
        rest.removeIf(used::contains);
        List<Found> whole = acrossBreaks(found, rest);
        List<Stroke> dashed = new DashedEnds(
                        rest, whole.stream().map(Found::stroke).toList())
                .reach(whole.stream().map(Found::gapPt).toList(), tolPt);
        List<Stroke> out = withLastLegs(rest, dashed);
        out.addAll(dashed);
        return out;
    }

    private List<Found> found(Map<Long, List<Piece>> byDirection, Set<Stroke> used) {
        List<Found> found = new ArrayList<>();
        byDirection.values().forEach(pieces -> rows(pieces, PIECES, List.of(), found, used));
        List<Found> known = List.copyOf(found);
        byDirection.values().forEach(pieces -> {
            pieces.removeIf(p -> used.contains(p.stroke()));
            rows(pieces, KNOWN_PIECES, known, found, used);
        });
        return found;
    }

    /** Rows that go on behind a line crossing them, where the drafter left a gap, are one. */
    private List<Found> acrossBreaks(List<Found> found, List<Stroke> rest) {
        List<Stroke> all = new ArrayList<>(rest);
        found.forEach(f -> all.add(f.stroke()));
        Near<Segment> crossing = new Near<>(Segment.straightOf(all), Segment::box);
        List<Found> whole = new ArrayList<>(found);
        for (int i = 0; i < whole.size(); i++) {
            for (int k = 0; k < whole.size(); k++) {
                if (k != i && goesOnBehind(whole.get(i), whole.get(k), crossing)) {
                    whole.set(i, whole.get(i).with(whole.get(k)));
                    whole.remove(k);
                    i = -1;
                    break;
                }
            }
        }
        return whole;
    }

    private boolean goesOnBehind(Found a, Found b, Near<Segment> crossing) {
        Stroke s = a.stroke();
        Stroke t = b.stroke();
        Direction d = Direction.of(s.first(), s.last());
        double gap = s.last().distancePt(t.first());
        if (!a.alike(b)
                || gap > BREAK_TOL * tolPt + a.gapPt() + b.gapPt()
                || d.ahead(s.last(), t.first()) <= 0
                || d.aside(s.last(), t.first()) > 0.4 * tolPt
                || d.along(Direction.of(t.first(), t.last())) < 0.999) {
            return false;
        }
        Segment between = new Segment(s.last(), t.first());
        return crossing.touching(between.box()).stream().anyMatch(x -> x.crossing(between) != null);
    }

    /** A single piece that goes on around the corner from a dashed line, hardly longer than its dashes, is one of them. */
    private List<Stroke> withLastLegs(List<Stroke> rest, List<Stroke> dashed) {
        Near<Stroke> near = new Near<>(dashed, Stroke::box);
        Near<Stroke> solid = new Near<>(rest, Stroke::box);
        List<Stroke> out = new ArrayList<>();
        for (Stroke s : rest) {
            boolean piece = s.points().size() == 2 && !s.closed() && s.dash().solid() && !pieceOfMore(s, solid);
            out.add(
                    !piece
                            ? s
                            : near.touching(s.box().grow(tolPt)).stream()
                                    .filter(d -> goesOn(d, s))
                                    .findFirst()
                                    .map(d -> new Stroke(s.points(), false, false, s.widthPt(), d.dash(), false))
                                    .orElse(s));
        }
        return out;
    }

    /** A solid piece goes on from its end, gently or straight: of a circle, or of a line. */
    private boolean pieceOfMore(Stroke s, Near<Stroke> solid) {
        Direction along = Direction.of(s.first(), s.last());
        return List.of(s.first(), s.last()).stream().anyMatch(e -> solid.within(e, tolPt / 2).stream()
                .anyMatch(o -> o != s
                        && o.points().size() == 2
                        && (o.first().distancePt(e) < tolPt / 2 || o.last().distancePt(e) < tolPt / 2)
                        && Math.abs(Direction.of(o.first(), o.last()).along(along)) > GENTLY));
    }

    private boolean goesOn(Stroke d, Stroke s) {
        boolean atEnd = List.of(d.first(), d.last()).stream()
                .anyMatch(e -> e.distancePt(s.first()) <= tolPt || e.distancePt(s.last()) <= tolPt);
        boolean bends = Math.abs(Direction.of(d.first(), d.last()).along(Direction.of(s.first(), s.last()))) < 0.8;
        return atEnd
                && bends
                && !d.dash().chain()
                && samePen(d, s)
                && s.lengthPt() < LAST_LEG * d.dash().onPt();
    }

    /** Whole degrees, 0 to 179. */
    private static long angle(Stroke s) {
        Direction d = Direction.of(s.first(), s.last());
        return Math.floorMod(Math.round(Math.toDegrees(Math.atan2(d.dy(), d.dx()))), 180);
    }

    private static Piece piece(Stroke s, long angle) {
        Direction d = Direction.ofAngle(angle);
        double a = s.first().xPt() * d.dx() + s.first().yPt() * d.dy();
        double b = s.last().xPt() * d.dx() + s.last().yPt() * d.dy();
        double across = -s.first().xPt() * d.dy() + s.first().yPt() * d.dx();
        return new Piece(List.of(s), Math.min(a, b), Math.max(a, b), across);
    }

    private void rows(List<Piece> pieces, int least, List<Found> known, List<Found> found, Set<Stroke> used) {
        pieces.sort(Comparator.comparingDouble(Piece::across));
        int from = 0;
        for (int i = 1; i <= pieces.size(); i++) {
            if (i == pieces.size() || pieces.get(i).across() - pieces.get(i - 1).across() > 0.4 * tolPt) {
                List<Piece> row = new ArrayList<>(pieces.subList(from, i));
                row.sort(Comparator.comparingDouble(Piece::from));
                runs(row, least, known, found, used);
                if (least == PIECES) {
                    row.removeIf(p -> used.contains(p.stroke()));
                    runs(whole(row), least, known, found, used);
                }
                from = i;
            }
        }
    }

    /** Pieces that touch are one; what is then too long for a dash parts the row. */
    private List<Piece> whole(List<Piece> row) {
        List<Piece> whole = new ArrayList<>();
        for (Piece p : row) {
            Piece last = whole.isEmpty() ? null : whole.get(whole.size() - 1);
            if (last != null
                    && Math.abs(p.from() - last.to()) < TOUCH_TOL * tolPt
                    && samePen(last.stroke(), p.stroke())) {
                whole.set(whole.size() - 1, last.with(p));
            } else {
                whole.add(p);
            }
        }
        return whole;
    }

    private void runs(List<Piece> row, int least, List<Found> known, List<Found> found, Set<Stroke> used) {
        int from = 0;
        for (int i = 1; i <= row.size(); i++) {
            if (i == row.size() || !continues(row, from, i) || !known(row, i, known, least)) {
                if (i - from >= least && even(row.subList(from, i))) {
                    found.add(dashed(row.subList(from, i)));
                    row.subList(from, i).forEach(p -> used.addAll(p.strokes()));
                }
                from = i;
            }
        }
    }

    /** Dashes in several strokes are of one length: the side of a box in a dashed line's row is none. */
    private static boolean even(List<Piece> run) {
        List<Piece> cut = run.stream().filter(p -> p.strokes().size() > 1).toList();
        double longest = run.stream().mapToDouble(Piece::length).max().orElse(0);
        return cut.isEmpty() || cut.size() > 1 && cut.stream().allMatch(p -> p.length() > CUT_ALIKE * longest);
    }

    private boolean known(List<Piece> row, int i, List<Found> known, int least) {
        Piece a = row.get(i - 1);
        Piece b = row.get(i);
        return least == PIECES || thinDashes(a, b) || known.stream().anyMatch(k -> k.like(a, b));
    }

    /** Two pieces of one length in a pen much thinner than the drawing's usual one, which pilot and drain lines have. */
    private boolean thinDashes(Piece a, Piece b) {
        double length = Math.max(a.length(), b.length());
        return a.stroke().widthPt() < THIN_TOL * tolPt
                && Math.abs(a.length() - b.length()) < 0.05 * length
                && b.from() - a.to() < 0.6 * length
                && length > SHORTEST_TOL * tolPt;
    }

    private boolean continues(List<Piece> row, int from, int i) {
        Piece last = row.get(i - 1);
        Piece next = row.get(i);
        double gap = next.from() - last.to();
        double longer = Math.max(last.length(), next.length());
        if (!samePen(last.stroke(), next.stroke())
                || gap < 0.3 * tolPt
                || gap > 1.1 * longer
                || longer > LONGEST_TOL * tolPt) {
            return false;
        }
        if (i - 1 == from) {
            return true;
        }
        double before = last.from() - row.get(i - 2).to();
        return Math.abs(gap - before) < EVEN * Math.max(gap, before);
    }

    private static boolean samePen(Stroke a, Stroke b) {
        return Math.abs(a.widthPt() - b.widthPt()) < 0.1 * a.widthPt();
    }

    private static Found dashed(List<Piece> run) {
        double[] lengths = run.subList(run.size() > 2 ? 1 : 0, Math.max(2, run.size() - 1)).stream()
                .mapToDouble(Piece::length)
                .sorted()
                .toArray();
        double end = Math.max(run.get(0).length(), run.get(run.size() - 1).length());
        double gap = run.get(1).from() - run.get(0).to();
        // ends are cut short; one longer than all between makes these the dots of a short chain line, not teeth of a
        // comb
        boolean dots = Dash.alternate(end, lengths[0]) && gap < TIGHT * lengths[0];
        double longest = Math.max(lengths[lengths.length - 1], dots ? end : 0);
        boolean chain = Dash.alternate(longest, lengths[0]);
        Stroke like = run.get(0).stroke();
        Point start = end(run.get(0), true);
        Point stop = end(run.get(run.size() - 1), false);
        Stroke whole = new Stroke(List.of(start, stop), false, false, like.widthPt(), new Dash(longest, chain), false);
        return new Found(whole, gap, List.copyOf(run));
    }

    private static Point end(Piece p, boolean first) {
        Stroke s = p.strokes().get(first ? 0 : p.strokes().size() - 1);
        Direction d = Direction.ofAngle(angle(s));
        boolean forth = d.ahead(s.first(), s.last()) > 0;
        return first == forth ? s.first() : s.last();
    }

    /** Lengthens dashed strokes over their last gap to a stroke, a corner or another dashed end ahead. */
    private record DashedEnds(List<Stroke> others, List<Stroke> dashed) {

        List<Stroke> reach(List<Double> gaps, double tolPt) {
            List<Segment> targets = new ArrayList<>();
            others.forEach(s -> addSegments(s, targets));
            dashed.forEach(s -> addSegments(s, targets));
            Near<Segment> near = new Near<>(targets, Segment::box);
            Near<Stroke> pieces = new Near<>(others, Stroke::box);
            List<Stroke> out = new ArrayList<>();
            for (int i = 0; i < dashed.size(); i++) {
                Stroke s = dashed.get(i);
                double gap = gaps.get(i);
                double reach = 1.5 * gap + tolPt;
                Point a = bendsAhead(s, s.last(), s.first(), gap, pieces, tolPt)
                        ? s.first()
                        : reach(s.last(), s.first(), reach, near, tolPt);
                Point b = bendsAhead(s, s.first(), s.last(), gap, pieces, tolPt)
                        ? s.last()
                        : reach(s.first(), s.last(), reach, near, tolPt);
                out.add(new Stroke(List.of(a, b), false, false, s.widthPt(), s.dash(), false));
            }
            return out;
        }

        /** The next dash is one around a corner, over a gap like those before. */
        private static boolean bendsAhead(
                Stroke s, Point from, Point end, double gap, Near<Stroke> pieces, double tolPt) {
            Direction d = Direction.of(from, end);
            Point next = end.plus(d.dx() * gap, d.dy() * gap);
            double withinPt = EVEN * gap;
            return pieces.within(next, withinPt).stream().anyMatch(o -> {
                int n = o.points().size();
                boolean forth = o.first().distancePt(next) < withinPt;
                Point at = forth ? o.first() : o.last();
                return n > 2
                        && !o.closed()
                        && samePen(s, o)
                        && at.distancePt(next) < withinPt
                        && d.aside(end, at) < 0.4 * tolPt
                        && d.along(Direction.of(at, o.points().get(forth ? 1 : n - 2))) > 0.99;
            });
        }

        private static void addSegments(Stroke s, List<Segment> out) {
            for (int i = 1; i < s.points().size(); i++) {
                out.add(new Segment(s.points().get(i - 1), s.points().get(i)));
            }
            if (s.closed()) {
                out.add(new Segment(s.points().get(s.points().size() - 1), s.first()));
            }
        }

        private static Point reach(Point from, Point end, double reachPt, Near<Segment> near, double tolPt) {
            Direction d = Direction.of(from, end);
            if (near.within(end, tolPt / 2).stream().anyMatch(t -> endsOn(t, end, d, tolPt / 2))) {
                return end;
            }
            Point far = end.plus(d.dx() * reachPt, d.dy() * reachPt);
            Segment probe = new Segment(end, far);
            Point best = end;
            double least = Double.MAX_VALUE;
            for (Segment t : near.touching(probe.box().grow(reachPt))) {
                if (t.a().equals(from) && t.b().equals(end) || t.b().equals(from) && t.a().equals(end)) {
                    continue;
                }
                Point x = meeting(probe, t, reachPt);
                if (x != null && x.distancePt(end) < least) {
                    least = x.distancePt(end);
                    best = x;
                }
            }
            return best;
        }

        /** The last dash has arrived. */
        private static boolean endsOn(Segment t, Point end, Direction d, double withinPt) {
            return t.distancePt(end) <= withinPt
                    && Math.abs(Direction.of(t.a(), t.b()).along(d)) < 0.98;
        }

        /** Where the probe meets a segment, or would if the segment too went on over a gap. */
        private static Point meeting(Segment probe, Segment t, double reachPt) {
            Direction d = Direction.of(t.a(), t.b());
            Segment longer = new Segment(
                    t.a().plus(-d.dx() * reachPt, -d.dy() * reachPt), t.b().plus(d.dx() * reachPt, d.dy() * reachPt));
            Point x = probe.crossing(longer);
            boolean parallel = Math.abs(Direction.of(probe.a(), probe.b()).along(d)) > 0.98;
            return parallel ? null : x;
        }
    }
}
