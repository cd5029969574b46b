package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import linewalk.importer.lettering.Cell;

/**
 * The ink of one letter in a row, seen along the row; upright pixels.
 *
 * @param slant how far its top leans over its foot to the right, as a share of its height
 */
record Sign(double x0, double y0, double x1, double y1, double slant, boolean bar) {

    /** A leaning bar keeps some width. */
    private static final double MOST_NARROWER = 0.35;

    /** Blobs one above the other, such as an i and its dot, are one letter. */
    static List<Sign> of(TextRow row, Upright upright) {
        List<Blob> sorted = new ArrayList<>(row.blobs());
        sorted.sort(Comparator.comparingDouble(b -> RowImage.box(b, upright)[0]));
        List<Sign> cells = new ArrayList<>();
        for (Blob b : sorted) {
            Sign c = of(b, upright);
            Sign last = cells.isEmpty() ? null : cells.get(cells.size() - 1);
            double overlap = last == null ? 0 : Math.min(last.x1, c.x1) - Math.max(last.x0, c.x0);
            if (last != null && overlap > 0.5 * Math.min(last.x1 - last.x0, c.x1 - c.x0)) {
                cells.set(cells.size() - 1, last.with(c));
            } else {
                cells.add(c);
            }
        }
        return cells;
    }

    /** As it stands where letters that lean are stood upright about a height. */
    Sign straightened(double lean, double middle) {
        double aside = lean * ((y0 + y1) / 2 - middle);
        double narrower = Math.min(lean * height() / 2, MOST_NARROWER * (x1 - x0));
        return new Sign(x0 + aside + narrower, y0, x1 + aside - narrower, y1, slant - lean, bar);
    }

    private static Sign of(Blob b, Upright upright) {
        double[] box = RowImage.box(b, upright);
        double[] top = middle(b, upright, box[1], box[1] + 0.25 * (box[3] - box[1]));
        double[] foot = middle(b, upright, box[3] - 0.25 * (box[3] - box[1]), box[3]);
        double height = box[3] - box[1];
        double slant = top[1] == 0 || foot[1] == 0 ? 0 : (top[0] - foot[0]) / (0.75 * height);
        // how much ink a row of pixels holds there: hardly more than a pen's width in a stroke
        boolean bar =
                top[1] < 0.35 * height && foot[1] < 0.35 * height && b.ink() < 1.6 * height * Math.max(top[1], foot[1]);
        return new Sign(box[0], box[1], box[2], box[3], slant, bar);
    }

    /** Mean place along the row of the ink between two heights, and how wide it is there. */
    private static double[] middle(Blob b, Upright upright, double from, double to) {
        int[] r = b.runs();
        double sum = 0;
        double n = 0;
        for (int i = 0; i < r.length; i += 3) {
            for (int x = r[i + 1]; x < r[i + 2]; x++) {
                double y = upright.y(x + 0.5, r[i] + 0.5);
                if (y >= from && y <= to) {
                    sum += upright.x(x + 0.5, r[i] + 0.5);
                    n++;
                }
            }
        }
        return new double[] {n == 0 ? 0 : sum / n, n / Math.max(1, to - from)};
    }

    private Sign with(Sign o) {
        return new Sign(
                Math.min(x0, o.x0), Math.min(y0, o.y0), Math.max(x1, o.x1), Math.max(y1, o.y1), slant, bar && o.bar);
    }

    Cell.Span span() {
        return new Cell.Span(x0, x1);
    }

    double height() {
        return y1 - y0;
    }
}
