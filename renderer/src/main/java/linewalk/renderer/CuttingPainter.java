package linewalk.renderer;

import java.awt.Color;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import linewalk.drawing.Box;
import linewalk.drawing.Component;
import linewalk.drawing.Line;
import linewalk.drawing.Point;
import linewalk.drawing.Port;
import linewalk.drawing.Sheet;
import linewalk.linker.Leg;
import linewalk.renderer.ink.ChangeMark;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Lettering;
import linewalk.renderer.sheet.Original;
import linewalk.renderer.sheet.Page;

/** Draws one cutting: the original, the path over it, item numbers and doubts beside it. */
final class CuttingPainter {

    private static final double OVERLAY_PT = 8;

    /** How far marks of a line's pattern reach over it, both sides together. */
    private static final double ACROSS_MARKS_PT = 15;

    private static final double GAP_PT = 2.2;

    private static final double DOT_PT = 5;

    private static final int BAND_ALPHA = 0x48;

    private final PrintJob job;
    private final CuttingDoubts doubts;
    private final SourcePages sources;
    private final Page page;
    private final Rectangle2D area;
    private final Margins margins;
    private final Canvas c;
    private final CuttingWords words;
    /** The print's own lines on the panel that is being painted. */
    private List<List<Point2D>> lines = List.of();

    CuttingPainter(
            PrintJob job, CuttingDoubts doubts, SourcePages sources, Page page, Rectangle2D area, Margins margins) {
        this.job = job;
        this.doubts = doubts;
        this.sources = sources;
        this.page = page;
        this.area = area;
        this.margins = margins;
        c = page.canvas();
        words = new CuttingWords(job, sources);
    }

    void paint(Panel p, List<PanelCuts.Mark> cuts, List<CuttingLinks.Mark> links) {
        AffineTransform at = AffineTransform.getTranslateInstance(area.getX(), area.getY());
        at.concatenate(p.fromView());
        original(p, at);
        caption(p);
        List<Rectangle2D> lettering = lettering(p, at);
        lines = overlay(p, at, lettering);
        notes(p, at, lettering, links);
        cuts.forEach(m -> mark(p, m, cuts));
    }

    private void original(Panel p, AffineTransform at) {
        Sheet sheet = job.set().getSheet(p.view().stay.page());
        Optional<Original> source = sources.original(sheet.page());
        for (BrokenView.Cell cell : p.view().cells) {
            Rectangle2D seen = cell.view().createIntersection(p.part());
            if (seen.getWidth() <= 0 || seen.getHeight() <= 0) {
                continue;
            }
            Rectangle2D clip = at.createTransformedShape(seen).getBounds2D();
            if (source.isPresent()) {
                place(source.get(), sheet, p.view().transform(cell), at, clip);
            }
            c.pen(Color.GRAY, Ink.line(0.5));
            c.draw(clip);
        }
        if (source.isEmpty()) {
            c.pen(Ink.BLACK, Ink.dashed(1.5, 6, 4));
            c.draw(at.createTransformedShape(p.part()));
        }
    }

    private void place(Original source, Sheet sheet, AffineTransform toView, AffineTransform at, Rectangle2D clip) {
        try {
            AffineTransform all = new AffineTransform(at);
            all.concatenate(toView);
            all.concatenate(SourceReader.transform(sheet.toPage()).createInverse());
            page.place(source, all, clip);
        } catch (NoninvertibleTransformException e) {
            throw new IllegalStateException("sheet " + sheet.name() + " has a transform that cannot be turned back", e);
        }
    }

    private void caption(Panel p) {
        c.pen(Ink.BLACK, Ink.line(1));
        double y = area.getY() + p.captionBox().getMinY() + Lettering.TEXT_PT;
        for (String line : p.caption().lines()) {
            c.text(line, area.getX() + p.frame().getX(), y, Lettering.TEXT_PT);
            y += Panel.Caption.LINE_PT;
        }
    }

