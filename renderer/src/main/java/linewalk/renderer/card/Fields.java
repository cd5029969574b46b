package linewalk.renderer.card;

import java.util.List;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;
import linewalk.renderer.sheet.Lettering;

/** A row of framed fields, a label above each value. */
final class Fields {

    private static final double PAD_PT = 5;
    private static final double LABEL_PT = 14;

    /**
     * @param share of the width; the shares of a row add up to 1
     * @param value empty for one that is filled in with a pen
     */
    record Field(double share, String label, String value) {}

    private final double widthPt;
    private final List<Field> fields;
    private final double heightPt;

    Fields(double widthPt, Field... fields) {
        this.widthPt = widthPt;
        this.fields = List.of(fields);
        heightPt = this.fields.stream().mapToDouble(this::heightPt).max().orElse(0);
    }

    double heightPt() {
        return heightPt;
    }

    private double heightPt(Field f) {
        return LABEL_PT + 5 + Math.max(1, lines(f).size()) * (Lettering.HEAD_PT + 2);
    }

    private List<String> lines(Field f) {
        return f.value().isEmpty()
                ? List.of()
                : Lettering.wrap(f.value(), Lettering.HEAD_PT, f.share() * widthPt - 2 * PAD_PT);
    }

    void paint(Canvas c, double xPt, double yPt) {
        double x = xPt;
        for (Field f : fields) {
            double w = f.share() * widthPt;
            c.pen(Ink.BLACK, Ink.line(0.9));
            c.rect(x, yPt, w, heightPt);
            c.pen(Ink.GREY, Ink.line(1));
            c.text(f.label(), x + PAD_PT, yPt + LABEL_PT - 1, Lettering.TEXT_PT);
            c.pen(Ink.BLACK, Ink.line(1));
            double baseline = yPt + LABEL_PT + Lettering.HEAD_PT;
            for (String line : lines(f)) {
                c.text(line, x + PAD_PT, baseline, Lettering.HEAD_PT);
                baseline += Lettering.HEAD_PT + 2;
            }
            x += w;
        }
    }
}
