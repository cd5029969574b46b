package linewalk.linker;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.List;
import linewalk.drawing.CycleChart;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.SetSettings;
import linewalk.drawing.SheetReading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** A thousand sheets with twenty references each: work must grow with the set, not with its square. */
class LargeSetTest {

    private static final int SHEETS = 1000;
    private static final int LINES = 10;

    /** Four times the sheets cost sixteen times as much where work grows with the square, four times where with the set. */
    private static final int FEWER = 4;

    private static final double MOST = 10;

    /** Ten lines run through all sheets; each passes a hose on each. */
    private static Drawn set(int sheets) {
        StringBuilder text = new StringBuilder();
        for (int s = 1; s <= sheets; s++) {
            text.append("sheet ").append(s).append('\n');
            if (s == 1) {
                text.append("part P1 pump D4 P\n");
            }
            if (s == sheets) {
                text.append("part T1 tank D4 R\n");
            }
            for (int i = 0; i < LINES; i++) {
                line(text, s, i, sheets);
            }
        }
        return Drawn.of(text.toString());
    }

    private static void line(StringBuilder text, int s, int i, int sheets) {
        String zone = "ABCD".charAt(i % 4) + Integer.toString(1 + i / 4);
        int before = s == 1 ? sheets : s - 1;
        int after = s == sheets ? 1 : s + 1;
        text.append("ref i%d %s > %d/%s L-%d in%n".formatted(i, zone, before, zone, i));
        text.append("ref o%d %s+10,0 > %d/%s L-%d out%n".formatted(i, zone, after, zone, i));
        text.append("part H%d.%d hose %s A B%n".formatted(s, i, zone));
        boolean pump = s == 1 && i == 0;
        boolean tank = s == sheets && i == 0;
        text.append("line i%d H%d.%d:A%s%n".formatted(i, s, i, pump ? " P1:P" : ""));
        text.append("line H%d.%d:B o%d%s%n".formatted(s, i, i, tank ? " T1:R" : ""));
    }

    /** A part on a stub can't be passed and left again without using its line twice; finding that out must end. */
    @Test
    @Timeout(600)
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
        assertThat(Drawn.of(text.toString()).trace(Drawn.from("P1", "V9"))).isInstanceOf(Answer.Stopped.class);
    }

    /** CPU time of linking and of tracing, in nanoseconds. */
    private record Work(double linking, double tracing) {

        static Work of(int sheets) {
            List<SheetReading> readings = set(sheets).readings();
            SetSettings settings = new SetSettings(List.of("set.pdf"), null, null);
            ThreadMXBean thread = ManagementFactory.getThreadMXBean();
            long start = thread.getCurrentThreadCpuTime();
            DrawingSet set = Linker.link(readings, List.of(), settings, List.of(), CycleChart.NONE);
            long linked = thread.getCurrentThreadCpuTime();
            assertThat(set.references())
                    .hasSize(2 * sheets * LINES)
                    .allMatch(r -> r.mates().size() == 1);
            Tracer tracer = new Tracer(set, CycleChart.NONE);
            long asked = thread.getCurrentThreadCpuTime();
            assertThat(tracer.trace(Drawn.from("P1"))).isInstanceOf(Answer.Found.class);
            return new Work(linked - start, thread.getCurrentThreadCpuTime() - asked);
        }
    }

    @Test
    void workGrowsWithTheSet() {
        Work.of(SHEETS / FEWER); // until the program is compiled it is slower, which would flatter the larger set
        Work few = Work.of(SHEETS / FEWER);
        Work all = Work.of(SHEETS);
        System.out.printf(
                "%d times the sheets: linking %.1f, tracing %.1f times the CPU time%n",
                FEWER, all.linking / few.linking, all.tracing / few.tracing);
        assertThat(all.linking / few.linking).isLessThan(MOST);
        assertThat(all.tracing / few.tracing).isLessThan(MOST);
    }
}