    /** The path's pieces on the page. */
    private List<List<Point2D>> overlay(Panel p, AffineTransform at, List<Rectangle2D> lettering) {
        List<List<Point2D>> lines = new ArrayList<>();
        Map<Line, Line2D> changed = new LinkedHashMap<>();
        Stay stay = p.view().stay;
        CuttingJoints joints = new CuttingJoints();
        stay.courses().forEach((leg, course) -> {
            LineLook look = LineLook.of(stay.lines().get(leg), job.moment());
            for (BrokenView.Stretch s : p.view().map(course)) {
                for (List<Point2D> piece : new Clip(s.points(), p.part()).pieces) {
                    List<Point2D> placed =
                            piece.stream().map(q -> at.transform(q, null)).toList();
                    lines.add(placed);
                    if (s.seen() && look.pressure() != null) {
                        joints.cut(stay.lines().get(leg), placed, ACROSS_MARKS_PT, OVERLAY_PT + 2 * GAP_PT)
                                .forEach(gap -> c.fill(Color.WHITE, gap));
                    }
                    stretch(placed, look, s.seen(), lettering);
                    if (look.changed() && s.seen()) {
                        changed.merge(stay.lines().get(leg), longest(placed), CuttingPainter::longer);
                    }
                }
            }
        });
        dots(p, at);
        changed.values().forEach(l -> change(l, lettering));
        return lines;
    }

    /** Where a band lies over those of the original. */
    private void dots(Panel p, AffineTransform at) {
        if (job.moment().state() == null) {
            return;
        }
        for (Point joint : CuttingJoints.of(p.view().stay)) {
            if (p.view().seen(joint) && p.shows(p.view().map(joint))) {
                Point2D dot = at.transform(p.view().map(joint), null);
                c.fill(Color.WHITE, Canvas.disc(dot.getX(), dot.getY(), DOT_PT + 1));
                c.fill(Ink.BLACK, Canvas.disc(dot.getX(), dot.getY(), DOT_PT));
            }
        }
    }

    private static Line2D longest(List<Point2D> points) {
        return IntStream.range(1, points.size())
                .mapToObj(i -> (Line2D) new Line2D.Double(points.get(i - 1), points.get(i)))
                .reduce(CuttingPainter::longer)
                .orElseThrow();
    }

    private static Line2D longer(Line2D a, Line2D b) {
        return b.getP1().distance(b.getP2()) > a.getP1().distance(a.getP2()) ? b : a;
    }

    /** Off the lettering, and off the arrow near the middle. */
    private void change(Line2D on, List<Rectangle2D> lettering) {
        double reach = ChangeMark.SIZE_PT;
        for (double share : new double[] {0.3, 0.7, 0.15, 0.85, 0.5}) {
            double x = on.getX1() + share * (on.getX2() - on.getX1());
            double y = on.getY1() + share * (on.getY2() - on.getY1());
            Rectangle2D room = new Rectangle2D.Double(x - reach, y - reach, 2 * reach, 2 * reach);
            if (lettering.stream().noneMatch(room::intersects)) {
                ChangeMark.paintOnLine(c, x, y);
                return;
            }
        }
    }

    private void stretch(List<Point2D> placed, LineLook look, boolean seen, List<Rectangle2D> lettering) {
        if (!seen) {
            c.pen(Ink.PATH, Ink.dashed(2.6, 2.6f, 2.6f));
            c.polyline(placed);
            return;
        }
        c.pen(look.pressure() == null ? Ink.OVERLAY : band(look), Ink.line(OVERLAY_PT));
        c.polyline(placed);
        if (look.pressure() != null) {
            look.style(job.facts().palette()).paint(c, placed);
        }
        if (!job.subject().isPath()) {
            return;
        }
        c.pen(Ink.PATH, Ink.line(1));
        for (int i = 1; i < placed.size(); i++) {
            Point2D a = placed.get(i - 1);
            Point2D b = placed.get(i);
            if (a.distance(b) > 40) {
                arrow(a, b, lettering);
            }
        }
    }

    /** The class's colour, light enough to read through. */
    private Color band(LineLook look) {
        Color full = look.style(job.facts().palette()).color();
        return new Color(full.getRed(), full.getGreen(), full.getBlue(), BAND_ALPHA);
    }

