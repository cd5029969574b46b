package linewalk.samples.symbol;

/** Where a symbol stands: mirrored left to right first, then turned clockwise by quarters, then moved. */
public record Place(double x, double y, int quarters, boolean mirrored) {
    public Spot of(Spot local) {
        double lx = mirrored ? -local.x() : local.x();
        double ly = local.y();
        return switch (quarters & 3) {
            case 0 -> new Spot(x + lx, y + ly);
            case 1 -> new Spot(x - ly, y + lx);
            case 2 -> new Spot(x - lx, y - ly);
            default -> new Spot(x + ly, y - lx);
        };
    }
}
