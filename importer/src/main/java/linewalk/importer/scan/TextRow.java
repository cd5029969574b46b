package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import linewalk.importer.lettering.Cell;

/**
 * Blobs that may be the letters of one line of text.
 *
 * @param along letters follow one another along the rows of the scan; else along its columns
 * @param cell the room of each letter
 * @param x0 of the box around them, in pixels; x1 and y1 are just outside
 */
record TextRow(List<Blob> blobs, boolean along, Cell cell, int x0, int y0, int x1, int y1) {

    /** Part of the height by which two lines of one text may differ; from one line to the next in heights. */
    private static final double SAME_HEIGHT = 0.3;

    private static final double SPACING = 3;

    TextRow(List<Blob> blobs, boolean along, Cell cell) {
        this(
                blobs,
                along,
                cell,
                blobs.stream().mapToInt(Blob::x0).min().orElseThrow(),
                blobs.stream().mapToInt(Blob::y0).min().orElseThrow(),
                blobs.stream().mapToInt(Blob::x1).max().orElseThrow(),
                blobs.stream().mapToInt(Blob::y1).max().orElseThrow());
    }

    /** Height of its capitals and figures: that of most of its larger letters. */
    double capPx() {
        double[] sizes = blobs.stream()
                .mapToDouble(b -> along ? b.height() : b.width())
                .sorted()
                .toArray();
        return sizes[(int) (sizes.length * 0.7)];
    }

    /** The other is the line of text above or below, printed as high as this one. */
    boolean besideLine(TextRow other) {
        double cap = capPx();
        double apart = along ? middle(y0, y1, other.y0, other.y1) : middle(x0, x1, other.x0, other.x1);
        double aside = along ? middle(x0, x1, other.x0, other.x1) : middle(y0, y1, other.y0, other.y1);
        int length = along ? Math.max(x1 - x0, other.x1 - other.x0) : Math.max(y1 - y0, other.y1 - other.y0);
        return along == other.along
                && Math.abs(cap - other.capPx()) < SAME_HEIGHT * cap
                && apart > cap
                && apart < SPACING * cap
                && aside < length / 2.0;
    }

    private static double middle(int a0, int a1, int b0, int b1) {
        return Math.abs(a0 + a1 - b0 - b1) / 2.0;
    }

    /** White between it and a blob. */
    double distance(Blob b) {
        double dx = Math.max(0, Math.max(b.x0() - x1, x0 - b.x1()));
        double dy = Math.max(0, Math.max(b.y0() - y1, y0 - b.y1()));
        return Math.hypot(dx, dy);
    }

    Blob first(Predicate<Blob> of) {
        return blobs.stream()
                .filter(of)
                .min(Comparator.comparingInt(b -> along ? b.x0() : b.y0()))
                .orElseThrow();
    }

    Blob last(Predicate<Blob> of) {
        return blobs.stream()
                .filter(of)
                .max(Comparator.comparingInt(b -> along ? b.x1() : b.y1()))
                .orElseThrow();
    }

    TextRow with(List<Blob> more) {
        List<Blob> all = new ArrayList<>(blobs);
        all.addAll(more);
        return new TextRow(all, along, cell);
    }
}
