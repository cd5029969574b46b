package linewalk.renderer;

/** Paper sizes after ISO 216 (A) and ASME Y14.1 (ANSI A, which is Letter, to E), lying on their long side. */
public enum Paper {
    A4(297 / Paper.INCH_MM, 210 / Paper.INCH_MM),
    A3(420 / Paper.INCH_MM, 297 / Paper.INCH_MM),
    A2(594 / Paper.INCH_MM, 420 / Paper.INCH_MM),
    A1(841 / Paper.INCH_MM, 594 / Paper.INCH_MM),
    A0(1189 / Paper.INCH_MM, 841 / Paper.INCH_MM),
    LETTER(11, 8.5),
    TABLOID(17, 11),
    ANSI_C(22, 17),
    ANSI_D(34, 22),
    ANSI_E(44, 34);

    private static final double INCH_MM = 25.4;
    private static final double INCH_PT = 72;

    private final double widthIn;
    private final double heightIn;

    Paper(double widthIn, double heightIn) {
        this.widthIn = widthIn;
        this.heightIn = heightIn;
    }

    public double widthPt() {
        return widthIn * INCH_PT;
    }

    public double heightPt() {
        return heightIn * INCH_PT;
    }
}
