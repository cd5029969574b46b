package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.stream.Collectors;
import linewalk.drawing.Box;
import linewalk.drawing.Component;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Kind;
import linewalk.linker.Excerpt;
import org.junit.jupiter.api.Test;

/** Parts at the ends of a circuit's lines are seen whole on its cuttings though they do not belong to it. */
class StayBesideTest {

    @Test
    void aPartAtALinesEndIsSeenWhole() {
        Cards cards = new Cards();
        Component relief = cards.bench.part(1, "0V5", Kind.RELIEF_VALVE, 400, 200, "P@400,225");
        cards.join("0P1:P", relief, "P");
        DrawingSet set = cards.job().set();
        Set<Component> others =
                set.components().stream().filter(c -> !c.tag().equals("0V5")).collect(Collectors.toSet());
        Excerpt circuit = new Excerpt("circuit", others, Set.copyOf(set.lines()));
        Stay stay = Stay.of(circuit, set).stream()
                .filter(s -> s.page().equals(relief.page()))
                .findFirst()
                .orElseThrow();
        assertThat(stay.parts()).noneMatch(t -> t.component().equals(relief));
        Box whole = relief.box();
        assertThat(stay.keys(java.util.List.of(), 1)).anyMatch(k -> k.contains(whole));
    }
}
