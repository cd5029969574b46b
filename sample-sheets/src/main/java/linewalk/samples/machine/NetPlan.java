package linewalk.samples.machine;

import java.util.ArrayList;
import java.util.List;
import linewalk.samples.symbol.Spot;

/** A net being described as runs of words, see {@link SheetPlan}; {@link #add} puts it on the sheet. */
final class NetPlan {
    private final SheetPlan sheet;
    private final LineKind kind;
    private final String classes;
    private final List<Run> runs = new ArrayList<>();

    NetPlan(SheetPlan sheet, LineKind kind, String classes) {
        if (classes.length() != 8) {
            throw new IllegalArgumentException("one class a state, not " + classes);
        }
        this.sheet = sheet;
        this.kind = kind;
        this.classes = classes;
    }

    NetPlan run(String... words) {
        return run(kind, words);
    }

    /** A run drawn as another kind of line than its net, such as a pilot branch of a working line. */
    NetPlan run(LineKind runKind, String... words) {
        List<Spot> points = new ArrayList<>();
        for (int i = 0; i < words.length; i++) {
            Spot next = pointOf(words[i], points, i == words.length - 1);
            if (next != null) {
                requireLevel(points, next, words);
                points.add(next);
            }
        }
        Run.End first = end(words[0], points, 0, 1);
        Run.End last = end(words[words.length - 1], points, points.size() - 1, points.size() - 2);
        runs.add(new Run(runKind, List.copyOf(points), first, last));
        return this;
    }

    void add() {
        sheet.add(kind, classes, List.copyOf(runs));
    }

    private Spot pointOf(String word, List<Spot> before, boolean isLast) {
        char head = word.charAt(0);
        if (head == 'x' || head == 'y') {
            Spot from = before.get(before.size() - 1);
            double value = Double.parseDouble(word.substring(1));
            return head == 'x' ? new Spot(value, from.y()) : new Spot(from.x(), value);
        }
        if (word.contains("@")) {
            String[] xy = word.substring(word.indexOf('@') + 1).split(",");
            return new Spot(Double.parseDouble(xy[0]), Double.parseDouble(xy[1]));
        }
        if ("<>=".indexOf(head) >= 0) {
            if (!isLast) {
                throw new IllegalArgumentException("a place is wanted for " + word);
            }
            return null;
        }
        String[] port = word.split("\\.");
        return sheet.part(port[0]).port(port[1]);
    }

    private static void requireLevel(List<Spot> before, Spot next, String... words) {
        if (before.isEmpty()) {
            return;
        }
        Spot from = before.get(before.size() - 1);
        if (Math.abs(from.x() - next.x()) > 1e-6 && Math.abs(from.y() - next.y()) > 1e-6) {
            throw new IllegalArgumentException("oblique: " + String.join(" ", words) + " from " + from + " to " + next);
        }
    }

    private Run.End end(String word, List<Spot> points, int at, int inner) {
        char head = word.charAt(0);
        if ("<>=".indexOf(head) >= 0) {
            return new Run.End(null, reference(word, points.get(at), points.get(inner)));
        }
        return new Run.End(head == '@' ? null : word.replace('.', ':'), null);
    }

    private Reference reference(String word, Spot end, Spot inner) {
        Flow flow = word.charAt(0) == '<' ? Flow.IN : word.charAt(0) == '>' ? Flow.OUT : Flow.UNKNOWN;
        int at = word.indexOf('@');
        String[] name = (at < 0 ? word.substring(1) : word.substring(1, at)).split("!");
        List<String> links = List.of(name[0].split("\\+"));
        String label = name.length > 1 ? name[1] : usualLabel(links.get(0));
        Heading heading = Heading.of(end.x() - inner.x(), end.y() - inner.y());
        return sheet.reference(links, flow, end, heading, label.isEmpty() ? null : label, flow == Flow.OUT && at < 0);
    }

    private static String usualLabel(String link) {
        return link.length() == 1 ? "" : "L-" + (link.equals("122") ? "121" : link);
    }
}
