package linewalk.importer.scan;

import java.util.List;

/** Specks of dirt in a row of text: marks no larger than a stop that stand above the line and over no letter. */
final class Dirt {

    /** In heights of a capital: no hyphen is so short and no apostrophe so small. */
    private static final double LARGEST = 0.25;

    /** How far a speck ends above the line; stops and commas end lower. */
    private static final double ABOVE = 0.3;

    private static final double FLAT = 1.3;

    /** Where the middle of a hyphen lies, in heights of a capital above the line. */
    private static final double LOWEST = 0.25;

    private static final double HIGHEST = 0.6;

    private Dirt() {}

    /** @param upright turned so that the row reads from left to right */
    static TextRow removed(TextRow row, Upright upright) {
        double cap = RowImage.cap(row, upright);
        double baseline = RowImage.baseline(row, upright);
        List<Blob> clean = row.blobs().stream()
                .filter(b -> !speck(b, row, upright, cap, baseline))
                .toList();
        boolean all = clean.isEmpty() || clean.size() == row.blobs().size();
        return all ? row : new TextRow(clean, row.along(), row.cell());
    }

    private static boolean speck(Blob b, TextRow row, Upright upright, double cap, double baseline) {
        double[] box = RowImage.box(b, upright);
        return Math.max(box[2] - box[0], box[3] - box[1]) < LARGEST * cap
                && box[3] < baseline - ABOVE * cap
                && !hyphen(box, cap, baseline)
                && row.blobs().stream().noneMatch(o -> o != b && over(box, RowImage.box(o, upright)));
    }

    /** Small print at a low resolution has hyphens as small as specks: level ones, at half the height of a capital. */
    private static boolean hyphen(double[] box, double cap, double baseline) {
        double height = (baseline - (box[1] + box[3]) / 2) / cap;
        return box[2] - box[0] > FLAT * (box[3] - box[1]) && height > LOWEST && height < HIGHEST;
    }

    /** The dot of an i, the upper one of a colon. */
    private static boolean over(double[] box, double[] other) {
        return Math.min(box[2], other[2]) - Math.max(box[0], other[0]) > 0.5 * (box[2] - box[0]);
    }
}
