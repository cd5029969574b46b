package linewalk.linker.step;

import java.util.Arrays;

/**
 * Oil under pressure spreading from its sources, the greater pressure first. Ranks: a source 3, a pump that draws from
 * a line under pressure 6; one less behind a reducing valve, one more behind an intensifier; 0 is not fed.
 */
final class Flood {

    private static final int LEVEL = 3;
    private static final int MOST = 2 * LEVEL + 1;

    private final Links links;
    private final boolean[] outlet;
    /** Volumes on the way to tank into which it spills. */
    final boolean[] spilled;

    final int[] rank;
    private final int[][] waiting = new int[MOST + 1][16];
    private final int[] count = new int[MOST + 1];
    private final int without;

    /** @param outlet volumes that lead to tank: oil spills into them and stands under no pressure there */
    Flood(Links links, boolean[] outlet, boolean overThrottles) {
        this.links = links;
        this.outlet = outlet;
        this.without = overThrottles ? 0 : Links.THROTTLE;
        this.rank = new int[outlet.length];
        this.spilled = new boolean[outlet.length];
    }

    void source(int volume, int level) {
        offer(volume, level * LEVEL);
    }

    private void offer(int volume, int r) {
        if (rank[volume] >= r) {
            return;
        }
        rank[volume] = r;
        if (count[r] == waiting[r].length) {
            waiting[r] = Arrays.copyOf(waiting[r], 2 * count[r]);
        }
        waiting[r][count[r]++] = volume;
    }

    Flood spread() {
        int r = MOST;
        while (r > 0) {
            if (count[r] == 0) {
                r--;
                continue;
            }
            int u = waiting[r][--count[r]];
            if (rank[u] == r && from(u, r)) {
                r = MOST;
            }
        }
        return this;
    }

    /** Whether the pressure rose somewhere. */
    private boolean from(int u, int r) {
        boolean rose = false;
        for (int k = links.firstOut[u]; k >= 0; k = links.nextOut[k]) {
            if (!links.has(k, Links.FEED) || links.has(k, without)) {
                continue;
            }
            int v = links.to[k];
            if (outlet[v]) {
                spilled[v] = true;
            } else {
                int next = behind(k, r);
                rose |= next > r;
                offer(v, next);
            }
        }
        return rose;
    }

    private int behind(int link, int r) {
        int base = (r + 1) / LEVEL * LEVEL;
        if (links.has(link, Links.REDUCE)) {
            return base - 1;
        }
        return links.has(link, Links.INTENSIFY) ? base + 1 : r;
    }

    boolean fed(int volume) {
        return rank[volume] > 0;
    }

    static PressureClass word(int rank) {
        return switch (rank % LEVEL) {
            case 2 -> PressureClass.REDUCED;
            case 1 -> PressureClass.INTENSIFIED;
            default -> PressureClass.SUPPLY;
        };
    }
}
