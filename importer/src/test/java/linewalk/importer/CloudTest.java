package linewalk.importer;

import static org.assertj.core.api.Assertions.assertThat;

import linewalk.drawing.SheetReading;
import org.junit.jupiter.api.Test;

/** The ring of bows around what a revision changed says nothing of the circuit, whichever way a program writes it. */
class CloudTest {

    private static final double BOW = 20;

    /** 1V1 and 1V2 one over the other, joined by a line that a cusp of the cloud around 1V1 lies on. */
    private static Drawn parts() {
        return Drawn.page()
                .rect(380, 300, 420, 340)
                .text(340, 323, "1V1")
                .rect(380, 500, 420, 540)
                .text(340, 523, "1V2")
                .line(400, 340, 400, 500);
    }

    /** Corners of a ring around 1V1, a bow apart. */
    private static double[] ring() {
        double[] xy = new double[2 * 26];
        int n = 0;
        for (int i = 0; i < 8; i++) {
            xy[n++] = 320 + BOW * i;
            xy[n++] = 280;
        }
        for (int i = 0; i < 5; i++) {
            xy[n++] = 480;
            xy[n++] = 280 + BOW * i;
        }
        for (int i = 0; i < 8; i++) {
            xy[n++] = 480 - BOW * i;
            xy[n++] = 380;
        }
        for (int i = 0; i < 5; i++) {
            xy[n++] = 320;
            xy[n++] = 380 - BOW * i;
        }
        return xy;
    }

    private static void isNotSeen(Drawn d) {
        SheetReading r = d.read();
        assertThat(Said.lines(r)).containsExactly("1V1 - 1V2");
        assertThat(r.lines().get(0).confidence()).isGreaterThan(0.9);
        assertThat(Said.tags(r)).containsExactly("1V1", "1V2");
    }

    @Test
    void asSingleArcs() {
        Drawn d = parts();
        double[] p = ring();
        for (int i = 0; i < p.length; i += 2) {
            int to = (i + 2) % p.length;
            d.arc(p[i], p[i + 1], p[to], p[to + 1]);
        }

        isNotSeen(d);
    }

    @Test
    void asOneOutline() {
        double[] p = ring();
        int steps = 6;
        double[] all = new double[p.length * steps];
        for (int i = 0; i < p.length; i += 2) {
            int to = (i + 2) % p.length;
            double cx = (p[i] + p[to]) / 2;
            double cy = (p[i + 1] + p[to + 1]) / 2;
            for (int k = 0; k < steps; k++) {
                double a = Math.PI * k / steps;
                double dx = p[i] - cx;
                double dy = p[i + 1] - cy;
                all[(i / 2 * steps + k) * 2] = cx + dx * Math.cos(a) - dy * Math.sin(a);
                all[(i / 2 * steps + k) * 2 + 1] = cy + dx * Math.sin(a) + dy * Math.cos(a);
            }
        }

        isNotSeen(parts().polygon(all));
    }
}
