package linewalk.importer.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linewalk.importer.lettering.Cell;
import org.junit.jupiter.api.Test;

/** A lone sign over a row of letters, with a line between them. */
class HalvesTest {

    private final Bits ink = new Bits(200, 200);

    private Blob sign(int x0, int y0, int x1, int y1) {
        Bits own = new Bits(200, 200);
        for (int y = y0; y < y1; y++) {
            own.fill(y, x0, x1, true);
            ink.fill(y, x0, x1, true);
        }
        return Blobs.of(own).get(0);
    }

    private TextRow row() {
        return new TextRow(List.of(sign(80, 100, 95, 130), sign(100, 100, 115, 130)), true, Cell.NONE);
    }

    @Test
    void belongsToItWhereALineDividesThem() {
        TextRow row = row();
        Blob one = sign(95, 60, 100, 90);
        sign(60, 94, 140, 96);
        assertThat(Halves.apart(one, row, ink)).isTrue();
    }

    @Test
    void mayBeAnythingWithoutALineBetween() {
        TextRow row = row();
        assertThat(Halves.apart(sign(95, 60, 100, 90), row, ink)).isFalse();
    }

    @Test
    void mayBeAnythingFarAside() {
        TextRow row = row();
        Blob one = sign(140, 60, 145, 90);
        sign(60, 94, 150, 96);
        assertThat(Halves.apart(one, row, ink)).isFalse();
    }
}
