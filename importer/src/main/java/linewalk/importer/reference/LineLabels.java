package linewalk.importer.reference;

import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.lettering.Label;
import linewalk.importer.line.Net;
import linewalk.importer.line.Node;
import linewalk.importer.line.Run;
import linewalk.importer.page.Near;
import linewalk.importer.page.Segment;
import linewalk.importer.symbol.Symbols;

/** Line numbers and sizes tied to their lines: they stand along a run, above it or in a gap of it. */
public final class LineLabels {

    private static final Pattern NUMBER = Pattern.compile(
            "(?:[0-9/-]{1,7}\"?-)?[A-Z]{1,4}-?\\d{1,4}[A-Z]?(?:-\\d{1,4})?|[A-Z]{1,4}\\d?-\\d{1,4}(?:-[A-Z0-9]+)*");
    private static final Pattern WORDED = Pattern.compile("LINE ?(?:NO\\.? ?)?[A-Z]{0,3}-?\\d{1,4}");
    private static final Pattern SIZE = Pattern.compile(
            "(?:DN ?\\d{1,3}|G ?\\d(?:[/-]\\d){0,2}|\\d{1,3} ?[xX] ?\\d{1,2}(?:[.,]\\d)?|\\d(?:-\\d/\\d)?\")");

    /** How far a number may stand from its line, in text sizes. */
    private static final double BESIDE = 0.95;

    private record On(Net net, Run run, Label label, Point at, double gap) {}

    private record Piece(Net net, Run run, Segment segment) {}

    private final Map<Net, List<On>> numbers = new IdentityHashMap<>();
    private final Map<Net, String> sizes = new IdentityHashMap<>();

    /** @param taken labels that already say something else */
    public LineLabels(List<Net> nets, List<Label> labels, Set<Label> taken, Symbols symbols) {
        List<Piece> pieces = nets.stream()
                .flatMap(n -> n.runs().stream().flatMap(r -> segments(r).map(s -> new Piece(n, r, s))))
                .toList();
        Near<Piece> near = new Near<>(pieces, p -> p.segment().box());
        List<On> found = labels.stream()
                .filter(l -> !taken.contains(l) && !symbols.inTable(l.center()))
                .flatMap(l -> along(l, near).stream())
                .toList();
        keepNumbers(found);
    }

    private static java.util.stream.Stream<Segment> segments(Run r) {
        return java.util.stream.IntStream.range(1, r.points().size())
                .mapToObj(i -> new Segment(r.points().get(i - 1), r.points().get(i)));
    }

    /** The run that the label stands along. */
    private static Optional<On> along(Label l, Near<Piece> near) {
        return near.touching(l.box().grow(BESIDE * l.sizePt())).stream()
                .filter(p -> parallel(l, p.segment()) && overlaps(l.box(), p.segment()))
                .map(p -> new On(
                        p.net(),
                        p.run(),
                        l,
                        p.segment().nearest(l.center()),
                        p.run().bridged() ? 0 : gap(l.box(), p.segment())))
                .filter(o -> o.gap() <= BESIDE * l.sizePt())
                .min(Comparator.comparingDouble(On::gap));
    }

    private static boolean parallel(Label l, Segment s) {
        return l.upright() ? s.vertical() : s.horizontal() || !s.vertical();
    }

    private static boolean overlaps(Box b, Segment s) {
        Point c = b.center();
        double t = s.position(c);
        return t > 0 && t < 1;
    }

    private static double gap(Box b, Segment s) {
        return b.distancePt(s.nearest(b.center()));
    }

    /** Numbers of one sheet share their form; a form seen once needs a hyphen to be believed. */
    private void keepNumbers(List<On> found) {
        Map<String, Long> forms = new HashMap<>();
        for (On o : found) {
            number(o.label()).ifPresent(n -> forms.merge(form(n), 1L, Long::sum));
            sizeIn(o.label()).ifPresent(s -> sizes.putIfAbsent(o.net(), s));
        }
        for (On o : found) {
            Optional<String> n = number(o.label());
            if (n.isPresent()
                    && (n.get().contains("-") || n.get().startsWith("LINE") || forms.get(form(n.get())) > 1)) {
                numbers.computeIfAbsent(o.net(), k -> new java.util.ArrayList<>())
                        .add(o);
            }
        }
    }

    private static Optional<String> number(Label l) {
        String text = l.text().toUpperCase(Locale.ROOT);
        if (WORDED.matcher(text).matches()) {
            return Optional.of(text);
        }
        String first = l.words().get(0).text().toUpperCase(Locale.ROOT);
        return l.words().size() <= 3
                        && NUMBER.matcher(first).matches()
                        && !SIZE.matcher(first).matches()
                ? Optional.of(first)
                : Optional.empty();
    }

    private static Optional<String> sizeIn(Label l) {
        return l.words().stream()
                .map(Label.Word::text)
                .filter(t -> SIZE.matcher(t).matches())
                .findFirst();
    }

    private static String form(String text) {
        return text.replaceAll("\\d+", "9").replaceAll("[A-Z]+", "A");
    }

    /** The number that stands on the leg of the line which ends here; another leg's number may be another line's. */
    public Optional<String> numberAt(Net net, Node end) {
        List<Run> leg = Net.leg(end);
        return numbers.getOrDefault(net, List.of()).stream()
                .filter(o -> leg.contains(o.run()))
                .min(Comparator.comparingDouble(o -> o.at().distancePt(end.place())))
                .flatMap(o -> number(o.label()));
    }

    /** The line's number, where all that stand along it agree; else the most frequent. */
    public Optional<String> number(Net net) {
        return numbers.getOrDefault(net, List.of()).stream()
                .map(o -> number(o.label()).orElseThrow())
                .collect(Collectors.groupingBy(n -> n, java.util.TreeMap::new, Collectors.counting()))
                .entrySet()
                .stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey);
    }

    public Optional<String> size(Net net) {
        return Optional.ofNullable(sizes.get(net));
    }

    /** Labels that are line numbers. */
    public Set<Label> used() {
        return numbers.values().stream().flatMap(List::stream).map(On::label).collect(Collectors.toSet());
    }
}
