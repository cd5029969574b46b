package linewalk.samples.style;

import java.util.List;

/**
 * Everything in which drawing offices differ. Lengths in millimetres on paper; {@code unitMm} is one drawing unit (the
 * side of a valve square is 1.2 units). {@code pageOrder} lists sheet numbers in the order of pages. {@code rotate} is
 * the page's /Rotate; the drawing displays upright all the same. {@code cropPt} is what the crop box leaves of the
 * media box on each side, in user space units.
 */
public record DraftingStyle(
        String name,
        double widthMm,
        double heightMm,
        Grid grid,
        double unitMm,
        ReferenceForm references,
        LabelPlace labels,
        TitleForm title,
        Typeface regular,
        Typeface bold,
        double fontScale,
        boolean singleGlyphs,
        boolean usUnits,
        double dotRadius,
        double lineWidthMm,
        String sheetPrefix,
        List<Integer> pageOrder,
        int rotate,
        double cropPt,
        double userUnit) {
    /** Where line numbers stand. */
    public enum LabelPlace {
        ABOVE,
        GAP
    }

    /** Title block and its place. */
    public enum TitleForm {
        ISO,
        ASME,
        STRIP
    }

    public static final DraftingStyle ISO = new DraftingStyle(
            "iso",
            841,
            594,
            Grids.iso(841, 594),
            10.8,
            ReferenceForm.FLAG,
            LabelPlace.ABOVE,
            TitleForm.ISO,
            Typeface.EMBEDDED_SANS,
            Typeface.HELVETICA_BOLD,
            1,
            false,
            false,
            0.12,
            0.5,
            "",
            List.of(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13),
            0,
            0,
            1);

    public static final DraftingStyle ASME = new DraftingStyle(
            "asme",
            863.6,
            558.8,
            Grids.asme(863.6, 558.8, 8, 4),
            10.9,
            ReferenceForm.PLAIN,
            LabelPlace.ABOVE,
            TitleForm.ASME,
            Typeface.COURIER,
            Typeface.COURIER_BOLD,
            0.92,
            true,
            true,
            0.1,
            0.6,
            "",
            List.of(2, 1, 4, 3, 13, 5, 6, 8, 7, 9, 10, 12, 11),
            90,
            0,
            1);

    public static final DraftingStyle HOUSE = new DraftingStyle(
            "house",
            594,
            420,
            Grids.house(594, 420, 16, 8),
            7.7,
            ReferenceForm.CIRCLE,
            LabelPlace.GAP,
            TitleForm.STRIP,
            Typeface.HELVETICA,
            Typeface.TIMES_BOLD,
            1,
            false,
            false,
            0.14,
            0.4,
            "H-",
            List.of(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13),
            0,
            18,
            2);

    public static final List<DraftingStyle> ALL = List.of(ISO, ASME, HOUSE);

    /** The style of that name; fails with the names there are. */
    public static DraftingStyle named(String name) {
        return ALL.stream()
                .filter(style -> style.name.equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no style " + name + "; there are "
                        + ALL.stream().map(DraftingStyle::name).toList()));
    }

    /** The sheet's name as references use it. */
    public String sheetName(int number) {
        return sheetPrefix.isEmpty() ? Integer.toString(number) : sheetPrefix + (number < 10 ? "0" : "") + number;
    }

    /** The page (from 1) of a sheet. */
    public int pageOf(int sheetNumber) {
        return pageOrder.indexOf(sheetNumber) + 1;
    }

    public double unitPt() {
        return unitMm * 72 / 25.4;
    }
}
