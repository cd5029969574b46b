package linewalk.linker;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The tracer against every walk there is, on small random circuits (fixed seed): parts are edges, lines are nodes. */
class TraceBruteForceTest {

    /** Weights of the brute force, its own: a worse hindrance outweighs any number of lesser ones in so small a circuit. */
    private static final Map<String, Long> HINDRANCE = Map.of(
            "hose",
            0L,
            "check-valve",
            100L,
            "orifice",
            10_000L,
            "counterbalance-valve",
            1_000_000L,
            "relief-valve",
            100_000_000L);

    private record Edge(String tag, String kind, int a, int b) {
        long cost() {
            return HINDRANCE.get(kind) + 1;
        }
    }

    private static final Set<String> PASSIVE =
            Set.of("shut-off-valve", "strainer", "filter", "hose", "cooler", "heater");

    /** Lines with nothing but passive parts before the tank: no relief lets oil back out of them. */
    private final Set<Integer> home = new HashSet<>();

    private final Random random = new Random(7);

    @Test
    void noWalkHasLessResistance() {
        int found = 0;
        for (int round = 0; round < 150; round++) {
            int lines = 4 + random.nextInt(5);
            List<Edge> edges = edges(lines);
            String via = random.nextBoolean()
                    ? edges.get(random.nextInt(edges.size())).tag()
                    : null;
            TreeSet<Long> all = new TreeSet<>();
            home.clear();
            home.add(lines - 1);
            for (int i = 0; i < lines; i++) {
                edges.stream().filter(e -> PASSIVE.contains(e.kind())).forEach(this::spread);
            }
            walk(edges, 0, lines - 1, via, new ArrayList<>(List.of(0)), 0, via == null, all);
            Question q = new Question("P1", via == null ? List.of() : List.of(via), null, null, false, false, 3);
            Answer answer = draw(edges, lines).trace(q);
            if (all.isEmpty()) {
                assertThat(answer).isInstanceOf(Answer.Stopped.class);
            } else {
                List<Long> costs = ((Answer.Found) answer)
                        .traces().stream().map(t -> cost(t, edges)).toList();
                assertThat(costs.get(0)).isEqualTo(all.first());
                assertThat(costs).isSorted();
                found++;
            }
        }
        assertThat(found).isGreaterThan(75);
    }

    private void spread(Edge e) {
        if (home.contains(e.a()) || home.contains(e.b())) {
            home.addAll(List.of(e.a(), e.b()));
        }
    }

    private List<Edge> edges(int lines) {
        List<String> kinds = new TreeSet<>(HINDRANCE.keySet()).stream().toList();
        List<Edge> edges = new ArrayList<>();
        for (int i = 0; i < lines * 2; i++) {
            int a = random.nextInt(lines);
            int b = random.nextInt(lines);
            if (a != b) {
                edges.add(new Edge("E" + i, kinds.get(random.nextInt(kinds.size())), a, b));
            }
        }
        return edges;
    }

    private void walk(
            List<Edge> edges,
            int at,
            int end,
            String via,
            List<Integer> used,
            long cost,
            boolean passed,
            TreeSet<Long> all) {
        if (at == end && passed) {
            all.add(cost);
        }
        for (Edge e : edges) {
            int to = e.a() == at ? e.b() : e.b() == at ? e.a() : -1;
            boolean back = e.kind().equals("relief-valve") && home.contains(at) && !home.contains(to);
            if (to >= 0 && !used.contains(to) && !back) {
                used.add(to);
                // a relief or a part named in via counts as opened; the brute force names only parts it then discounts
                long step = e.tag().equals(via) && e.kind().equals("relief-valve") ? 1_000_001L : e.cost();
                walk(edges, to, end, via, used, cost + step, passed || e.tag().equals(via), all);
                used.remove(Integer.valueOf(to));
            }
        }
    }

    private static long cost(Trace t, List<Edge> edges) {
        long cost = 0;
        for (Leg leg : t.legs()) {
            if (leg instanceof Leg.Through x && x.in() != null && x.out() != null) {
                Edge e = edges.stream()
                        .filter(y -> y.tag().equals(x.component().tag()))
                        .findFirst()
                        .orElseThrow();
                boolean named = t.question().via().contains(e.tag()) && e.kind().equals("relief-valve");
                cost += named ? 1_000_001L : e.cost();
            }
        }
        return cost;
    }

    /** Line 0 starts at the pump, the last line ends in the tank. */
    private static Drawn draw(List<Edge> edges, int lines) {
        StringBuilder text = new StringBuilder("sheet 1\npart P1 pump A1 P\npart T1 tank D4 R\n");
        List<StringBuilder> ends = new ArrayList<>();
        for (int i = 0; i < lines; i++) {
            ends.add(new StringBuilder("line"));
        }
        ends.get(0).append(" P1:P");
        ends.get(lines - 1).append(" T1:R");
        for (Edge e : edges) {
            text.append("part ").append(e.tag()).append(' ').append(e.kind()).append(" B2 A B\n");
            ends.get(e.a()).append(' ').append(e.tag()).append(":A");
            ends.get(e.b()).append(' ').append(e.tag()).append(":B");
        }
        ends.stream().filter(l -> l.length() > 4).forEach(l -> text.append(l).append('\n'));
        return Drawn.of(text.toString());
    }
}
