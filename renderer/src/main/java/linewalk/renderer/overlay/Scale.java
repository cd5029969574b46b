package linewalk.renderer.overlay;

import linewalk.drawing.Sheet;

/** Sizes in proportion to the sheet: what is 6 pt on an A3 is 12 pt on an A1, and as legible on either seen whole. */
record Scale(double factor) {

    private static final double A3_LONG_SIDE_PT = 1190.55;

    static Scale of(Sheet sheet) {
        return new Scale(Math.max(sheet.widthPt(), sheet.heightPt()) / A3_LONG_SIDE_PT);
    }

    /** The size on this sheet of what is so large on an A3. */
    double pt(double onA3Pt) {
        return onA3Pt * factor;
    }

    double textPt() {
        return pt(6.5);
    }

    double smallTextPt() {
        return pt(6);
    }
}
