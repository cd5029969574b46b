package linewalk.importer.lettering;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import linewalk.drawing.Box;
import linewalk.importer.page.Direction;
import linewalk.importer.page.Near;

/** Lines of text that stand close above one another in one direction. */
public final class TextBlocks {

    /** From baseline to baseline, in text sizes. */
    private static final double SPACING = 1.9;

    private final Near<Label> near;

    public TextBlocks(List<Label> labels) {
        near = new Near<>(labels, Label::box);
    }

    /** The line of text right below, as the text reads. */
    public Optional<Label> below(Label l) {
        Direction down = Direction.ofAngle(l.angleDeg() + 90);
        return near.touching(l.box().grow(SPACING * l.sizePt())).stream()
                .filter(o -> o != l && Math.abs(o.angleDeg() - l.angleDeg()) < 5)
                .filter(o -> Math.abs(o.sizePt() - l.sizePt()) < 0.25 * l.sizePt())
                .filter(o -> {
                    double d = down.ahead(l.center(), o.center());
                    return d > 0.6 * l.sizePt() && d < SPACING * l.sizePt() && aligned(l, o);
                })
                .min(Comparator.comparingDouble(o -> down.ahead(l.center(), o.center())));
    }

    /** Left, right or centre in one line. */
    private static boolean aligned(Label a, Label b) {
        double slack = 0.8 * a.sizePt();
        Box p = a.box();
        Box q = b.box();
        if (a.upright()) {
            return Math.abs(p.y0Pt() - q.y0Pt()) < slack
                    || Math.abs(p.y1Pt() - q.y1Pt()) < slack
                    || Math.abs(p.center().yPt() - q.center().yPt()) < slack;
        }
        return Math.abs(p.x0Pt() - q.x0Pt()) < slack
                || Math.abs(p.x1Pt() - q.x1Pt()) < slack
                || Math.abs(p.center().xPt() - q.center().xPt()) < slack;
    }
}
