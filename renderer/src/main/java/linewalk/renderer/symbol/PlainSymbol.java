package linewalk.renderer.symbol;

import java.util.List;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import linewalk.renderer.sheet.Canvas;
import linewalk.renderer.sheet.Ink;

/** A symbol without moving squares. */
final class PlainSymbol implements Symbol {

    private final Component part;
    private final Kind kind;
    private final List<Use> uses;
    private final boolean against;

    PlainSymbol(Component part, List<Use> uses, boolean against) {
        this.part = part;
        kind = part.kind();
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

    /** Oil enters on top and leaves below, whatever the drawing, so that the eye can follow. */
    @Override
    public Side side(String key) {
        return find(key).in() ? Side.TOP : Side.BOTTOM;
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
            return cylinderOffsetPt(key);
        }
        return n == 1 ? widthPt() / 2 : 12 + i * (widthPt() - 24) / (n - 1);
    }

    /** The cap is on the left; where the sides are not told, oil enters on the left. */
    private double cylinderOffsetPt(String key) {
        CylinderEnds end = CylinderEnds.of(part, key);
        boolean left = end == CylinderEnds.UNTOLD ? find(key).in() : end == CylinderEnds.CAP;
        return left ? 14 : 68;
    }

    private boolean isRodTold() {
        return uses.stream().allMatch(u -> CylinderEnds.of(part, u.key()) != CylinderEnds.UNTOLD);
    }

    @Override
    public void paint(Canvas c, double xPt, double yPt) {
        c.pen(Ink.BLACK, Ink.line(1.3));
        SymbolArt art = new SymbolArt(c, xPt, yPt, against);
        if (kind == Kind.CYLINDER && !isRodTold()) {
            art.cylinderWithoutRod();
        } else {
            art.draw(kind);
        }
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