    /** Near the middle, off the lettering. */
    private void arrow(Point2D a, Point2D b, List<Rectangle2D> lettering) {
        double dx = b.getX() - a.getX();
        double dy = b.getY() - a.getY();
        for (double share : new double[] {0.55, 0.75, 0.35, 0.9, 0.2}) {
            double x = a.getX() + share * dx;
            double y = a.getY() + share * dy;
            Rectangle2D room = new Rectangle2D.Double(x - 12, y - 12, 24, 24);
            if (lettering.stream().noneMatch(room::intersects)) {
                c.arrow(x, y, dx, dy, 12);
                return;
            }
        }
    }

    private List<Rectangle2D> lettering(Panel p, AffineTransform at) {
        return sources.marks(job.set().getSheet(p.view().stay.page())).letters().stream()
                .filter(l -> p.view().seen(l.box().center()))
                .map(l -> placed(p, at, l.box()))
                .toList();
    }

    private List<Line2D> ink(Panel p, AffineTransform at) {
        List<Line2D> ink = new ArrayList<>();
        for (Line2D l : sources.marks(job.set().getSheet(p.view().stay.page())).ink()) {
            Point from = new Point(l.getX1(), l.getY1());
            Point to = new Point(l.getX2(), l.getY2());
            if (p.view().seen(from) || p.view().seen(to)) {
                ink.add(new Line2D.Double(
                        at.transform(p.view().map(from), null),
                        at.transform(p.view().map(to), null)));
            }
        }
        return ink;
    }

    private void notes(Panel p, AffineTransform at, List<Rectangle2D> lettering, List<CuttingLinks.Mark> links) {
        Rectangle2D frame = at.createTransformedShape(p.part()).getBounds2D();
        List<Line2D> ink = ink(p, at);
        Notes notes = new Notes(frame, lettering, lines, ink, margins);
        Words names = new Words(job);
        Set<String> done = new LinkedHashSet<>();
        Stay stay = p.view().stay;
        List<Leg.Through> all =
                Stream.concat(stay.parts().stream(), stay.beside().stream()).toList();
        for (Leg.Through t : all) {
            notes.keepOff(placed(p, at, Stay.anchor(t)));
        }
        for (Leg.Through t : all) {
            Rectangle2D outline = p.view().map(Stay.anchor(t));
            if (p.shows(ViewCuts.center(outline)) && done.add(t.component().id() + Stay.anchor(t))) {
                Rectangle2D near = placed(p, at, Stay.anchor(t));
                number(near, names.balloon(t.component()), words.of(t), notes, ink);
            }
        }
        strays(p, at, all, notes);
        links.forEach(m -> link(m, placed(p, at, m.reference().box()), notes));
        doubts.on(p).forEach(s -> doubt(p, at, s, notes));
    }

    private void number(Rectangle2D near, String number, TextStack words, Notes notes, List<Line2D> ink) {
        double ring = PrintMarks.balloonWidthPt(number);
        double w = words.isEmpty() ? ring : ring + 3 + words.widthPt();
        Point2D place = notes.place(near, w, Math.max(PrintMarks.BALLOON_PT, words.heightPt()));
        double x = place.getX() - w / 2;
        leader(near, new Point2D.Double(x + ring / 2, place.getY()), ink);
        PrintMarks.balloon(c, number, x + ring / 2, place.getY());
        plate(words, x + ring + 3, place.getY());
    }

    /** Parts that do not belong to the print, where a line of it meets one of their ports. */
    private void strays(Panel p, AffineTransform at, List<Leg.Through> told, Notes notes) {
        for (Component part : job.set().components()) {
            if (part.page().equals(p.view().stay.page())
                    && told.stream().noneMatch(t -> t.component().equals(part))) {
                seen(p, part).map(box -> placed(p, at, box)).ifPresent(near -> stray(near, words.ofStray(part), notes));
            }
        }
    }

