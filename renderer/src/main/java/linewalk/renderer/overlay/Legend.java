package linewalk.renderer.overlay;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Point;
import linewalk.drawing.Severity;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Lettering;
import linewalk.renderer.sheet.Row;

/** What the marks mean: each drawn by the same code as on the sheets. */
final class Legend {

    private static final double INDENT = 62;
    private static final Scale UNIT = new Scale(1.3);

    private final double width;

    Legend(double width) {
        this.width = width;
    }

    List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        row(rows, "A joined line, each in its own colour; the colours mean nothing more.", this::line);
        row(rows, "A pilot or drain line: thinner, with its kind in words.", this::thin);
        row(rows, "Read with less than 0.9 confidence: dashed. Do not rely on it.", this::doubtful);
        row(rows, "An end at a part's port. Its letter stands beside it where one was read.", (c, x, y) -> {
            marks(c).square(new Point(x + 20, y), Tint.LINES.get(0));
        });
        row(rows, "A port that no line was found to meet.", (c, x, y) -> marks(c).bare(new Point(x + 20, y)));
        row(rows, "An end at an off-page reference.", (c, x, y) -> {
            marks(c).round(new Point(x + 20, y), Tint.LINES.get(0));
        });
        row(rows, "An end in nothing.", (c, x, y) -> marks(c).cross(new Point(x + 20, y), Tint.LINES.get(0)));
        row(rows, "A part: designation and setting; kind and confidence, 0 to 1.", (c, x, y) -> {
            box(c, x, y, Tint.PART, false);
        });
        row(rows, "What a part joins at rest, as drawn; arrow: one way; dotted: only when pushed open.", (c, x, y) -> {
            passage(c, x, y - 3, true, false);
            passage(c, x, y + 4, false, true);
        });
        row(
                rows,
                "An off-page reference: where it says its line goes on (sheet/zone), label, flow seen from its own"
                        + " sheet, confidence; below, its other end (mate) and how sure the two belong together.",
                (c, x, y) -> box(c, x, y, Tint.REFERENCE, false));
        row(rows, "A part or reference below 0.9, or a reference without a mate.", (c, x, y) -> {
            box(c, x, y, Tint.PART, true);
        });
        row(rows, "An enclosure: a manifold or unit.", (c, x, y) -> {
            c.pen(Tint.ENCLOSURE, Tint.chain(1.3));
            c.rect(x + 2, y - 6, 40, 12);
        });
        row(rows, "The zone grid as read, labels just inside it.", (c, x, y) -> {
            c.pen(Tint.GRID, Ink.line(0.8));
            c.line(x, y, x + 44, y);
            c.line(x + 22, y - 7, x + 22, y + 7);
        });
        row(rows, "An error, a warning, a note: see the list that follows the sheet.", (c, x, y) -> {
            int n = 1;
            for (Severity s : Severity.values()) {
                marks(c).number(n, s, x + 18 * n - 10, y);
                n++;
            }
        });
        return rows;
    }

    private static Marks marks(Canvas c) {
        return new Marks(c, UNIT);
    }

    private void row(List<Row> rows, String text, Row.Painter sign) {
        List<String> lines = Lettering.wrap(text, Lettering.TEXT_PT, width - INDENT);
        double height = Math.max(20, lines.size() * Lettering.LEADING_PT + 7);
        rows.add(new Row(height, false, (c, x, y) -> {
            sign.paint(c, x, y + 7);
            c.pen(Ink.BLACK, Ink.line(1));
            for (int i = 0; i < lines.size(); i++) {
                c.text(lines.get(i), x + INDENT, y + Lettering.TEXT_PT + i * Lettering.LEADING_PT, Lettering.TEXT_PT);
            }
        }));
    }

    private void line(Canvas c, double x, double y) {
        double step = 44.0 / Tint.LINES.size();
        for (int i = 0; i < Tint.LINES.size(); i++) {
            stroke(c, Tint.LINES.get(i), 3.1, x + i * step, y, step);
        }
    }

    private void thin(Canvas c, double x, double y) {
        stroke(c, Tint.LINES.get(0), 2, x, y, 44);
    }

    private void doubtful(Canvas c, double x, double y) {
        stroke(c, Tint.LINES.get(1), 3.1, x, y, 44);
        c.pen(Ink.DOUBT, Ink.dashed(4.4, 9, 8));
        c.line(x, y, x + 44, y);
    }

    private static void stroke(Canvas c, Color color, double widthPt, double x, double y, double length) {
        c.pen(Tint.see(color, 0xD0), Ink.line(widthPt));
        c.line(x, y, x + length, y);
    }

    private static void passage(Canvas c, double x, double y, boolean oneWay, boolean pushed) {
        new PassageOverlay(c, UNIT).join(new Point(x + 4, y), new Point(x + 42, y), oneWay, pushed);
    }

    private static void box(Canvas c, double x, double y, Color color, boolean doubt) {
        c.pen(doubt ? Ink.DOUBT : color, doubt ? Ink.dashed(3.1, 6.5f, 3.9f) : Ink.line(1.2));
        c.rect(x + 2, y - 6, 40, 12);
    }
}
