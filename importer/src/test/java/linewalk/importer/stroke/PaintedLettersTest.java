package linewalk.importer.stroke;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Letters as painted outlines, beside line work that is painted too. */
class PaintedLettersTest {

    private static Written page() {
        return new Written()
                .painted(100, 900, 10, "PUMPS AND VALVES IN THE ENGINE ROOM")
                .painted(100, 940, 10, "RETURN LINE TO THE TANK ON DECK 4");
    }

    private static Written bar(Written page, double x0, double y0, double x1, double y1) {
        return page.fill(x0, y0, x1, y0, x1, y1, x0, y1);
    }

    @Test
    void barsThatStandAloneAreDashes() {
        Written page = page();
        for (int i = 0; i < 4; i++) {
            bar(page, 700, 300 + 14 * i, 701.5, 310 + 14 * i);
        }

        assertThat(page.read().fills()).hasSize(4);
    }

    @Test
    void rowsOfBarsAreDashes() {
        Written page = page();
        for (int i = 0; i < 6; i++) {
            bar(page, 600 + 14 * i, 300, 610 + 14 * i, 301.5);
            bar(page, 600 + 5 * i, 400, 601.5 + 5 * i, 410);
        }

        assertThat(page.read().fills()).hasSize(12);
    }

    private static void spring(Written page, double x, double y) {
        double[] xy = {0, -7, 6, -7, 6, -6, 1.5, -1, 6, -1, 6, 0, 0, 0, 0, -1, 4.5, -6, 0, -6};
        for (int i = 0; i < xy.length; i += 2) {
            xy[i] += x;
            xy[i + 1] += y;
        }
        page.fill(xy);
    }

    /** A spring painted beside a designation looks like a z, but no word has one. */
    @Test
    void aFigureThatOftenStandsBehindATextIsNoLetterOfIt() {
        Written page = page();
        for (int i = 0; i < 3; i++) {
            spring(page.painted(400, 300 + 100 * i, 10, "1V4"), 437, 300 + 100 * i);
        }

        assertThat(Written.texts(page.read()))
                .filteredOn(t -> t.startsWith("1V4"))
                .containsExactly("1V4", "1V4", "1V4");
        assertThat(page.read().fills()).hasSize(3);
    }
}
