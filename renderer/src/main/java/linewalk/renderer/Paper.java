package linewalk.renderer;

/** Paper sizes, landscape, in points. */
public enum Paper {
    A3(1190.55, 841.89),
    A4(841.89, 595.28),
    LETTER(792, 612),
    TABLOID(1224, 792);

    private final double widthPt;
    private final double heightPt;

    Paper(double widthPt, double heightPt) {
        this.widthPt = widthPt;
        this.heightPt = heightPt;
    }

    public double widthPt() {
        return widthPt;
    }

    public double heightPt() {
        return heightPt;
    }

    /** Wide enough for a column of text beside the picture. */
    boolean isWide() {
        return widthPt > 1000;
    }
}
