package linewalk.tests.quality;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Puts letters that follow each other on one baseline together. */
final class TextRuns {

    private final List<Text> texts = new ArrayList<>();
    private final List<Double> cuttingCapitalsPt = new ArrayList<>();
    private Glyph last;
    private int lastOrder;

    void add(int order, Glyph glyph, Thing owner) {
        boolean follows = last != null
                && order == lastOrder + 1
                && Math.abs(glyph.emPt() - last.emPt()) < 0.01
                && glyph.start().distance(last.end()) < 0.3 * glyph.emPt();
        last = glyph;
        lastOrder = order;
        if (follows && !texts.isEmpty()) {
            Text t = texts.remove(texts.size() - 1);
            texts.add(
                    new Text(order, t.words() + glyph.text(), join(t.ink(), glyph.ink()), t.capitalPt(), owner, false));
        } else {
            texts.add(new Text(order, glyph.text(), glyph.ink(), glyph.capitalPt(), owner, false));
        }
    }

    private static Rectangle2D join(Rectangle2D a, Rectangle2D b) {
        return a == null ? b : b == null ? a : a.createUnion(b);
    }

    void addOriginal(Glyph glyph) {
        cuttingCapitalsPt.add(glyph.capitalPt());
    }

    /** Our own runs that show any ink. */
    List<Text> ours() {
        return texts.stream().filter(t -> t.ink() != null).toList();
    }

    List<Double> cuttingCapitalsPt() {
        return cuttingCapitalsPt;
    }
}
