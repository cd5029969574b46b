package linewalk.importer.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The thin box around a part that lines run through is of one pen, whatever its sides seem to be. */
class EnvelopesTest {

    private static final List<Stretch> BOX = List.of(
            new Stretch(100, 100, 300, 100, 3),
            new Stretch(301, 100, 301, 240, 2),
            new Stretch(300, 241, 100, 241, 4),
            new Stretch(100, 241, 100, 101, 3));

    @Test
    void itsSidesLeadToItsCorners() {
        List<Stretch> out = Envelopes.whole(BOX, 1000);

        assertThat(out).hasSize(4).allMatch(s -> s.widthPx() == out.get(0).widthPx());
        for (int i = 0; i < 4; i++) {
            Stretch side = out.get(i);
            Stretch next = out.get((i + 1) % 4);
            assertThat(Math.hypot(next.x0() - side.x1(), next.y0() - side.y1())).isZero();
        }
    }

    @Test
    void whatThinningLeftAtACornerGoes() {
        List<Stretch> drawn = new ArrayList<>(BOX);
        drawn.add(new Stretch(299, 100, 301, 101, 3));
        drawn.add(new Stretch(200, 100, 200, 60, 3));

        assertThat(Envelopes.whole(drawn, 1000)).hasSize(5);
    }

    @Test
    void linesThatMeetAgainKeepTheirPens() {
        assertThat(Envelopes.whole(BOX, 150)).isEqualTo(BOX);
    }
}
