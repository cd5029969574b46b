package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Ink to runs along the rows, and runs that touch, also at corners, to blobs. Costs memory for runs only. */
final class Blobs {

    private int[] rows = new int[1 << 12];
    private int[] from = new int[1 << 12];
    private int[] to = new int[1 << 12];
    private int[] parent = new int[1 << 12];
    private int count;

    private Blobs() {}

    static List<Blob> of(Bits bits) {
        Blobs b = new Blobs();
        b.connect(bits);
        return b.collect();
    }

    private void connect(Bits bits) {
        int above = 0;
        for (int y = 0; y < bits.height; y++) {
            int first = count;
            int up = above;
            for (int x = bits.nextInk(0, y); x < bits.width; ) {
                int end = bits.nextPaper(x, y);
                int run = add(y, x, end);
                while (up < first && to[up] < x) {
                    up++;
                }
                for (int u = up; u < first && from[u] <= end; u++) {
                    join(u, run);
                }
                x = bits.nextInk(end, y);
            }
            above = first;
        }
    }

    private int add(int y, int x0, int x1) {
        if (count == rows.length) {
            int more = count * 2;
            rows = Arrays.copyOf(rows, more);
            from = Arrays.copyOf(from, more);
            to = Arrays.copyOf(to, more);
            parent = Arrays.copyOf(parent, more);
        }
        rows[count] = y;
        from[count] = x0;
        to[count] = x1;
        parent[count] = count;
        return count++;
    }

    private int root(int i) {
        int at = i;
        while (parent[at] != at) {
            parent[at] = parent[parent[at]];
            at = parent[at];
        }
        return at;
    }

    private void join(int a, int b) {
        int ra = root(a);
        int rb = root(b);
        parent[Math.max(ra, rb)] = Math.min(ra, rb);
    }

    private List<Blob> collect() {
        int[] runs = new int[count];
        for (int i = 0; i < count; i++) {
            runs[root(i)]++;
        }
        int[][] out = new int[count][];
        int[] filled = new int[count];
        for (int i = 0; i < count; i++) {
            int r = root(i);
            if (out[r] == null) {
                out[r] = new int[3 * runs[r]];
            }
            int at = 3 * filled[r]++;
            out[r][at] = rows[i];
            out[r][at + 1] = from[i];
            out[r][at + 2] = to[i];
        }
        List<Blob> blobs = new ArrayList<>();
        for (int[] own : out) {
            if (own != null) {
                blobs.add(blob(own));
            }
        }
        return blobs;
    }

    private static Blob blob(int[] runs) {
        int x0 = Integer.MAX_VALUE;
        int x1 = 0;
        int ink = 0;
        for (int i = 0; i < runs.length; i += 3) {
            x0 = Math.min(x0, runs[i + 1]);
            x1 = Math.max(x1, runs[i + 2]);
            ink += runs[i + 2] - runs[i + 1];
        }
        return new Blob(x0, runs[0], x1, runs[runs.length - 3] + 1, ink, runs);
    }
}
