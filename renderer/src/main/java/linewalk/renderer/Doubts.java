package linewalk.renderer;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import linewalk.drawing.End;
import linewalk.drawing.Finding;
import linewalk.drawing.PageKey;
import linewalk.drawing.Point;
import linewalk.drawing.Severity;
import linewalk.linker.Leg;

/** The doubts of a trace, numbered as on the print, each tied to the leg it concerns where that can be told. */
final class Doubts {

    /** Joins and mates from here on are held for sure (the promise behind a confidence). */
    static final double SURE = 0.9;
    /** How far a doubt's place may lie from the leg it concerns. */
    private static final double NEAR_PT = 15;

    /**
     * One doubt.
     *
     * @param number from 1
     * @param page null where it has no place
     * @param leg index into the trace's legs, or -1
     * @param about ids of the line, part or references it concerns
     */
    record Doubt(int number, String text, PageKey page, Point place, int leg, Set<String> about) {
        String mark() {
            return "?" + number;
        }
    }

    private final PrintJob job;
    private final List<Leg> legs;
    private final List<Doubt> all = new ArrayList<>();

    private Doubts(PrintJob job) {
        this.job = job;
        legs = job.subject().legs();
    }

    static Doubts of(PrintJob job) {
        Doubts doubts = new Doubts(job);
        if (!job.subject().isPath()) {
            CircuitDoubts.of(job).forEach(doubts::add);
            return doubts;
        }
        job.trace().doubts().forEach(doubts::add);
        job.set().findings().stream()
                .filter(f -> f.severity() != Severity.NOTE && doubts.isOfACrossing(f))
                .filter(f -> doubts.all.stream().noneMatch(d -> d.text().startsWith(f.message())))
                .forEach(doubts::add);
        for (int i = 0; i < doubts.legs.size(); i++) {
            doubts.addUnsaid(i);
        }
        return doubts;
    }

    List<Doubt> all() {
        return all;
    }

    /** @param id of a line, a part or a reference */
    List<Doubt> about(String id) {
        return all.stream().filter(d -> d.about().contains(id)).toList();
    }

    List<Doubt> at(int leg) {
        return all.stream().filter(d -> d.leg() == leg).toList();
    }

    /** " (doubt ?1)", or nothing. */
    String mention(int leg) {
        String marks = at(leg).stream().map(Doubt::mark).collect(Collectors.joining(", "));
        return marks.isEmpty() ? "" : " (in doubt: " + marks + ")";
    }

    private void add(Finding f) {
        add(text(f), f.page(), f.place(), legOf(f).orElse(-1));
    }

    static String text(Finding f) {
        return f.message() + (f.remedy() == null ? "" : " To settle it: " + f.remedy());
    }

    /** Where the drafter's two ends do not agree, the path's reader should know even if the mate itself is sure. */
    private boolean isOfACrossing(Finding f) {
        return legs.stream()
                .anyMatch(l -> l instanceof Leg.Across x
                        && (f.references().contains(x.from().id())
                                || f.references().contains(x.to().id())));
    }

    private void add(String text, PageKey page, Point place, int leg) {
        all.add(new Doubt(all.size() + 1, text, page, place, leg, leg < 0 ? Set.of() : ids(legs.get(leg))));
    }

    private void add(CircuitDoubts.Said said) {
        all.add(new Doubt(all.size() + 1, said.text(), said.page(), said.place(), -1, said.about()));
    }

    private static Set<String> ids(Leg leg) {
        if (leg instanceof Leg.Across x) {
            return Set.of(x.from().id(), x.to().id());
        }
        return Set.of(
                leg instanceof Leg.Along a
                        ? a.line().id()
                        : ((Leg.Through) leg).component().id());
    }

    /** What the records hold to be unsure but no finding says. */
    private void addUnsaid(int i) {
        if (!at(i).isEmpty()) {
            return;
        }
        Leg leg = legs.get(i);
        Words words = new Words(job);
        if (leg instanceof Leg.Across x && x.from().mateConfidence() < SURE) {
            String text = "It is not sure that " + x.from().text() + " on " + words.address(x.from()) + " goes on at "
                    + words.address(x.to());
            add(text, x.from().page(), x.from().place(), i);
        } else if (leg instanceof Leg.Along a && a.line().confidence() < SURE) {
            String where = job.set().address(a.line().page(), a.from().place());
            add(
                    "The joins of " + words.called(a.line()) + " at " + where + " are not sure",
                    a.line().page(),
                    middle(a),
                    i);
        } else if (leg instanceof Leg.Through t && t.component().confidence() < SURE) {
            add(
                    "The reading of " + words.placed(t.component()) + " is not sure",
                    t.component().page(),
                    t.component().place(),
                    i);
        }
    }

    private static Point middle(Leg.Along a) {
        return RunWay.between(a.line().runs(), a.from().place(), a.to().place())
                .map(way -> way.get(way.size() / 2))
                .orElse(a.from().place());
    }

    /** A reference named says most, then the place, then a part named. */
    private OptionalInt legOf(Finding f) {
        OptionalInt leg = first(l -> l instanceof Leg.Across x
                && (f.references().contains(x.from().id()) || f.references().contains(x.to().id())));
        if (leg.isEmpty() && f.page() != null && f.place() != null) {
            leg = nearest(f.page(), f.place());
        }
        return leg.isPresent()
                ? leg
                : first(l -> l instanceof Leg.Through t
                        && f.components().contains(t.component().tag()));
    }

    private OptionalInt first(Predicate<Leg> wanted) {
        return IntStream.range(0, legs.size())
                .filter(i -> wanted.test(legs.get(i)))
                .findFirst();
    }

    private OptionalInt nearest(PageKey page, Point place) {
        int best = -1;
        double least = NEAR_PT;
        for (int i = 0; i < legs.size(); i++) {
            if (legs.get(i) instanceof Leg.Along a && a.line().page().equals(page) && distancePt(a, place) < least) {
                least = distancePt(a, place);
                best = i;
            }
        }
        return best < 0 ? OptionalInt.empty() : OptionalInt.of(best);
    }

    private static double distancePt(Leg.Along a, Point place) {
        double least = Math.min(end(a.from(), place), end(a.to(), place));
        List<Point> way = RunWay.between(a.line().runs(), a.from().place(), a.to().place())
                .orElse(List.of());
        for (int i = 1; i < way.size(); i++) {
            Point p = way.get(i - 1);
            Point q = way.get(i);
            least = Math.min(
                    least,
                    java.awt.geom.Line2D.ptSegDist(p.xPt(), p.yPt(), q.xPt(), q.yPt(), place.xPt(), place.yPt()));
        }
        return least;
    }

    private static double end(End end, Point place) {
        return end.place().distancePt(place);
    }
}
