package linewalk.linker;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import linewalk.drawing.CycleChart;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.SetSettings;
import linewalk.drawing.SheetReading;
import org.junit.jupiter.api.Test;

/** A thousand sheets with twenty references each: work must grow with the set, not with its square. */
class LargeSetTest {

    private static final int SHEETS = 1000;
    private static final int LINES = 10;

    /** Ten lines run through all sheets; each passes a hose on each. */
    private static Drawn set() {
        StringBuilder text = new StringBuilder();
        for (int s = 1; s <= SHEETS; s++) {
            text.append("sheet ").append(s).append('\n');
            if (s == 1) {
                text.append("part P1 pump D4 P\n");
            }
            if (s == SHEETS) {
                text.append("part T1 tank D4 R\n");
            }
            for (int i = 0; i < LINES; i++) {
                line(text, s, i);
            }
        }
        return Drawn.of(text.toString());
    }

    private static void line(StringBuilder text, int s, int i) {
        String zone = "ABCD".charAt(i % 4) + Integer.toString(1 + i / 4);
        int before = s == 1 ? SHEETS : s - 1;
        int after = s == SHEETS ? 1 : s + 1;
        text.append("ref i%d %s > %d/%s L-%d in%n".formatted(i, zone, before, zone, i));
        text.append("ref o%d %s+10,0 > %d/%s L-%d out%n".formatted(i, zone, after, zone, i));
        text.append("part H%d.%d hose %s A B%n".formatted(s, i, zone));
        boolean pump = s == 1 && i == 0;
        boolean tank = s == SHEETS && i == 0;
        text.append("line i%d H%d.%d:A%s%n".formatted(i, s, i, pump ? " P1:P" : ""));
        text.append("line H%d.%d:B o%d%s%n".formatted(s, i, i, tank ? " T1:R" : ""));
    }

    /** A part on a stub can't be passed and left again without using its line twice; finding that out must end. */
    @Test
    void aQuestionWithoutAnswerEndsToo() {
        StringBuilder text = new StringBuilder("sheet 1\npart P1 pump A1 P\npart T1 tank A2 R\npart V9 hose A3 A B\n");
        for (int i = 0; i < 400; i++) {
            text.append("part X%d hose B1 A B%npart Y%d hose B2 A B%n".formatted(i, i));
        }
        text.append("line P1:P X0:A Y0:A V9:A\n");
        for (int i = 1; i < 400; i++) {
            text.append("line X%d:B Y%d:B X%d:A Y%d:A%n".formatted(i - 1, i - 1, i, i));
        }
        text.append("line X399:B Y399:B T1:R\nline V9:B open@C1\n");
        long start = System.nanoTime();
        assertThat(Drawn.of(text.toString()).trace(Drawn.from("P1", "V9"))).isInstanceOf(Answer.Stopped.class);
        Duration took = Duration.ofNanos(System.nanoTime() - start);
        System.out.printf("no answer found in %d ms%n", took.toMillis());
        assertThat(took).isLessThan(Duration.ofSeconds(20));
    }

    @Test
    void linkedAndTracedInSeconds() {
        List<SheetReading> readings = set().readings();
        SetSettings settings = new SetSettings(List.of("set.pdf"), null, null);
        long start = System.nanoTime();
        DrawingSet set = Linker.link(readings, List.of(), settings, List.of(), CycleChart.NONE);
        Duration linking = Duration.ofNanos(System.nanoTime() - start);
        assertThat(set.references())
                .hasSize(2 * SHEETS * LINES)
                .allMatch(r -> r.mates().size() == 1);
        Tracer tracer = new Tracer(set, CycleChart.NONE);
        start = System.nanoTime();
        assertThat(tracer.trace(Drawn.from("P1"))).isInstanceOf(Answer.Found.class);
        Duration tracing = Duration.ofNanos(System.nanoTime() - start);
        System.out.printf(
                "%d sheets: linked in %d ms, traced in %d ms%n", SHEETS, linking.toMillis(), tracing.toMillis());
        assertThat(linking).isLessThan(Duration.ofSeconds(20));
        assertThat(tracing).isLessThan(Duration.ofSeconds(20));
    }
}
