package linewalk.linker;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import linewalk.drawing.Finding;
import linewalk.drawing.Rule;
import linewalk.drawing.Zone;

/** Whether each target of each reference is there and points back (IEC 61082-1: a one-way reference can't be traced). */
final class TargetCheck {

    private final RefIndex index;
    private final Mates mates;
    private final LooseEnds loose;
    private final DrawingNumbers numbers;
    private final Suspects suspects;

    TargetCheck(RefIndex index, Mates mates, LooseEnds loose) {
        this.index = index;
        this.mates = mates;
        this.loose = loose;
        this.numbers = new DrawingNumbers(index);
        this.suspects = new Suspects(index, mates);
    }

    void check(List<Finding> findings) {
        SilentSheet silent = new SilentSheet(index);
        for (Ref r : index.refs) {
            // one that is perhaps none has its own finding
            boolean doubtful = r.confidence() < Sifter.DOUBTFUL && index.strange.contains(r.id());
            for (int i = 0; !doubtful && i < r.targets().size(); i++) {
                Slot s = new Slot(r, i);
                check(s).ifPresent(f -> {
                    if (f.rule() == Rule.NOTHING_THERE) {
                        silent.add(s, f);
                    } else {
                        findings.add(f);
                    }
                });
            }
        }
        findings.addAll(silent.findings());
    }

    private Optional<Finding> check(Slot s) {
        String printed = s.target().sheet();
        if (index.pages(s.sheetKey()).isEmpty()) {
            return numbers.outside(printed)
                    ? finding(Rule.NOT_IN_SET, s, "goes on to drawing " + printed + ", which is not in the set", null)
                    : finding(
                            Rule.NO_SUCH_SHEET,
                            s,
                            "names sheet " + printed + ", which the set does not have",
                            remedy(s));
        }
        Zone zone = s.zone();
        boolean gridded = index.pages(s.sheetKey()).stream().anyMatch(p -> p.grid() != null);
        if (zone != null && gridded) {
            boolean has = index.pages(s.sheetKey()).stream().anyMatch(p -> p.grid() != null && p.has(zone));
            return has
                    ? zone(s)
                    : finding(
                            Rule.NO_SUCH_ZONE,
                            s,
                            "names zone " + zone + ", which is not in the grid of sheet " + printed,
                            remedy(s));
        }
        return mates.answered(s) ? Optional.empty() : unanswered(s);
    }

    private Optional<Finding> zone(Slot s) {
        int steps = Integer.MAX_VALUE;
        for (Pairing p : mates.of(s)) {
            Ref mate = p.other(s).ref();
            if (mate.sheetKey().equals(s.sheetKey())) {
                steps = Math.min(steps, Facts.steps(s.zone(), mate));
            }
        }
        if (steps == 0) {
            return pointsBack(s) ? Optional.empty() : shared(s);
        }
        if (steps == 1) {
            Ref mate = mates.of(s).get(0).other(s).ref();
            return finding(
                    Rule.NEXT_ZONE,
                    s,
                    "names zone " + s.zone() + ", but its mate " + mate.said() + " stands one zone away",
                    "it should name " + mate.zone() + ", where its mate " + mate.said() + " stands");
        }
        return emptyOrElsewhere(s);
    }

    /** Whether any mate that stands where this one points names the place from which it does. */
    private boolean pointsBack(Slot s) {
        return mates.of(s).stream().anyMatch(p -> {
            Facts.Way back = Facts.way(p.other(s), s.ref(), index);
            return back != Facts.Way.FAR && back != Facts.Way.NEAR
                    || mates.of(p.other(s)).size() == 1;
        });
    }

    /** The end there is another's mate, who bears this one's name. */
    private Optional<Finding> shared(Slot s) {
        Slot there = mates.of(s).get(0).other(s);
        return finding(
                Rule.NOT_RETURNED,
                s,
                "points to " + there.ref().said() + ", which points back elsewhere on this sheet, to " + there.zone(),
                "take this one out if it is there twice, or let " + there.ref().said() + " name both places");
    }

    private Optional<Finding> emptyOrElsewhere(Slot s) {
        List<Ref> there = index.inZone(s.sheetKey(), s.zone()).stream()
                .filter(r -> !r.equals(s.ref()))
                .toList();
        String place = "sheet " + s.target().sheet() + ", " + s.zone();
        if (!there.isEmpty()) {
            return finding(
                    Rule.NOT_RETURNED,
                    s,
                    "points to " + place + ", where " + said(there) + ": none points back",
                    remedy(s));
        }
        Optional<String> end = mates.answered(s)
                ? Optional.empty()
                : loose.answer(s.sheetKey(), s.zone(), s.ref().labelKey());
        return finding(
                Rule.NOTHING_THERE,
                s,
                "points to " + place + ", where no reference stands"
                        + end.map(l -> "; " + l + " ends loose there").orElse(""),
                end.isPresent()
                        ? "a reference back to sheet " + s.ref().page().name + " is missing at that line end"
                        : remedy(s));
    }

    private static String said(List<Ref> there) {
        return there.stream().limit(3).map(r -> "'" + r.text() + "'").collect(Collectors.joining(", "))
                + (there.size() == 1 ? " stands" : " stand");
    }

    /** No zone to look in: its label must be on that sheet, or something there must name this one. */
    private Optional<Finding> unanswered(Slot s) {
        String label = s.ref().labelKey();
        List<Ref> same = new ArrayList<>(label.isEmpty() ? List.of() : index.labelled(s.sheetKey(), label));
        same.remove(s.ref());
        boolean own = s.sheetKey().equals(s.ref().sheetKey());
        if (own && same.isEmpty() && s.ref().targets().size() > 1) {
            return Optional.empty(); // lists of sheets often name their own
        }
        String what = label.isEmpty()
                ? "that names sheet " + s.ref().page().name
                : s.ref().label();
        if (!same.isEmpty()) {
            return finding(
                    Rule.NOT_RETURNED,
                    s,
                    "goes on at " + s.ref().label() + " on sheet " + s.target().sheet() + ", where "
                            + same.get(0).said() + " points elsewhere",
                    suspects.remedy(s)
                            .orElse("let " + same.get(0).said() + " name sheet "
                                    + s.ref().page().name));
        }
        if (label.isEmpty() && namesBack(s)) {
            return Optional.empty();
        }
        return finding(
                Rule.NOTHING_THERE,
                s,
                "goes on to sheet " + s.target().sheet() + ", where there is no reference " + what,
                remedy(s));
    }

    private boolean namesBack(Slot s) {
        return index.labelled(s.sheetKey(), "").stream().anyMatch(r -> r.targets().stream()
                .anyMatch(t -> Names.sheetKey(t.sheet()).equals(s.ref().sheetKey())));
    }

    private String remedy(Slot s) {
        return suspects.remedy(s).orElse(null);
    }

    private static Optional<Finding> finding(Rule rule, Slot s, String what, String remedy) {
        Ref r = s.ref();
        String label = r.label() == null ? "" : " (" + r.label() + ")";
        return Optional.of(new Finding(
                rule,
                r.page().page,
                r.place(),
                List.of(r.id()),
                List.of(),
                r.said() + label + " " + what + ".",
                remedy));
    }
}
