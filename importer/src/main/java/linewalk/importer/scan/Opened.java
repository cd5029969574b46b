package linewalk.importer.scan;

import java.util.ArrayDeque;
import java.util.ArrayList;
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
        List<int[]> disc = new ArrayList<>();
        int r = (int) Math.ceil(radius);
        for (int dy = -r; dy <= r; dy++) {
            for (int dx = -r; dx <= r; dx++) {
                if (dx * dx + dy * dy <= radius * radius) {
                    disc.add(new int[] {dx, dy});
                }
            }
        }
        open = new boolean[width * height];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                if (fits(ink, disc, x0 + x, y0 + y)) {
                    paint(disc, x, y);
                }
            }
        }
    }

    private static boolean fits(Bits ink, List<int[]> disc, int x, int y) {
        if (!ink.get(x, y)) {
            return false;
        }
        for (int[] d : disc) {
            if (!ink.get(x + d[0], y + d[1])) {
                return false;
            }
        }
        return true;
    }

    private void paint(List<int[]> disc, int x, int y) {
        for (int[] d : disc) {
            int px = x + d[0];
            int py = y + d[1];
            if (px >= 0 && py >= 0 && px < width && py < height) {
                open[py * width + px] = true;
            }
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
        double least = Double.MAX_VALUE;
        for (int i = 0; i < open.length; i++) {
            double d = Math.hypot(i % width - x, i / width - y);
            if (open[i] && d < least) {
                least = d;
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