    /** As much of a part as the windows show that show a port of it. */
    private static Optional<Box> seen(Panel p, Component part) {
        return part.ports().stream()
                .map(Port::place)
                .filter(at -> p.shows(p.view().map(at)))
                .flatMap(at ->
                        p.view().cells.stream().filter(cell -> cell.source().contains(at)))
                .map(cell -> common(part.box(), cell.source()))
                .reduce(Box::union);
    }

    private static Box common(Box a, Box b) {
        return new Box(
                Math.max(a.x0Pt(), b.x0Pt()),
                Math.max(a.y0Pt(), b.y0Pt()),
                Math.min(a.x1Pt(), b.x1Pt()),
                Math.min(a.y1Pt(), b.y1Pt()));
    }

    private void stray(Rectangle2D near, TextStack text, Notes notes) {
        if (!text.isEmpty()) {
            Point2D place = notes.place(near, text.widthPt() + 2, text.heightPt());
            Point2D edge = edge(near, place);
            c.pen(Ink.BLACK, Ink.line(0.9));
            c.line(place.getX(), place.getY(), edge.getX(), edge.getY());
            plate(text, place.getX() - text.widthPt() / 2, place.getY());
        }
    }

    private static boolean crosses(List<Point2D> line, Rectangle2D plate) {
        return IntStream.range(1, line.size())
                .anyMatch(i -> plate.intersectsLine(new Line2D.Double(line.get(i - 1), line.get(i))));
    }

    /** Words on white, so that no stroke of the original runs through them; but no line of the print is wiped out. */
    private void plate(TextStack words, double xPt, double middlePt) {
        if (!words.isEmpty()) {
            double y = middlePt - words.heightPt() / 2;
            Rectangle2D plate = new Rectangle2D.Double(xPt - 1, y, words.widthPt() + 1, words.heightPt());
            if (lines.stream().noneMatch(l -> crosses(l, plate))) {
                c.fill(Color.WHITE, plate);
            }
            words.paint(c, xPt, y);
        }
    }

    private static Rectangle2D placed(Panel p, AffineTransform at, Box box) {
        return at.createTransformedShape(p.view().map(box)).getBounds2D();
    }

    /** To the edge of the part's box, and on towards its middle where the symbol itself does not reach the edge. */
    private void leader(Rectangle2D near, Point2D from, List<Line2D> ink) {
        c.pen(Ink.BLACK, Ink.line(0.9));
        Point2D edge = edge(near, from);
        Point2D end = edge;
        for (double share = 0; share < 0.7; share += 0.04) {
            Point2D on = new Point2D.Double(
                    edge.getX() + share * (near.getCenterX() - edge.getX()),
                    edge.getY() + share * (near.getCenterY() - edge.getY()));
            if (ink.stream().anyMatch(l -> l.ptSegDist(on) < 1.2)) {
                end = on;
                break;
            }
        }
        c.line(from.getX(), from.getY(), end.getX(), end.getY());
    }

    private static Point2D edge(Rectangle2D near, Point2D from) {
        return new Point2D.Double(
                Math.max(near.getMinX(), Math.min(near.getMaxX(), from.getX())),
                Math.max(near.getMinY(), Math.min(near.getMaxY(), from.getY())));
    }

    /** Where a reference goes on: a letter beside it, with the page. */
    private void link(CuttingLinks.Mark m, Rectangle2D near, Notes notes) {
        double r = MatchMarks.radiusPt(m.letter());
        double words = Lettering.widthPt(m.where(), Lettering.TEXT_PT);
        double w = 2 * r + 3 + words;
        Point2D place = notes.place(near, w, 2 * r);
        double x = place.getX() - w / 2;
        Point2D disc = new Point2D.Double(x + r, place.getY());
        Point2D edge = edge(near, disc);
        c.pen(Ink.BLACK, Ink.line(0.9));
        c.line(disc.getX(), disc.getY(), edge.getX(), edge.getY());
        c.fill(Color.WHITE, new Rectangle2D.Double(x + 2 * r + 1, place.getY() - 6, words + 3, 12));
        MatchMarks.paint(c, m.letter(), disc.getX(), disc.getY(), m.where(), false);
    }

