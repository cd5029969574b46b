package linewalk.renderer.sheet;

/** Paper is told in millimetres, drawn in points. */
final class Mm {

    private Mm() {}

    static double pt(double mm) {
        return mm / 25.4 * 72;
    }
}
