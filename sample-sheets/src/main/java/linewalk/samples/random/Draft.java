package linewalk.samples.random;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import linewalk.samples.machine.LineKind;
import linewalk.samples.machine.Run;
import linewalk.samples.machine.SheetPlan;
import linewalk.samples.symbol.Spot;

/** A line being drawn: its strokes, whose references have no names yet. */
final class Draft {
    /** An end at a port, at a reference or, both null, at a join. */
    record End(String port, Goes goes) {
        static final End JOIN = new End(null, null);
    }

    private record Stroke(LineKind kind, List<Spot> path, End first, End last) {}

    private final List<Stroke> strokes = new ArrayList<>();
    /** Where branches leave. */
    private final List<Tip> joins = new ArrayList<>();

    void stroke(LineKind kind, List<Spot> path, End first, End last) {
        strokes.add(new Stroke(kind, path, first, last));
    }

    List<Tip> joins() {
        return joins;
    }

    boolean isEmpty() {
        return strokes.isEmpty();
    }

    /** Some programs end the through line at each join and start it anew. */
    void split(Spot at) {
        for (Stroke stroke : List.copyOf(strokes)) {
            for (int i = 1; i < stroke.path().size(); i++) {
                Area leg = Area.of(stroke.path().get(i - 1), stroke.path().get(i));
                boolean inside = leg.distance(at) == 0
                        && !stroke.path().get(i - 1).equals(at)
                        && !stroke.path().get(i).equals(at);
                if (inside) {
                    strokes.remove(stroke);
                    List<Spot> before = new ArrayList<>(stroke.path().subList(0, i));
                    before.add(at);
                    List<Spot> after = new ArrayList<>(List.of(at));
                    after.addAll(stroke.path().subList(i, stroke.path().size()));
                    strokes.add(new Stroke(stroke.kind(), List.copyOf(before), stroke.first(), End.JOIN));
                    strokes.add(new Stroke(stroke.kind(), List.copyOf(after), End.JOIN, stroke.last()));
                    return;
                }
            }
        }
    }

    void on(SheetPlan sheet, Map<Goes, List<String>> links) {
        List<Run> runs = new ArrayList<>();
        for (Stroke stroke : strokes) {
            runs.add(new Run(
                    stroke.kind(), stroke.path(), end(sheet, stroke.first(), links), end(sheet, stroke.last(), links)));
        }
        sheet.add(strokes.get(0).kind(), "........", List.copyOf(runs));
    }

    private static Run.End end(SheetPlan sheet, End end, Map<Goes, List<String>> links) {
        return new Run.End(end.port(), end.goes() == null ? null : end.goes().on(sheet, links));
    }
}
