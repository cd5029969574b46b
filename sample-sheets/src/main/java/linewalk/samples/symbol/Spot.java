package linewalk.samples.symbol;

/** A place in drawing units, x to the right, y down. */
public record Spot(double x, double y) {
    public Spot plus(double dx, double dy) {
        return new Spot(x + dx, y + dy);
    }
}
