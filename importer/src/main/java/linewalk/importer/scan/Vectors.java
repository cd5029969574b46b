package linewalk.importer.scan;

import boofcv.struct.image.GrayU8;
import java.util.ArrayList;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import linewalk.drawing.Point;
import linewalk.importer.page.Dash;
import linewalk.importer.page.Stroke;

/** Line work to strokes: blobs thinned, followed, fitted with straight and round pieces, and these put together to lines. */
final class Vectors {

    /** Lines at least this many times longer than wide tell the pens. */
    private static final double LONG = 12;

    private final Bits ink;
    private final Upright upright;
    private final double pxPerPt;
    private final Gauge gauge;

    Vectors(Bits ink, Upright upright, double pxPerPt) {
        this.ink = ink;
        this.upright = upright;
        this.pxPerPt = pxPerPt;
        this.gauge = new Gauge(ink);
    }

    /** Strokes in registered points. The raster is worked on; what it held is lost. */
    List<Stroke> of(Collection<Blob> lineWork, List<Solid> solids, GrayU8 raster) {
        Skeleton.draw(lineWork, raster);
        Web web = Web.of(raster, gauge);
        List<Piece> pieces = new ArrayList<>(Joints.of(web, upright, gauge));
        pieces.removeIf(p -> solids.stream().anyMatch(s -> s.swallows(p)) && untied(p));
        Map<Piece, Line> lines = Lines.of(pieces, gauge, upright);
        return strokes(pieces, new LinkedHashSet<>(lines.values()));
    }

    private static boolean untied(Piece p) {
        if (!p.ring()) {
            p.untie();
        }
        return true;
    }

    private List<Stroke> strokes(List<Piece> pieces, Collection<Line> lines) {
        Map<Double, Double> lengths = new java.util.TreeMap<>();
        for (Line l : lines) {
            if (l.length() > LONG * l.width) {
                lengths.merge(l.width, l.length(), Double::sum);
            }
        }
        Pens pens = new Pens(lengths);
        List<Stroke> out = new ArrayList<>();
        for (Line l : lines) {
            double from = Double.MAX_VALUE;
            double to = -Double.MAX_VALUE;
            for (Piece p : l.pieces) {
                from = Math.min(from, Math.min(l.along(p.a), l.along(p.b)));
                to = Math.max(to, Math.max(l.along(p.a), l.along(p.b)));
            }
            if (to - from > 1) {
                out.add(stroke(List.of(l.at(from), l.at(to)), false, false, pens.nearest(l.width)));
            }
        }
        for (Rounds.Curve c : Rounds.of(pieces)) {
            out.add(stroke(c.points(), c.closed(), true, pens.nearest(width(c))));
        }
        return out;
    }

    private double width(Rounds.Curve c) {
        List<Double> all = new ArrayList<>();
        for (Piece p : c.pieces()) {
            for (int i = p.count() / 6; i < p.count(); i += Math.max(1, p.count() / 12)) {
                double bx = upright.backX(p.xs[i], p.ys[i]);
                double by = upright.backY(p.xs[i], p.ys[i]);
                double a = p.round.angle(p.xs[i], p.ys[i]);
                all.add(gauge.across(bx, by, -Math.sin(a), Math.cos(a)));
            }
        }
        java.util.Collections.sort(all);
        return all.get(all.size() / 2);
    }

    private Stroke stroke(List<double[]> points, boolean closed, boolean curved, double widthPx) {
        return new Stroke(points.stream().map(this::point).toList(), closed, curved, widthPx / pxPerPt, Dash.SOLID, false);
    }

    private Point point(double[] p) {
        return new Point(p[0] / pxPerPt, p[1] / pxPerPt);
    }
}
