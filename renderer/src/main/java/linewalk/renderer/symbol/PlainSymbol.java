package linewalk.renderer.symbol;

import java.util.List;
import linewalk.drawing.Kind;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;

/** A symbol without moving squares. */
final class PlainSymbol implements Symbol {

    private final Kind kind;
    private final List<Use> uses;
    private final boolean against;

    PlainSymbol(Kind kind, List<Use> uses, boolean against) {
        this.kind = kind;
        this.uses = List.copyOf(uses);
        this.against = against;
    }

    @Override
    public double widthPt() {
        return switch (kind) {
            case CYLINDER, TANK -> 96;
            default -> 60;
        };
    }

    @Override
    public double heightPt() {
        return 52;
    }

    @Override
    public Side side(String key) {
        return allOnTop() || find(key).in() ? Side.TOP : Side.BOTTOM;
    }

    private boolean allOnTop() {
        return switch (kind) {
            case CYLINDER, TANK, ACCUMULATOR, GAUGE, TEST_POINT, BRAKE, SWITCH, PLUG -> true;
            default -> false;
        };
    }

    private Use find(String key) {
        return uses.stream().filter(u -> u.key().equals(key)).findFirst().orElseThrow();
    }

    @Override
    public double offsetPt(String key) {
        List<Use> same = uses.stream().filter(u -> side(u.key()) == side(key)).toList();
        int n = same.size();
        int i = same.indexOf(find(key));
        if (kind == Kind.CYLINDER) {
            return n == 1 ? 14 : 14 + i * (54.0 / (n - 1));
        }
        return n == 1 ? widthPt() / 2 : 12 + i * (widthPt() - 24) / (n - 1);
    }

    @Override
    public void paint(Canvas c, double xPt, double yPt) {
        c.pen(Ink.BLACK, Ink.line(1.3));
        SymbolArt art = new SymbolArt(c, xPt, yPt, against);
        art.draw(kind);
        double[] reach = art.reach();
        c.pen(Ink.PATH, Ink.line(2.6));
        for (Use u : uses) {
            double x = xPt + offsetPt(u.key());
            if (side(u.key()) == Side.TOP) {
                c.line(x, yPt, x, yPt + reach[0]);
            } else {
                c.line(x, yPt + reach[1], x, yPt + heightPt());
            }
        }
    }
}
