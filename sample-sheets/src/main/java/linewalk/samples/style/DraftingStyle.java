package linewalk.samples.style;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Everything in which drawing offices differ. Lengths in millimetres on paper; {@code unitMm} is one drawing unit (the
 * side of a valve square is 1.2 units). {@code pageOrder} lists sheet numbers in the order of pages. {@code rotate} is
 * the page's /Rotate; the drawing displays upright all the same. {@code cropPt} is what the crop box leaves of the
 * media box on each side, in user space units. {@code deckGear}: the set has a sheet more, a dense manifold. {@code letters}: as a text layer or as
 * strokes.
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
        double userUnit,
        LineWork lineWork,
        boolean deckGear,
        LetterForm letters) {
    /** Where line numbers stand. */
    public enum LabelPlace {
        ABOVE,
        GAP
    }

    /** Title block and its place. */
    public enum TitleForm {
        ISO,
        ASME,
        STRIP,
        /** A column along the right side. */
        SIDE
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
            1,
            LineWork.STROKES,
            false,
            LetterForm.TEXT);

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
            1,
            LineWork.STROKES,
            false,
            LetterForm.TEXT);

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
            2,
            LineWork.STROKES,
            false,
            LetterForm.TEXT);

    public static final DraftingStyle HOPS = new DraftingStyle(
            "hops",
            1000,
            707,
            Grids.office(1000, 707),
            13.1,
            ReferenceForm.DOTTED,
            LabelPlace.GAP,
            TitleForm.ISO,
            Typeface.EMBEDDED_SANS,
            Typeface.EMBEDDED_SANS,
            0.95,
            false,
            false,
            0,
            0.7,
            "",
            List.of(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13),
            0,
            30,
            1,
            LineWork.HOPS,
            false,
            LetterForm.TEXT);

    public static final DraftingStyle PIECES = new DraftingStyle(
            "pieces",
            707,
            500,
            Grids.upward(707, 500),
            8.55,
            ReferenceForm.WORDS,
            LabelPlace.ABOVE,
            TitleForm.ASME,
            Typeface.TIMES,
            Typeface.HELVETICA_BOLD,
            1.05,
            false,
            true,
            0.11,
            0.35,
            "",
            List.of(13, 12, 11, 10, 9, 8, 7, 6, 5, 4, 3, 2, 1),
            270,
            0,
            1,
            LineWork.PIECES,
            false,
            LetterForm.TEXT);

    public static final DraftingStyle BARS = new DraftingStyle(
            "bars",
            914.4,
            609.6,
            Grids.leftward(914.4, 609.6),
            11,
            ReferenceForm.HEXAGON,
            LabelPlace.ABOVE,
            TitleForm.SIDE,
            Typeface.HELVETICA_OBLIQUE,
            Typeface.HELVETICA_BOLD_OBLIQUE,
            0.95,
            false,
            false,
            0.13,
            0.55,
            "",
            List.of(14, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13),
            180,
            12,
            1.5,
            LineWork.BARS,
            true,
            LetterForm.TEXT);

    public static final List<DraftingStyle> ALL = List.of(ISO, ASME, HOUSE, HOPS, PIECES, BARS);

    /** The styles whose letters are strokes: each of {@link #ALL} in two fonts. */
    public static final List<DraftingStyle> STROKE_LETTERED = ALL.stream()
            .flatMap(s -> Stream.of(s.lettered(LetterForm.NARROW), s.lettered(LetterForm.ROUND)))
            .toList();

    /** The styles whose letters are painted, or only in part a text layer. */
    public static final List<DraftingStyle> OTHERWISE_LETTERED = ALL.stream()
            .flatMap(s -> Stream.of(s.lettered(LetterForm.OUTLINE), s.lettered(LetterForm.PART)))
            .toList();

    /** The style of that name; fails with the names there are. */
    public static DraftingStyle named(String name) {
        return Stream.of(ALL, STROKE_LETTERED, OTHERWISE_LETTERED)
                .flatMap(List::stream)
                .filter(style -> style.name.equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no style " + name + "; there are "
                        + ALL.stream().map(DraftingStyle::name).toList()));
    }

    /** The same habits for another set: its sheets in the order of pages, its unit and its lines so many times as large. */
    public DraftingStyle with(List<Integer> pages, double timesUnit, double timesWidth) {
        return new DraftingStyle(
                name,
                widthMm,
                heightMm,
                grid,
                unitMm * timesUnit,
                references,
                labels,
                title,
                regular,
                bold,
                fontScale,
                singleGlyphs,
                usUnits,
                dotRadius,
                lineWidthMm * timesWidth,
                sheetPrefix,
                List.copyOf(pages),
                rotate,
                cropPt,
                userUnit,
                lineWork,
                false,
                letters);
    }

    /** The same habits with letters of that form; the name tells it, as in {@code iso-narrow}. */
    public DraftingStyle lettered(LetterForm form) {
        return new DraftingStyle(
                name + "-" + form.name().toLowerCase(Locale.ROOT),
                widthMm,
                heightMm,
                grid,
                unitMm,
                references,
                labels,
                title,
                regular,
                bold,
                fontScale,
                singleGlyphs,
                usUnits,
                dotRadius,
                lineWidthMm,
                sheetPrefix,
                pageOrder,
                rotate,
                cropPt,
                userUnit,
                lineWork,
                deckGear,
                form);
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
