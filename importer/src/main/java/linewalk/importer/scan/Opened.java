package linewalk.importer.scan;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/** A cutting of the ink from which all is gone that a disc does not fit into. */
final class Opened {

    final int x0;
    final int y0;
    final int width;
    final int height;
    private final boolean[] open;

    /** @param box x0, y0, x1, y1 in pixels; {@code radius} of the disc */
    Opened(Bits ink, int[] box, double radius) {
        x0 = box[0];
        y0 = box[1];
        width = box[2] - box[0];
        height = box[3] - box[1];
        int[] disc = disc(radius);
        open = new boolean[width * height];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                if (fits(ink, disc, x0 + x, y0 + y)) {
                    paint(disc, x, y);
                }
            }
        }
    }

    /** How far it reaches to either side, row by row from its top. */
    private static int[] disc(double radius) {
        int r = (int) radius;
        int[] disc = new int[2 * r + 1];
        for (int dy = -r; dy <= r; dy++) {
            disc[dy + r] = (int) Math.sqrt(radius * radius - dy * dy);
        }
        return disc;
    }

    private static boolean fits(Bits ink, int[] disc, int x, int y) {
        int top = y - disc.length / 2;
        boolean fits = ink.get(x, y);
        for (int i = 0; i < disc.length && fits; i++) {
            fits = ink.isFull(top + i, x - disc[i], x + disc[i] + 1);
        }
        return fits;
    }

    private void paint(int[] disc, int x, int y) {
        int top = y - disc.length / 2;
        for (int i = Math.max(0, -top); i < disc.length && top + i < height; i++) {
            int row = (top + i) * width;
            Arrays.fill(open, row + Math.max(0, x - disc[i]), row + Math.min(width, x + disc[i] + 1), true);
        }
    }

    /** What hangs together with the place; null where nothing is left there. */
    boolean[] around(int x, int y) {
        int start = nearest(x - x0, y - y0);
        if (start < 0) {
            return null;
        }
        boolean[] region = new boolean[open.length];
        Deque<Integer> todo = new ArrayDeque<>(List.of(start));
        region[start] = true;
        while (!todo.isEmpty()) {
            int at = todo.pop();
            int px = at % width;
            for (int next : new int[] {at - 1, at + 1, at - width, at + width}) {
                boolean inside = next >= 0 && next < open.length && Math.abs(next % width - px) <= 1;
                if (inside && open[next] && !region[next]) {
                    region[next] = true;
                    todo.push(next);
                }
            }
        }
        return region;
    }

    private int nearest(int x, int y) {
        int best = -1;
        int least = Integer.MAX_VALUE;
        for (int i = 0; i < open.length; i++) {
            int dx = i % width - x;
            int dy = i / width - y;
            if (open[i] && dx * dx + dy * dy < least) {
                least = dx * dx + dy * dy;
                best = i;
            }
        }
        return best;
    }

    boolean touchesRim(boolean[] region) {
        for (int i = 0; i < region.length; i++) {
            int x = i % width;
            int y = i / width;
            if (region[i] && (x == 0 || y == 0 || x == width - 1 || y == height - 1)) {
                return true;
            }
        }
        return false;
    }

    static int count(boolean[] region) {
        int n = 0;
        for (boolean b : region) {
            n += b ? 1 : 0;
        }
        return n;
    }

    int[] boxOf(boolean[] region) {
        int[] box = {Integer.MAX_VALUE, Integer.MAX_VALUE, 0, 0};
        for (int i = 0; i < region.length; i++) {
            if (region[i]) {
                box[0] = Math.min(box[0], x0 + i % width);
                box[1] = Math.min(box[1], y0 + i / width);
                box[2] = Math.max(box[2], x0 + i % width + 1);
                box[3] = Math.max(box[3], y0 + i / width + 1);
            }
        }
        return box;
    }
}
