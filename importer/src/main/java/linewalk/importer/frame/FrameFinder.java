package linewalk.importer.frame;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import linewalk.drawing.Box;
import linewalk.drawing.ZoneGrid;
import linewalk.importer.lettering.Label;
import linewalk.importer.page.Segment;

/**
 * Labels and straight strokes to the zone grid. The labels may run either way on either axis, stand on one side only or
 * be partly hidden by the title block: what the opposite side shows fills in. Fields end at the ticks between the labels,
 * without ticks half-way.
 */
public final class FrameFinder {

    private static final Pattern ZONE_LABEL = Pattern.compile("[A-Z]{1,2}|\\d{1,2}");

    /** A series of zone labels spans most of the sheet and hardly any text stands outside of it. */
    private static final double SPAN = 0.45;

    private static final double OUTSIDE = 0.04;

    private static final double LONG_RULE = 0.85;

    /** How far a field's tick may lie off its place, and how little of a field there may be, in fields. */
    private static final double NEAR_TICK = 0.1;

    private static final double LEAST_FIELD = 0.6;

    private FrameFinder() {}

    public static Frame find(List<Label> labels, List<Segment> segments, double widthPt, double heightPt) {
        Box page = new Box(0, 0, widthPt, heightPt);
        Box content = labels.isEmpty()
                ? page
                : labels.stream().map(Label::box).reduce(Box::union).orElse(page);
        List<Label> candidates = labels.stream()
                .filter(l ->
                        l.words().size() == 1 && ZONE_LABEL.matcher(l.text()).matches())
                .toList();
        Axis columns = axis(candidates, labels, true, content);
        Axis rows = axis(candidates, labels, false, content);
        if (columns == null || rows == null || columns.letters() == rows.letters()) {
            return new Frame(null, page, Set.of());
        }
        ZoneGrid grid = new ZoneGrid(columns.bands(segments), rows.bands(segments), true);
        Set<Label> used = new HashSet<>(columns.labels());
        used.addAll(rows.labels());
        return new Frame(grid, border(inner(columns, rows, page), segments), used);
    }

    /** One direction of the grid: a series on one edge or the matching ones on both. */
    private record Axis(List<Series> edges) {

        boolean letters() {
            return edges.get(0).letters();
        }

        List<Label> labels() {
            return edges.stream().flatMap(s -> s.labels().stream()).toList();
        }

        List<ZoneGrid.Band> bands(List<Segment> segments) {
            boolean horizontal = horizontal();
            TreeMap<Double, String> at = new TreeMap<>();
            double gap = edges.get(0).spanPt() / (edges.get(0).labels().size() - 1);
            for (Series s : edges) {
                for (Label l : s.labels()) {
                    double along = Series.along(l, horizontal);
                    if (at.subMap(along - gap / 2, along + gap / 2).isEmpty()) {
                        at.put(along, l.text());
                    }
                }
            }
            fillIn(at);
            if (at.size() > Series.SHORTEST) {
                goOn(at, true, segments);
                goOn(at, false, segments);
            }
            List<Double> places = new ArrayList<>(at.keySet());
            List<String> names = new ArrayList<>(at.values());
            List<Double> limits = limits(places, segments);
            List<ZoneGrid.Band> bands = new ArrayList<>();
            for (int i = 0; i < names.size(); i++) {
                bands.add(new ZoneGrid.Band(names.get(i), limits.get(i), limits.get(i + 1)));
            }
            return bands;
        }

        /** Zones whose labels were read on neither edge. */
        private static void fillIn(TreeMap<Double, String> at) {
            for (Double from : List.copyOf(at.keySet())) {
                Double to = at.higherKey(from);
                String lost = to == null ? null : Series.between(at.get(from), at.get(to), 1);
                if (to != null && lost == null) {
                    lost = Series.between(at.get(from), at.get(to), -1);
                }
                if (lost != null) {
                    at.put((from + to) / 2, lost);
                }
            }
        }

