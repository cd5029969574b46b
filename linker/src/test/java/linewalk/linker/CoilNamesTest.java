package linewalk.linker;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import linewalk.drawing.Component;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Position;
import org.junit.jupiter.api.Test;

/** Solenoids of a scan, whose names are read as other ones or not at all, and the cycle chart that knows them. */
class CoilNamesTest {

    private static Drawn valve(String origin, String one, String other) {
        return Drawn.of("""
                        sheet 1
                        ref a B4 > 2/C1 L-7 ORIGIN
                        part V4 directional-valve B2 P T A B
                        pos V4 rest
                        pos V4 ONE P-A B-T
                        pos V4 OTHER P-B A-T
                        line V4:P a
                        """.replace("ORIGIN", origin).replace("ONE", one).replace("OTHER", other));
    }

    private static List<String> names(DrawingSet set) {
        return set.components().stream()
                .filter(c -> c.tag().equals("V4"))
                .map(Component::positions)
                .flatMap(List::stream)
                .filter(p -> !p.isRest())
                .map(Position::by)
                .flatMap(List::stream)
                .toList();
    }

    private static DrawingSet linked(Drawn drawn) {
        return drawn.step("up", "Y4A").step("down", "Y4B").link();
    }

    @Test
    void oneThatLooksLikeAColumnOfTheChart() {
        DrawingSet set = linked(valve("ocr", "Y4A", "Y48"));
        assertThat(names(set)).containsExactly("Y4A", "Y4B");
        assertThat(set.findings()).anyMatch(f -> f.message().contains("was read as Y48; it is taken for Y4B"));
    }

    @Test
    void oneThatWasNotReadBesideItsFellow() {
        DrawingSet set = linked(valve("ocr", Position.UNNAMED, "Y48"));
        assertThat(names(set)).containsExactly("Y4A", "Y4B");
        assertThat(set.findings()).anyMatch(f -> f.message().contains("has no name that was read"));
    }

    @Test
    void textOfTheDrawingItselfStands() {
        assertThat(names(linked(valve("", "Y4A", "Y48")))).containsExactly("Y4A", "Y48");
    }

    @Test
    void twoColumnsThatItMayBeLeaveItOpen() {
        assertThat(names(valve("ocr", "Y1", "Y48")
                        .step("up", "Y1")
                        .step("down", "Y4B")
                        .step("stop", "Y4S")
                        .link()))
                .containsExactly("Y1", "Y48");
    }
}
