package linewalk.renderer.scheme;

/** Of a layout or of a field on the paper. */
record Size(double widthPt, double heightPt) {

    boolean isWithin(Size most) {
        return widthPt <= most.widthPt && heightPt <= most.heightPt;
    }
}
