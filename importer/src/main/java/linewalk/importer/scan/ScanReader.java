package linewalk.importer.scan;

import boofcv.struct.image.GrayU8;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import linewalk.drawing.Affine;
import linewalk.drawing.Point;
import linewalk.importer.ocr.LetterReader;
import linewalk.importer.page.Fill;
import linewalk.importer.page.Marks;
import linewalk.importer.page.Stroke;

/**
 * One scan to marks on an upright page.
 *
 * <p>Order: ink, tilt, blobs, rows of text and how the page lies, lettering; what is no lettering: filled shapes, lines.
 */
public final class ScanReader {

    private static final double MM_PER_PT = 25.4 / 72;

    /** Larger pieces of ink are no lettering. */
    private static final double LARGE_MM = 12;

    /** Share of the ink that a speck's box must hold to be dirt; and how much smaller than a line is wide it is. */
    private static final double SPECK = 0.9;

    /** Share of its box that a small arrow fills at most, and its least width in thin pens: dashes fill more or are thinner. */
    private static final double FILLED = 0.7;

    private static final double HEAD = 2;

    /**
     * The marks of an upright page, and where that page lies.
     *
     * @param toDisplay from points of the marks to points of the page as it was scanned
     */
    public record Upturned(Marks marks, Affine toDisplay) {}

    /** What is on the page is no drawing. */
    public static final class Unreadable extends Exception {
        private static final long serialVersionUID = 1L;

        Unreadable(String message) {
            super(message);
        }
    }

    /** Pieces of ink on a page; the densest drawings seen hold a tenth. More is noise or a photograph. */
    private static final int MOST_BLOBS = 100_000;

    private final GrayU8 grey;
    private final double pxPerPt;
    private final LetterReader reader;
    private final WellFormed wellFormed;

    /**
     * @param grey rows top to bottom, 0 is black; used up by reading
     * @param words whether a text is one that drawings have: a reference, a designation
     */
    public ScanReader(GrayU8 grey, double pxPerPt, LetterReader reader, Predicate<String> words) {
        this.wellFormed = new WellFormed(words);
        this.grey = grey;
        this.pxPerPt = pxPerPt;
        this.reader = reader;
    }

    /**
     * Reads the page. The raster's content is lost.
     *
     * @throws Unreadable where the image is no drawing
     */
    public Upturned read() throws Unreadable {
        Bits ink = Ink.of(grey);
        Upright registered = Upright.of(Tilt.of(ink), grey.width, grey.height);
        Thickness thickness = Thickness.of(Blobs.of(ink), LARGE_MM * pxPerPt / MM_PER_PT);
        Dropouts.fill(ink, thickness.thinPx());
        List<Blob> blobs = new ArrayList<>(Blobs.of(ink));
        if (blobs.size() > MOST_BLOBS) {
            throw new Unreadable("its image is noise or a photograph, no drawing");
        }
        if (Bubbles.part(ink, blobs, pxPerPt / MM_PER_PT)) {
            blobs.clear();
            blobs.addAll(Blobs.of(ink));
        }
        blobs.removeIf(b -> b.longer() < SPECK * thickness.thinPx());
        List<Solids.Found> solid = new Solids(ink, registered, thickness).find();
        Set<Blob> dashes = Dashes.of(blobs, thickness, ink);
        List<Blob> open = blobs.stream()
                .filter(b -> !dashes.contains(b) && solid.stream().noneMatch(s -> s.isAllOf(b)))
                .toList();
        ScanLettering lettering = new ScanLettering(
                ink,
                grey,
                registered,
                reader,
                wellFormed,
                new TextRows(open, ink, pxPerPt / MM_PER_PT, thickness).find());
        int turn = lettering.pageTurn();
        Upright page = registered.turned(turn).onPage(grey.width, grey.height);
        List<ReadRow> rows = lettering.read(page, turn);
        List<Blob> lineWork = without(blobs, rows);
        boolean lying = turn % 2 == 0;
        double width = (lying ? grey.width : grey.height) / pxPerPt;
        double height = (lying ? grey.height : grey.width) / pxPerPt;
        Drawn drawn = drawn(ink, lineWork, page, thickness, rows);
        Marks marks =
                new Marks(width, height, drawn.strokes, drawn.fills, new ScanGlyphs(page, pxPerPt).of(rows), List.of());
        return new Upturned(marks, toDisplay(page));
    }

    private static List<Blob> without(List<Blob> blobs, List<ReadRow> rows) {
        Set<Blob> text = Collections.newSetFromMap(new IdentityHashMap<>());
        rows.forEach(r -> text.addAll(r.row().blobs()));
        return blobs.stream().filter(b -> !text.contains(b)).toList();
    }

    private record Drawn(List<Stroke> strokes, List<Fill> fills) {}

    private Drawn drawn(Bits ink, List<Blob> lineWork, Upright page, Thickness thickness, List<ReadRow> rows) {
        Bits lines = new Bits(grey.width, grey.height);
        for (Blob b : lineWork) {
            int[] r = b.runs();
            for (int i = 0; i < r.length; i += 3) {
                lines.fill(r[i], r[i + 1], r[i + 2], true);
            }
        }
        List<Solids.Found> solids = new Solids(lines, page, thickness).find();
        Set<Blob> dashes = Dashes.ofOneLength(lineWork, thickness);
        TextPlaces text = new TextPlaces(rows, page);
        List<Blob> open = lineWork.stream()
                .filter(b -> solids.stream().noneMatch(s -> s.isAllOf(b)))
                .filter(b -> b.longer() > 1.6 * thickness.thickPx() || dashes.contains(b))
                .filter(b -> !headed(b, thickness) || !text.leadsOn(b))
                .toList();
        List<Solid> filled = solids.stream().map(Solids.Found::solid).toList();
        Vectors.Drawn drawn = new Vectors(ink, lines, page, pxPerPt).of(open, filled, grey, text);
        return new Drawn(
                drawn.strokes(), drawn.solids().stream().map(this::fill).toList());
    }

    private static boolean headed(Blob b, Thickness thickness) {
        return b.solid() < FILLED && b.shorter() > HEAD * thickness.thinPx();
    }

    private Fill fill(Solid s) {
        List<Point> outline = s.outline().stream()
                .map(p -> new Point(p[0] / pxPerPt, p[1] / pxPerPt))
                .toList();
        return new Fill(outline, s.dot(), false);
    }

    private Affine toDisplay(Upright page) {
        Affine b = page.back();
        return new Affine(b.a(), b.b(), b.c() / pxPerPt, b.d(), b.e(), b.f() / pxPerPt);
    }
}