        /**
         * A series begins with 1 or A: where that was read on neither edge, a tick parts its field from the next, and the
         * rules of the frame go on as far as a field needs, it is there all the same.
         */
        private void goOn(TreeMap<Double, String> at, boolean atEnd, List<Segment> segments) {
            double last = atEnd ? at.lastKey() : at.firstKey();
            double before = atEnd ? at.lowerKey(last) : at.higherKey(last);
            double pitch = last - before;
            String name = Series.first(at.get(before), at.get(last));
            boolean parted =
                    ticks(segments).anyMatch(x -> Math.abs(x - (last + pitch / 2)) < NEAR_TICK * Math.abs(pitch));
            boolean room = segments.stream()
                    .filter(this::alongStrip)
                    .flatMap(s -> Stream.of(s.a(), s.b()))
                    .mapToDouble(p -> horizontal() ? p.xPt() : p.yPt())
                    .anyMatch(x -> (x - last) / pitch > 0.5 + LEAST_FIELD);
            if (name != null && parted && room) {
                at.put(last + pitch, name);
            }
        }

        private boolean horizontal() {
            return edges.get(0).horizontal();
        }

        /** A long rule of the frame beside the labels. */
        private boolean alongStrip(Segment s) {
            boolean level = horizontal() ? s.horizontal() : s.vertical();
            double across = horizontal() ? s.a().yPt() : s.a().xPt();
            return level
                    && s.lengthPt() > SPAN * edges.get(0).spanPt()
                    && edges.stream()
                            .anyMatch(e -> Math.abs(e.acrossPt() - across)
                                    < 3 * e.labels().get(0).sizePt());
        }

        private DoubleStream ticks(List<Segment> segments) {
            return segments.stream()
                    .filter(s -> edges.stream().anyMatch(e -> crossesStrip(s, e)))
                    .mapToDouble(s -> horizontal() ? s.a().xPt() : s.a().yPt());
        }

        private List<Double> limits(List<Double> places, List<Segment> segments) {
            List<Double> limits = new ArrayList<>();
            for (int i = 1; i < places.size(); i++) {
                limits.add(tick(places.get(i - 1), places.get(i), segments));
            }
            double first = 2 * places.get(0) - limits.get(0);
            double last = 2 * places.get(places.size() - 1) - limits.get(limits.size() - 1);
            limits.add(0, first);
            limits.add(last);
            return limits;
        }

        /** The tick between two labels that lies nearest to half-way. */
        private double tick(double from, double to, List<Segment> segments) {
            double middle = (from + to) / 2;
            return ticks(segments)
                    .filter(x -> Math.abs(x - middle) < 0.3 * (to - from))
                    .boxed()
                    .min(Comparator.comparingDouble(x -> Math.abs(x - middle)))
                    .orElse(middle);
        }

        private static boolean crossesStrip(Segment s, Series e) {
            boolean across = e.horizontal() ? s.vertical() : s.horizontal();
            if (!across) {
                return false;
            }
            double size = e.labels().get(0).sizePt();
            double a = e.horizontal() ? s.a().yPt() : s.a().xPt();
            double b = e.horizontal() ? s.b().yPt() : s.b().xPt();
            double low = Math.min(a, b);
            double high = Math.max(a, b);
            // a tick lies in the strip of the labels or touches it from the frame; line work is longer
            return low < e.acrossPt() + 1.5 * size && high > e.acrossPt() - 1.5 * size && high - low < 8 * size;
        }
    }

    private static Axis axis(List<Label> candidates, List<Label> all, boolean horizontal, Box content) {
        double full = horizontal ? content.widthPt() : content.heightPt();
        List<Series> long_ = Series.find(candidates, horizontal).stream()
                .filter(s -> s.spanPt() > SPAN * full)
                .filter(s -> outer(s, all))
                .sorted(Comparator.comparingInt((Series s) -> -s.labels().size()))
                .toList();
        for (Series best : long_) {
            List<Series> edges = new ArrayList<>(List.of(best));
            opposite(best, long_, full).ifPresent(edges::add);
            // two labels alone are chance, unless the same two stand on the opposite edge (ASME Y14.1, size B)
            if (best.labels().size() > Series.SHORTEST || edges.size() > 1) {
                return new Axis(edges);
            }
        }
        return null;
    }

