package linewalk.renderer.iso;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import linewalk.renderer.iso.InkLog.Filled;
import linewalk.renderer.iso.InkLog.Lettered;
import linewalk.renderer.iso.InkLog.Stroked;

/** The rules that every symbol keeps, however odd its part. */
final class InkRules {

    private static final double LEAST_CAPITALS_PT = 2.5 / 25.4 * 72;
    /** White between lettering and a line. */
    private static final double CLEAR_PT = 0.5;

    private static final double SLACK_PT = 0.01;

    private final String what;
    private final Symbol symbol;
    private final List<PortUse> ports;
    private final InkLog ink;

    InkRules(String what, Symbol symbol, List<PortUse> ports) {
        this.what = what;
        this.symbol = symbol;
        this.ports = ports;
        ink = InkLog.of(symbol);
    }

    void check() {
        inside();
        apart();
        legible();
        portsMeetLines();
    }

    private void inside() {
        ink.strokes.forEach(s -> within(s.area().getBounds2D()));
        ink.fills.forEach(f -> within(f.area().getBounds2D()));
        ink.texts.forEach(t -> within(t.box()));
    }

    private void within(Rectangle2D box) {
        boolean inside = box.getMinX() > -SLACK_PT
                && box.getMinY() > -SLACK_PT
                && box.getMaxX() < symbol.widthPt() + SLACK_PT
                && box.getMaxY() < symbol.heightPt() + SLACK_PT;
        assertThat(inside).as("%s: %s outside of its field", what, box).isTrue();
    }

    private void apart() {
        List<PortPlace> places = new ArrayList<>();
        for (PortUse u : ports) {
            PortPlace place = symbol.place(u.id());
            boolean level = place.side() == Side.LEFT || place.side() == Side.RIGHT;
            assertThat(place.offsetPt()).as(what).isBetween(0.0, level ? symbol.heightPt() : symbol.widthPt());
            for (PortPlace other : places) {
                boolean near = other.side() == place.side()
                        && Math.abs(other.offsetPt() - place.offsetPt()) < 1.5 * Symbol.MODULE_PT - SLACK_PT;
                assertThat(near).as("%s: %s beside %s", what, place, other).isFalse();
            }
            places.add(place);
        }
    }

    private void legible() {
        for (Lettered t : ink.texts) {
            assertThat(t.capitalsPt()).as(what).isGreaterThanOrEqualTo(LEAST_CAPITALS_PT);
            Rectangle2D box = grown(t.box(), CLEAR_PT);
            for (Stroked s : ink.strokes) {
                assertThat(s.area().intersects(box))
                        .as("%s: %s struck through", what, t.text())
                        .isFalse();
            }
            for (Filled f : ink.fills) {
                boolean under = f.area().contains(box) && !f.color().equals(t.color());
                assertThat(under || !f.area().intersects(box))
                        .as("%s: %s on a fill", what, t.text())
                        .isTrue();
            }
            for (Lettered o : ink.texts) {
                assertThat(o != t && o.box().intersects(box))
                        .as("%s: %s over %s", what, t.text(), o.text())
                        .isFalse();
            }
        }
    }

    private static Rectangle2D grown(Rectangle2D r, double by) {
        return new Rectangle2D.Double(r.getX() - by, r.getY() - by, r.getWidth() + 2 * by, r.getHeight() + 2 * by);
    }

    /** A line of the symbol starts where the port is said to be. */
    private void portsMeetLines() {
        for (PortUse u : ports) {
            PortPlace at = symbol.place(u.id());
            double x =
                    switch (at.side()) {
                        case LEFT -> 0;
                        case RIGHT -> symbol.widthPt();
                        default -> at.offsetPt();
                    };
            double y =
                    switch (at.side()) {
                        case TOP -> 0;
                        case BOTTOM -> symbol.heightPt();
                        default -> at.offsetPt();
                    };
            assertThat(ink.strokes.stream().anyMatch(s -> s.area().intersects(x - 0.1, y - 0.1, 0.2, 0.2)))
                    .as("%s: no line at port %s", what, u.id())
                    .isTrue();
        }
    }
}
