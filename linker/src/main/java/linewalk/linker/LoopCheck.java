package linewalk.linker;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import linewalk.drawing.End;
import linewalk.drawing.Finding;
import linewalk.drawing.Line;
import linewalk.drawing.Rule;

/** Lines that, followed from sheet to sheet through no part at all, come back to where they started. */
final class LoopCheck {

    private final Map<String, String> root = new HashMap<>();

    private LoopCheck() {}

    static void check(List<PageDraft> pages, Mates mates, List<Finding> findings) {
        LoopCheck check = new LoopCheck();
        Map<String, String> lineOf = new HashMap<>();
        for (PageDraft p : pages) {
            for (Line l : p.lines) {
                for (End e : l.ends()) {
                    if (e instanceof End.AtReference r) {
                        lineOf.put(r.reference(), l.id());
                    }
                }
            }
        }
        for (Pairing p : mates.pairings) {
            Ref a = p.a().ref();
            Ref b = p.b().ref();
            boolean shared = mates.of(p.a()).size() > 1 || mates.of(p.b()).size() > 1;
            boolean drawn = lineOf.containsKey(a.id()) && lineOf.containsKey(b.id());
            if (!shared && drawn && !check.join(lineOf.get(a.id()), lineOf.get(b.id()))) {
                findings.add(loop(a, b));
            }
        }
    }

    /** False where the two were joined already. */
    private boolean join(String a, String b) {
        String x = find(a);
        String y = find(b);
        root.put(x, y);
        return !x.equals(y);
    }

    private String find(String line) {
        String up = root.getOrDefault(line, line);
        if (up.equals(line)) {
            return line;
        }
        String top = find(up);
        root.put(line, top);
        return top;
    }

    private static Finding loop(Ref a, Ref b) {
        return new Finding(
                Rule.RETURNS_TO_START,
                a.page().page,
                a.place(),
                List.of(a.id(), b.id()),
                List.of(),
                "The line that goes on from " + a.said() + " to " + b.said()
                        + " comes back to where it started without passing a part.",
                null);
    }
}
