package linewalk.renderer.sheet;

/**
 * One row of running text that is never divided.
 *
 * @param withNext stays on the same column as the row after it
 * @param heading what the row heads, or null
 */
public record Row(double heightPt, boolean withNext, Painter painter, String heading) {

    public Row(double heightPt, boolean withNext, Painter painter) {
        this(heightPt, withNext, painter, null);
    }

    /** Draws a row whose top left corner is given. */
    @FunctionalInterface
    public interface Painter {
        void paint(Canvas canvas, double xPt, double yPt);
    }

    public static Row gap(double heightPt) {
        return new Row(heightPt, false, (c, x, y) -> {});
    }
}
