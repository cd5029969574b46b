package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import org.junit.jupiter.api.Test;

/** Every kind of part can stand on a path. */
class EveryKindTest {

    @Test
    void isDrawnWithItsDesignation() {
        Bench bench = new Bench();
        Kind[] kinds = Kind.values();
        for (int i = 0; i < kinds.length; i++) {
            Component c = bench.part(1, "K" + i, kinds[i], 50, 300, "A@50,275", "B@50,325");
            bench.through(c, i == 0 ? null : "A", i == kinds.length - 1 ? null : "B", null);
            if (i < kinds.length - 1) {
                bench.along(1, null, Bench.at(50, 325), Bench.at(50, 275));
            }
        }
        String text = Prints.text(Prints.print(bench.job(), "every-kind"));
        for (int i = 0; i < kinds.length; i++) {
            assertThat(text).contains("K" + i + " ");
        }
    }
}
