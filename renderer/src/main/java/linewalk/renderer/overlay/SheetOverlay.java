package linewalk.renderer.overlay;

import java.awt.Color;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Map;
import linewalk.drawing.Box;
import linewalk.drawing.Component;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Enclosure;
import linewalk.drawing.Line;
import linewalk.drawing.PageKey;
import linewalk.drawing.Point;
import linewalk.drawing.Port;
import linewalk.drawing.Reference;
import linewalk.drawing.Sheet;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;

/**
 * Draws what was read of one sheet, from the ground up: veil, grid, enclosures, lines, boxes, ends; then the labels,
 * which look for room among all of that.
 */
final class SheetOverlay {

    private final Sheet sheet;
    private final Scale scale;
    private final Canvas canvas;
    private final Marks marks;
    private final Labels labels;
    private final Words words;
    private final List<Line> lines;
    private final List<Component> parts;
    private final List<Reference> references;
    private final List<Enclosure> enclosures;

    SheetOverlay(DrawingSet set, Sheet sheet, Canvas canvas, InkMap ink) {
        this.sheet = sheet;
        this.canvas = canvas;
        scale = Scale.of(sheet);
        marks = new Marks(canvas, scale);
        labels = new Labels(page(), ink, scale);
        words = new Words(set);
        PageKey key = sheet.page();
        lines = set.lines().stream().filter(l -> l.page().equals(key)).toList();
        parts = set.components().stream().filter(c -> c.page().equals(key)).toList();
        references = set.references().stream().filter(r -> r.page().equals(key)).toList();
        enclosures = set.enclosures().stream().filter(e -> e.page().equals(key)).toList();
    }

    private Rectangle2D page() {
        return new Rectangle2D.Double(0, 0, sheet.widthPt(), sheet.heightPt());
    }

    void paint(List<Numbered> findings, boolean originalMissing) {
        canvas.fill(Tint.VEIL, page());
        new GridOverlay(sheet, canvas, scale).paint();
        enclosures.forEach(this::outline);
        Map<Line, Color> colours = LineColours.of(lines, scale);
        colours.forEach(this::course);
        parts.forEach(c -> box(c.box(), Tint.PART, Doubt.of(c)));
        references.forEach(r -> box(r.box(), Tint.REFERENCE, Doubt.of(r)));
        PassageOverlay passages = new PassageOverlay(canvas, scale);
        parts.forEach(passages::paint);
        parts.forEach(c -> c.ports().forEach(p -> marks.bare(p.place())));
        colours.forEach((line, color) -> line.ends().forEach(e -> marks.end(e, color)));
        FindingMarks numbers = new FindingMarks(canvas, marks, labels, scale);
        numbers.points(findings);
        parts.forEach(c -> tag(Words.of(c), Doubt.of(c) ? Ink.DOUBT : Tint.PART, c.box()));
        references.forEach(r -> tag(words.of(r), Doubt.of(r) ? Ink.DOUBT : Tint.REFERENCE, r.box()));
        numbers.stand(findings);
        parts.forEach(c -> c.ports().forEach(this::name));
        colours.forEach(this::label);
        enclosures.forEach(this::title);
        new SheetCaption(sheet, canvas, scale).paint(labels, originalMissing);
    }

    private void outline(Enclosure e) {
        canvas.pen(Tint.ENCLOSURE, Tint.chain(scale.pt(1)));
        canvas.draw(rectangle(e.box()));
    }

    /** Doubt is laid over the line's own colour, which still tells it from the next. */
    private void course(Line line, Color color) {
        boolean working = line.kind() == linewalk.drawing.LineKind.WORKING;
        canvas.pen(Tint.see(color, 0xD0), Ink.round(scale.pt(working ? 2.4 : 1.5)));
        canvas.draw(Runs.path(line));
        if (Doubt.of(line)) {
            canvas.pen(Ink.DOUBT, Ink.dashed(scale.pt(3.4), (float) scale.pt(7), (float) scale.pt(6)));
            canvas.draw(Runs.path(line));
        }
        labels.keepOff(Runs.segments(line));
    }

    private void box(Box box, Color color, boolean doubt) {
        Rectangle2D r = rectangle(box);
        canvas.pen(
                doubt ? Ink.DOUBT : color,
                doubt ? Ink.dashed(scale.pt(2.4), (float) scale.pt(5), (float) scale.pt(3)) : Ink.line(scale.pt(0.9)));
        canvas.draw(r);
        labels.keepOff(r);
    }

    private void tag(List<String> rows, Color color, Box near) {
        new Tag(rows, color, scale.textPt()).stand(canvas, labels, rectangle(near), Labels.FAR);
    }

    private void name(Port port) {
        if (port.name() != null) {
            Rectangle2D near = rectangle(Box.around(port.place()).grow(scale.pt(2)));
            new Tag(List.of(port.name()), Tint.PART, scale.smallTextPt()).stand(canvas, labels, near, Labels.CLOSE);
        }
    }

    private void label(Line line, Color color) {
        String text = Words.of(line);
        Line2D longest = Runs.segments(line).stream()
                .reduce((a, b) -> lengthPt(b) > lengthPt(a) ? b : a)
                .orElse(null);
        if (!text.isEmpty() && longest != null) {
            Point middle = new Point((longest.getX1() + longest.getX2()) / 2, (longest.getY1() + longest.getY2()) / 2);
            new Tag(List.of(text), Doubt.of(line) ? Ink.DOUBT : color.darker(), scale.smallTextPt())
                    .stand(canvas, labels, rectangle(Box.around(middle).grow(scale.pt(1))), Labels.CLOSE);
        }
    }

    private void title(Enclosure e) {
        Box b = e.box();
        Box corner = new Box(b.x0Pt(), b.y0Pt(), b.x0Pt() + scale.pt(20), b.y0Pt() + scale.pt(1));
        String text = "enclosure" + (e.tag() == null ? "" : " " + e.tag());
        new Tag(List.of(text), Tint.ENCLOSURE, scale.textPt()).stand(canvas, labels, rectangle(corner), Labels.CLOSE);
    }

    private static double lengthPt(Line2D line) {
        return line.getP1().distance(line.getP2());
    }

    static Rectangle2D rectangle(Box b) {
        return new Rectangle2D.Double(b.x0Pt(), b.y0Pt(), b.widthPt(), b.heightPt());
    }
}
