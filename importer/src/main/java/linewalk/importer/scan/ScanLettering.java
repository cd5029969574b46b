package linewalk.importer.scan;

import boofcv.struct.image.GrayU8;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import linewalk.importer.ocr.LetterReader;

/**
 * Reads the rows of text of one scan. First some long rows in all turns: they tell how the page lies. Then every row as
 * it should stand, rows across the reading direction both ways; what does not read well is line work.
 */
final class ScanLettering {

    private static final int SAMPLES = 14;
    private static final double WELL = 0.8;
    private static final double READ = 0.5;

    /** A letter alone has no neighbours to bear it out. */
    private static final double ALONE = 0.55;

    /** Of a size that no row has. */
    private static final double SURE = 0.85;

    /** Share of its box that a stroke fills. */
    private static final double BAR = 0.8;

    private final Bits ink;
    private final GrayU8 grey;
    private final Upright registered;
    private final LetterReader reader;
    private final List<TextRow> rows;

    ScanLettering(Bits ink, GrayU8 grey, Upright registered, LetterReader reader, List<TextRow> rows) {
        this.ink = ink;
        this.grey = grey;
        this.registered = registered;
        this.reader = reader;
        this.rows = rows;
    }

    /** Quarter turns, clockwise, that bring the page upright. */
    int pageTurn() {
        int letters = 0;
        for (TextRow r : rows) {
            letters += r.blobs().size() < 2
                    ? 0
                    : r.along() ? r.blobs().size() : -r.blobs().size();
        }
        boolean along = letters >= 0;
        List<TextRow> samples = rows.stream()
                .filter(r -> r.along() == along && r.blobs().size() >= 3)
                .sorted(Comparator.comparingInt(
                        (TextRow r) -> -Math.min(12, r.blobs().size())))
                .limit(SAMPLES)
                .toList();
        int one = along ? 0 : 1;
        return sum(samples, one) >= sum(samples, one + 2) ? one : one + 2;
    }

    private double sum(List<TextRow> samples, int turn) {
        return samples.stream()
                .map(r -> ReadRow.of(r, grey, registered, turn, reader))
                .mapToDouble(r -> r.likelihood() * r.words())
                .sum();
    }

    /** What is text, on a page brought upright by these turns. */
    List<ReadRow> read(Upright page, int pageTurn) {
        List<ReadRow> read = new ArrayList<>();
        List<TextRow> alone = new ArrayList<>();
        for (TextRow r : rows) {
            if (r.blobs().size() == 1) {
                alone.add(r);
            } else {
                ReadRow best = best(r, page, pageTurn);
                if (isText(best)) {
                    read.add(best);
                }
            }
        }
        List<Double> sizes = read.stream().map(r -> r.row().capPx()).sorted().toList();
        for (TextRow r : alone) {
            boolean usual = usualSize(r, sizes);
            if (r.blobs().get(0).solid() <= BAR && (usual || Ring.around(r.blobs().get(0), ink))) {
                ReadRow one = ReadRow.of(r, grey, page, 0, reader);
                if (isLetter(one) && (usual || one.likelihood() > SURE)) {
                    read.add(one);
                }
            }
        }
        return read;
    }

    private ReadRow best(TextRow r, Upright page, int pageTurn) {
        boolean level = r.along() == (pageTurn % 2 == 0);
        ReadRow first = ReadRow.of(r, grey, page, level ? 0 : 1, reader);
        if (level || first.likelihood() > WELL) {
            return first;
        }
        ReadRow other = ReadRow.of(r, grey, page, 3, reader);
        return other.likelihood() > first.likelihood() + 0.1 ? other : first;
    }

    private static boolean isText(ReadRow r) {
        return r.words() > 0
                && r.likelihood() > READ
                && r.words() * 2 >= r.letters().size();
    }

    private boolean usualSize(TextRow r, List<Double> sizes) {
        double size = Math.max(r.y1() - r.y0(), r.x1() - r.x0());
        return sizes.isEmpty() || sizes.stream().anyMatch(s -> Math.abs(s - size) < 0.15 * s + 1);
    }

    private static boolean isLetter(ReadRow r) {
        Blob b = r.row().blobs().get(0);
        boolean circle = r.text().matches("[oO0Qe@]") && Math.abs(b.width() - b.height()) <= 0.1 * b.longer() + 1;
        // a line's end and a corner, which stand alone more often than these letters
        boolean plain = r.text().matches("[rIl]");
        return r.letters().size() == 1 && r.words() == 1 && r.likelihood() > ALONE && !circle && !plain;
    }
}