    private void doubt(Panel p, AffineTransform at, CuttingDoubts.Spot s, Notes notes) {
        Rectangle2D near = doubted(p, at, s);
        Point2D mark = notes.place(near, PrintMarks.DOUBT_WIDTH_PT, PrintMarks.DOUBT_HEIGHT_PT);
        c.pen(Ink.DOUBT, Ink.line(1.4));
        Point2D edge = edge(near, mark);
        c.line(mark.getX(), mark.getY(), edge.getX(), edge.getY());
        PrintMarks.doubt(c, s.doubt().mark(), mark.getX(), mark.getY());
    }

    /** A reference in doubt keeps its lettering free; other places get a dot. */
    private Rectangle2D doubted(Panel p, AffineTransform at, CuttingDoubts.Spot s) {
        if (s.reference() != null) {
            return placed(p, at, s.reference().box());
        }
        Point2D on = at.transform(p.view().map(s.place()), null);
        c.fill(Ink.DOUBT, Canvas.disc(on.getX(), on.getY(), 3));
        return new Rectangle2D.Double(on.getX() - 3, on.getY() - 3, 6, 6);
    }

    private void mark(Panel p, PanelCuts.Mark m, List<PanelCuts.Mark> all) {
        Point2D edge = p.place(m.place());
        Point2D on = markAt(p, m);
        c.pen(Ink.BLACK, Ink.line(1));
        c.line(area.getX() + edge.getX(), area.getY() + edge.getY(), area.getX() + on.getX(), area.getY() + on.getY());
        String where = all.stream().anyMatch(o -> tells(o, m)) ? "" : MatchMarks.where(p.page(), m.otherPage());
        double x = area.getX() + on.getX();
        double y = area.getY() + on.getY();
        if (isBeside(p, m) || !isCrowded(m, all)) {
            MatchMarks.paint(c, m.letter(), x, y, where, isBeside(p, m));
        } else {
            MatchMarks.paint(c, m.letter(), x, y, "", false);
            double words = Lettering.widthPt(where, Lettering.TEXT_PT);
            c.text(where, x - MatchMarks.radiusPt(m.letter()) - 3 - words, y + 3.6, Lettering.TEXT_PT);
        }
    }

    /** A letter so close on its right that words do not go between, and room on its left. */
    private static boolean isCrowded(PanelCuts.Mark m, List<PanelCuts.Mark> all) {
        return all.stream().anyMatch(o -> stands(o, m, 0, MatchMarks.PAGE_PT) && o.otherPage() != m.otherPage())
                && all.stream().noneMatch(o -> stands(o, m, -2 * MatchMarks.PAGE_PT, 0));
    }

    /** So far to the right of a letter, at the same height. */
    private static boolean stands(PanelCuts.Mark o, PanelCuts.Mark m, double fromPt, double toPt) {
        double dx = o.place().getX() - m.place().getX();
        return o != m
                && dx > fromPt
                && dx < toPt
                && Math.abs(o.place().getY() - m.place().getY()) < 0.01;
    }

    /** Of letters that stand side by side and lead to the same page, the last names it. */
    private static boolean tells(PanelCuts.Mark last, PanelCuts.Mark m) {
        return last.otherPage() == m.otherPage() && stands(last, m, 0, MatchMarks.PAGE_PT);
    }

    static boolean isBeside(Panel p, PanelCuts.Mark m) {
        return m.place().getX() <= p.part().getMinX() + 0.01
                || m.place().getX() >= p.part().getMaxX() - 0.01;
    }

    /** The middle of a letter, outside the cutting, on the picture area. */
    static Point2D markAt(Panel p, PanelCuts.Mark m) {
        Rectangle2D part = p.part();
        Point2D on = p.place(m.place());
        if (isBeside(p, m)) {
            double out = MatchMarks.STUB_PT;
            return new Point2D.Double(on.getX() + (m.place().getX() > part.getCenterX() ? out : -out), on.getY());
        }
        double r = MatchMarks.RADIUS_PT;
        return new Point2D.Double(on.getX(), on.getY() + (m.place().getY() > part.getCenterY() ? r : -r));
    }
}