    private static Optional<Series> opposite(Series best, List<Series> others, double fullPt) {
        return others.stream()
                .filter(s -> s != best && s.letters() == best.letters())
                .filter(s -> Math.abs(s.acrossPt() - best.acrossPt()) > 0.3 * fullPt
                        || s.labels().size() > 4)
                .filter(s -> agree(best, s))
                .findFirst();
    }

    /** Labels of one name stand opposite each other. */
    private static boolean agree(Series a, Series b) {
        double gap = a.spanPt() / (a.labels().size() - 1);
        int same = 0;
        for (Label x : a.labels()) {
            for (Label y : b.labels()) {
                if (x.text().equals(y.text())) {
                    if (Math.abs(Series.along(x, a.horizontal()) - Series.along(y, a.horizontal())) > 0.4 * gap) {
                        return false;
                    }
                    same++;
                }
            }
        }
        return same >= 2;
    }

    private static boolean outer(Series s, List<Label> all) {
        double size = s.labels().get(0).sizePt();
        long before = all.stream()
                .filter(l -> Series.across(l, s.horizontal()) < s.acrossPt() - size)
                .count();
        long after = all.stream()
                .filter(l -> Series.across(l, s.horizontal()) > s.acrossPt() + size)
                .count();
        return Math.min(before, after) <= Math.max(4, OUTSIDE * all.size());
    }

    /** The long rules that bound the drawing area just inside the labels: ticks and borders lie outside of it. */
    private static Box border(Box inner, List<Segment> segments) {
        double reachX = 0.04 * inner.widthPt();
        double reachY = 0.04 * inner.heightPt();
        double x0 = inner.x0Pt();
        double x1 = inner.x1Pt();
        double y0 = inner.y0Pt();
        double y1 = inner.y1Pt();
        for (Segment s : segments) {
            if (s.vertical() && s.lengthPt() > LONG_RULE * inner.heightPt()) {
                double x = s.a().xPt();
                x0 = x > inner.x0Pt() && x < inner.x0Pt() + reachX ? Math.max(x0, x) : x0;
                x1 = x < inner.x1Pt() && x > inner.x1Pt() - reachX ? Math.min(x1, x) : x1;
            } else if (s.horizontal() && s.lengthPt() > LONG_RULE * inner.widthPt()) {
                double y = s.a().yPt();
                y0 = y > inner.y0Pt() && y < inner.y0Pt() + reachY ? Math.max(y0, y) : y0;
                y1 = y < inner.y1Pt() && y > inner.y1Pt() - reachY ? Math.min(y1, y) : y1;
            }
        }
        return new Box(x0, y0, x1, y1);
    }

    private static Box inner(Axis columns, Axis rows, Box page) {
        double x0 = page.x0Pt();
        double x1 = page.x1Pt();
        double y0 = page.y0Pt();
        double y1 = page.y1Pt();
        for (Series s : columns.edges()) {
            double half = s.labels().get(0).sizePt() * 0.6;
            if (s.acrossPt() < page.center().yPt()) {
                y0 = Math.max(y0, s.acrossPt() + half);
            } else {
                y1 = Math.min(y1, s.acrossPt() - half);
            }
        }
        for (Series s : rows.edges()) {
            double half = s.labels().get(0).sizePt() * 0.6;
            if (s.acrossPt() < page.center().xPt()) {
                x0 = Math.max(x0, s.acrossPt() + half);
            } else {
                x1 = Math.min(x1, s.acrossPt() - half);
            }
        }
        return new Box(x0, y0, x1, y1);
    }
}
