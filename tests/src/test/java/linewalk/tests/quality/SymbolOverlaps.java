package linewalk.tests.quality;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Symbols in each other's place. */
final class SymbolOverlaps {

    /** Symbols may share an edge. */
    private static final double TOUCH_PT = 0.5;

    private SymbolOverlaps() {}

    static List<Overlap> of(PrintPage page) {
        List<Overlap> found = new ArrayList<>();
        List<Thing.Symbol> symbols = page.symbols();
        for (int i = 0; i < symbols.size(); i++) {
            for (Thing.Symbol other : symbols.subList(i + 1, symbols.size())) {
                Rectangle2D both = symbols.get(i).box().createIntersection(other.box());
                if (both.getWidth() > TOUCH_PT && both.getHeight() > TOUCH_PT) {
                    String what = symbols.get(i).name() + " and " + other.name();
                    found.add(new Overlap("symbol-symbol", page.number(), both, what));
                }
            }
        }
        return found;
    }
}
