package linewalk.renderer;

import java.util.ArrayList;
import java.util.List;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Lettering;

/** Lines of words, one below the other, with marks of doubt under them. */
final class TextStack {

    private enum Weight {
        PLAIN,
        /** White on black: must not be overlooked. */
        LOUD
    }

    private record Row(String text, Weight weight, double indentPt) {}

    private static final double GAP_PT = 4;
    private static final double HANG_PT = 8;

    private final double mostPt;
    private final List<Row> rows = new ArrayList<>();
    private final List<String> doubts = new ArrayList<>();
    private String head;
    private String balloon;

    /** @param mostPt width at which words are wrapped */
    TextStack(double mostPt) {
        this.mostPt = mostPt;
    }

    /** @param number in the balloon before the head, or null for none */
    void head(String text, String number) {
        head = text;
        balloon = number;
    }

    void plain(String text) {
        add(text, Weight.PLAIN);
    }

    void loud(String text) {
        add(text, Weight.LOUD);
    }

    /** One of a list: where it is wrapped, its further lines are set in. */
    void item(String text) {
        List<String> lines = Lettering.wrap(text, Lettering.TEXT_PT, mostPt);
        rows.add(new Row(lines.get(0), Weight.PLAIN, 0));
        if (lines.size() > 1) {
            String rest = String.join(" ", lines.subList(1, lines.size()));
            Lettering.wrap(rest, Lettering.TEXT_PT, mostPt - HANG_PT)
                    .forEach(l -> rows.add(new Row(l, Weight.PLAIN, HANG_PT)));
        }
    }

    private void add(String text, Weight weight) {
        if (!text.isBlank()) {
            Lettering.wrap(text, Lettering.TEXT_PT, mostPt).forEach(l -> rows.add(new Row(l, weight, 0)));
        }
    }

    void doubts(List<Doubts.Doubt> some) {
        some.forEach(d -> doubts.add(d.mark()));
    }

    private double indentPt() {
        return balloon == null ? 0 : PrintMarks.balloonWidthPt(balloon) + 5;
    }

    private double headHeightPt() {
        return head == null ? 0 : PrintMarks.BALLOON_PT + 3;
    }

    private int doubtsAcross() {
        return Math.max(1, (int) (mostPt / PrintMarks.DOUBT_WIDTH_PT));
    }

    boolean isEmpty() {
        return head == null && rows.isEmpty() && doubts.isEmpty();
    }

    double widthPt() {
        double w = head == null ? 0 : indentPt() + Lettering.widthPt(head, Lettering.HEAD_PT);
        for (Row r : rows) {
            w = Math.max(
                    w, r.indentPt + Lettering.widthPt(r.text, Lettering.TEXT_PT) + (r.weight == Weight.LOUD ? 6 : 0));
        }
        return Math.max(w, Math.min(doubtsAcross(), doubts.size()) * PrintMarks.DOUBT_WIDTH_PT);
    }

    double heightPt() {
        int doubtRows = (doubts.size() + doubtsAcross() - 1) / doubtsAcross();
        return headHeightPt()
                + rows.size() * Lettering.LEADING_PT
                + (doubtRows == 0 ? 0 : GAP_PT + doubtRows * PrintMarks.DOUBT_HEIGHT_PT);
    }

    void paint(Canvas c, double xPt, double yPt) {
        if (head != null) {
            if (balloon != null) {
                PrintMarks.balloon(
                        c, balloon, xPt + PrintMarks.balloonWidthPt(balloon) / 2, yPt + PrintMarks.BALLOON_PT / 2);
            }
            c.pen(Ink.BLACK, Ink.line(1));
            c.text(head, xPt + indentPt(), yPt + PrintMarks.BALLOON_PT / 2 + 4.3, Lettering.HEAD_PT);
        }
        double y = yPt + headHeightPt();
        for (Row r : rows) {
            row(c, r, xPt + r.indentPt, y);
            y += Lettering.LEADING_PT;
        }
        y += GAP_PT + PrintMarks.DOUBT_HEIGHT_PT / 2;
        for (int i = 0; i < doubts.size(); i++) {
            double x = xPt + (i % doubtsAcross() + 0.5) * PrintMarks.DOUBT_WIDTH_PT;
            PrintMarks.doubt(c, doubts.get(i), x, y + i / doubtsAcross() * PrintMarks.DOUBT_HEIGHT_PT);
        }
    }

    private static void row(Canvas c, Row r, double x, double y) {
        double base = y + Lettering.TEXT_PT - 0.5;
        if (r.weight == Weight.LOUD) {
            loud(c, r.text, x, y);
            return;
        }
        c.pen(Ink.BLACK, Ink.line(1));
        c.text(r.text, x, base, Lettering.TEXT_PT);
    }

    static double loudWidthPt(String text) {
        return Lettering.widthPt(text, Lettering.TEXT_PT) + 6;
    }

    /** A row that must not be overlooked, with its upper left corner at a point. */
    static void loud(Canvas c, String text, double x, double y) {
        double w = loudWidthPt(text);
        c.polygon(Ink.BLACK, x, y, x + w, y, x + w, y + Lettering.LEADING_PT, x, y + Lettering.LEADING_PT);
        c.pen(java.awt.Color.WHITE, Ink.line(1));
        c.text(text, x + 3, y + Lettering.TEXT_PT - 0.5, Lettering.TEXT_PT);
        c.pen(Ink.BLACK, Ink.line(1));
    }
}
