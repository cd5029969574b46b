package linewalk.renderer.symbol;

import java.util.List;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import linewalk.drawing.Position;
import linewalk.renderer.sheet.Canvas;

/**
 * A symbol ready to be drawn: its size, and where its ports are. Ports are told apart by the keys given; offsets count
 * from the symbol's top left corner.
 */
public interface Symbol {

    /**
     * A port in use.
     *
     * @param key any word that tells this port from the part's others
     * @param name its letter, or null
     * @param in oil enters here where the path first meets it
     */
    record Use(String key, String name, boolean in) {}

    double widthPt();

    double heightPt();

    Side side(String key);

    double offsetPt(String key);

    /** Draws with the pen of a symbol; the line from the port's place at the edge is drawn too. */
    void paint(Canvas canvas, double xPt, double yPt);

    /**
     * Chooses the symbol.
     *
     * @param active the position that the part is in on this path; null where not known
     * @param against the path runs against the part's free direction
     */
    static Symbol of(Component c, List<Use> uses, Position active, boolean against) {
        if (c.kind() == Kind.DIRECTIONAL_VALVE || c.kind() == Kind.PROPORTIONAL_VALVE) {
            return new SpoolSymbol(c, uses, active);
        }
        return new PlainSymbol(c, uses, against);
    }
}
