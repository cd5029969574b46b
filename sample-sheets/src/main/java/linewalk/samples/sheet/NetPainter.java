package linewalk.samples.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import linewalk.samples.machine.Heading;
import linewalk.samples.machine.Net;
import linewalk.samples.machine.Reference;
import linewalk.samples.machine.Run;
import linewalk.samples.machine.SheetPlan;
import linewalk.samples.machine.Words;
import linewalk.samples.style.DraftingStyle;
import linewalk.samples.style.DraftingStyle.LabelPlace;
import linewalk.samples.style.LineWork;
import linewalk.samples.symbol.Lettering;
import linewalk.samples.symbol.Spot;

/** Lines with their numbers, sizes and dots. */
final class NetPainter {
    private static final double LABEL_HEIGHT = 0.32;

    private final ScaledInk ink;
    private final DraftingStyle style;
    private final Map<String, Words> sizes;
    private final Crossings crossings;
    private final Oblique oblique;

    NetPainter(ScaledInk ink, DraftingStyle style, Map<String, Words> sizes, SheetPlan sheet) {
        this.ink = ink;
        this.style = style;
        this.sizes = sizes;
        boolean hops = style.lineWork() == LineWork.HOPS;
        this.crossings = new Crossings(
                hops ? sheet.nets().stream().flatMap(net -> net.runs().stream()).toList() : List.of());
        this.oblique = style.lineWork() == LineWork.BARS ? new Oblique(sheet) : null;
    }

    void paint(Net net) {
        for (Run run : net.runs()) {
            List<double[]> gaps = new ArrayList<>();
            List<Spot> points = oblique == null ? run.points() : oblique.route(run);
            double length = length(points);
            if (run.first().reference() != null) {
                double[] gap = label(run.first().reference());
                gaps.add(gap);
            }
            if (run.last().reference() != null) {
                double[] gap = label(run.last().reference());
                gaps.add(new double[] {length - gap[1], length - gap[0]});
            }
            crossings.of(run).forEach(hop -> {
                gaps.add(new double[] {hop.along() - Crossings.RADIUS, hop.along() + Crossings.RADIUS});
                ink.hop(run.kind().pen, hop.at().x(), hop.at().y(), Crossings.RADIUS, hop.upright());
            });
            gaps.sort(Comparator.comparingDouble(gap -> gap[0]));
            for (List<Spot> piece : Gaps.cut(points, gaps)) {
                ink.line(run.kind().pen, flat(piece));
            }
            dots(run);
        }
    }

    private void dots(Run run) {
        if (style.dotRadius() <= 0) {
            return;
        }
        if (isJoin(run.first())) {
            dot(run.points().get(0));
        }
        if (isJoin(run.last())) {
            dot(run.points().get(run.points().size() - 1));
        }
    }

    private void dot(Spot at) {
        ink.dot(at.x(), at.y(), style.dotRadius());
    }

    private static boolean isJoin(Run.End end) {
        return end.port() == null && end.reference() == null;
    }

    /** Prints number and size; returns the gap to leave, from the line's end inwards (empty if none). */
    private double[] label(Reference reference) {
        if (reference.label() == null) {
            return new double[] {0, 0};
        }
        double width = ink.width(reference.label(), LABEL_HEIGHT, false);
        double middle = 0.95 + width / 2;
        Heading way = reference.heading();
        Spot at = reference.end().plus(-way.dx * middle, -way.dy * middle);
        boolean gap = style.labels() == LabelPlace.GAP;
        double aside = gap ? 0 : 0.32;
        Lettering lettering = Lettering.centred(LABEL_HEIGHT).turnedUp(way.upright());
        ink.as(DrawnText.Role.LABEL)
                .text(
                        lettering,
                        at.x() - (way.upright() ? aside : 0),
                        at.y() - (way.upright() ? 0 : aside),
                        reference.label());
        size(reference, at, width, gap);
        return gap ? new double[] {middle - width / 2 - 0.15, middle + width / 2 + 0.15} : new double[] {0, 0};
    }

    private void size(Reference reference, Spot at, double labelWidth, boolean gap) {
        Words size = sizes.get(reference.links().get(0));
        if (size == null || !reference.sized()) {
            return;
        }
        Heading way = reference.heading();
        double inwards = gap ? labelWidth + 0.6 : 0;
        double aside = gap ? -0.3 : 0.33;
        Lettering lettering = Lettering.centred(LABEL_HEIGHT * 0.9).turnedUp(way.upright());
        ink.as(DrawnText.Role.OTHER)
                .text(
                        lettering,
                        at.x() - way.dx * inwards + (way.upright() ? aside : 0),
                        at.y() - way.dy * inwards + (way.upright() ? 0 : aside),
                        style.usUnits() ? size.us() : size.metric());
    }

    private static double length(List<Spot> points) {
        double sum = 0;
        for (int i = 1; i < points.size(); i++) {
            sum += Gaps.distance(points.get(i - 1), points.get(i));
        }
        return sum;
    }

    private static double[] flat(List<Spot> points) {
        double[] xy = new double[points.size() * 2];
        for (int i = 0; i < points.size(); i++) {
            xy[2 * i] = points.get(i).x();
            xy[2 * i + 1] = points.get(i).y();
        }
        return xy;
    }
}
