package linewalk.importer.reference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.lettering.Label;
import linewalk.importer.line.Net;
import linewalk.importer.line.Node;
import linewalk.importer.line.Run;
import linewalk.importer.page.Near;
import linewalk.importer.page.Segment;
import linewalk.importer.symbol.Body;
import linewalk.importer.symbol.Designations;
import linewalk.importer.symbol.FlagTest;
import linewalk.importer.symbol.Outline;
import linewalk.importer.symbol.Symbols;

/**
 * Line numbers and sizes tied to their lines: they stand along a run, above it or in a gap of it. Numbers like those of
 * the sheet also stand level beside an upright run.
 */
public final class LineLabels {

    private static final Pattern NUMBER = Pattern.compile(
            "(?:[0-9/-]{1,7}\"?-)?[A-Z]{1,4}-?\\d{1,4}[A-Z]?(?:-\\d{1,4})?|[A-Z]{1,4}\\d?-\\d{1,4}(?:-[A-Z0-9]+)*");
    private static final Pattern WORDED = Pattern.compile("LINE ?(?:NO\\.? ?)?[A-Z]{0,3}-?\\d{1,4}");
    private static final Pattern SIZE = Pattern.compile(
            "(?:DN ?\\d{1,3}|G ?\\d(?:[/-]\\d){0,2}|\\d{1,3} ?[xX] ?\\d{1,2}(?:[.,]\\d)?|\\d(?:-\\d/\\d)?\")");

    private static final Pattern PORT = Pattern.compile("[A-Z]{1,2}\\d{0,2}");

    /** How far the name of an enclosure's port stands from the edge at most, in text sizes. */
    private static final double AT_EDGE = 1.2;

    /** How far a number may stand from its line, in text sizes. */
    private static final double BESIDE = 0.95;

    /** How much farther the next line must stand from a number that stands beside one. */
    private static final double NEXT = 1.5;

    /** How near a figure may have its designation, in text sizes. */
    private static final double FIGURE = 2;

    /** How far a number stands from its flag at most, in text sizes. */
    private static final double AT_FLAG = 1.2;

    private record On(Run run, Label label, Point at, double gap) {}

    private record Piece(Run run, Segment segment) {}

    /** By runs: lines that are put together of others keep them. */
    private final Map<Run, List<On>> numbers = new IdentityHashMap<>();

    private final Map<Run, String> sizes = new IdentityHashMap<>();

    private final Map<Outline, Label> atFlags = new IdentityHashMap<>();

    /** @param taken labels that already say something else */
    public LineLabels(List<Net> nets, List<Label> labels, Set<Label> taken, Symbols symbols) {
        List<Piece> pieces = nets.stream()
                .flatMap(n -> n.runs().stream().flatMap(r -> segments(r).map(s -> new Piece(r, s))))
                .toList();
        Near<Piece> near = new Near<>(pieces, p -> p.segment().box());
        List<Label> free = labels.stream()
                .filter(l -> !taken.contains(l) && !symbols.inTable(l.center()) && !isPort(l, symbols.enclosures()))
                .toList();
        besideFlags(symbols.flags(), FlagTest.outside(free, symbols.flags()));
        Near<Body> figures = new Near<>(symbols.bodies(), Body::box);
        Set<String> names = names(free, near, figures);
        keepNumbers(free.stream()
                .flatMap(l -> along(l, near).stream())
                .filter(o -> !nearerToFigure(o, figures)
                        && !(names.contains(kind(o.label())) && isBesideFigure(o.label(), figures)))
                .toList());
        Set<String> known = used().stream().map(LineLabels::letters).collect(Collectors.toSet());
        free.stream()
                .filter(l ->
                        !used().contains(l) && number(l).filter(this::told).isPresent() && known.contains(letters(l)))
                .flatMap(l -> beside(l, near).stream())
                .forEach(this::keep);
    }

    /** What ports in the faces of an enclosure are called. */
    public static boolean isPortName(Label l) {
        return PORT.matcher(l.text()).matches();
    }

    /** Beside the edge of an enclosure stand the names of its ports, along the lines that leave there. */
    private static boolean isPort(Label l, List<Box> enclosures) {
        double reach = l.box().widthPt() / 2 + AT_EDGE * l.sizePt();
        return isPortName(l)
                && enclosures.stream()
                        .anyMatch(e -> e.grow(reach).contains(l.center())
                                && !e.grow(-reach).contains(l.center()));
    }

    /** What designations of the sheet look like: more of them stand beside figures alone than along lines alone. */
    private static Set<String> names(List<Label> free, Near<Piece> near, Near<Body> figures) {
        Map<String, Integer> lead = new HashMap<>();
        for (Label l : free) {
            boolean figure = isBesideFigure(l, figures);
            if (number(l).isPresent() && figure == along(l, near).isEmpty()) {
                lead.merge(kind(l), figure ? 1 : -1, Integer::sum);
            }
        }
        return lead.keySet().stream().filter(k -> lead.get(k) > 0).collect(Collectors.toSet());
    }

    private static boolean isBesideFigure(Label l, Near<Body> figures) {
        double reach = FIGURE * l.sizePt();
        return figures.touching(l.box().grow(reach)).stream()
                .anyMatch(b -> !b.reservoir() && b.box().distancePt(l.box()) < reach);
    }

    /** Its letters, and how many figures its numbers have. */
    private static String kind(Label l) {
        return number(l).orElse("").replaceAll("\\d", "9");
    }

    /** Where most flags have a number printed against one of their sides, it is their line's. */
    private void besideFlags(List<Outline> flags, List<Label> free) {
        Map<Outline, Label> found = new IdentityHashMap<>();
        for (Label l : free) {
            if (number(l).isPresent()) {
                flags.stream()
                        .filter(f -> f.box().distancePt(l.box()) < AT_FLAG * l.sizePt() && level(f.box(), l.center()))
                        .min(Comparator.comparingDouble(f -> f.box().distancePt(l.box())))
                        .ifPresent(f -> found.merge(
                                f,
                                l,
                                (a, b) -> f.box().distancePt(a.box()) <= f.box().distancePt(b.box()) ? a : b));
            }
        }
        if (2 * found.size() > flags.size()) {
            atFlags.putAll(found);
        }
    }

    private static boolean level(Box flag, Point p) {
        return p.xPt() > flag.x0Pt() && p.xPt() < flag.x1Pt() || p.yPt() > flag.y0Pt() && p.yPt() < flag.y1Pt();
    }

    private static Stream<Segment> segments(Run r) {
        return java.util.stream.IntStream.range(1, r.points().size())
                .mapToObj(i -> new Segment(r.points().get(i - 1), r.points().get(i)));
    }

    /** The run that the label stands along. */
    private static Optional<On> along(Label l, Near<Piece> near) {
        return near.touching(l.box().grow(BESIDE * l.sizePt())).stream()
                .filter(p -> parallel(l, p.segment()) && overlaps(l.box(), p.segment()))
                .map(p -> new On(
                        p.run(), l, p.segment().nearest(l.center()), p.run().bridged() ? 0 : gap(l.box(), p.segment())))
                .filter(o -> o.gap() <= BESIDE * l.sizePt())
                .min(Comparator.comparingDouble(On::gap));
    }

    /** The upright run that a level label stands beside, and no other as near. */
    private static Optional<On> beside(Label l, Near<Piece> near) {
        if (l.upright()) {
            return Optional.empty();
        }
        List<On> found = near.touching(l.box().grow(NEXT * BESIDE * l.sizePt())).stream()
                .filter(p -> p.segment().vertical() && overlaps(l.box(), p.segment()))
                .map(p -> new On(p.run(), l, p.segment().nearest(l.center()), gap(l.box(), p.segment())))
                .filter(o -> o.gap() > 0)
                .sorted(Comparator.comparingDouble(On::gap))
                .toList();
        boolean alone = found.size() == 1
                || found.size() > 1 && found.get(1).gap() > NEXT * found.get(0).gap();
        return alone && found.get(0).gap() <= BESIDE * l.sizePt() ? Optional.of(found.get(0)) : Optional.empty();
    }

    private static String letters(Label l) {
        return number(l).orElse("").replaceAll("\\d.*", "");
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

    /** Numbers of one sheet share their form, with those at its flags too; a form seen once needs a hyphen to be believed. */
    private void keepNumbers(List<On> found) {
        Map<String, Long> forms = new HashMap<>();
        for (On o : found) {
            number(o.label()).ifPresent(n -> forms.merge(form(n), 1L, Long::sum));
            sizeIn(o.label()).ifPresent(s -> sizes.putIfAbsent(o.run(), s));
        }
        for (On o : found) {
            Optional<String> n = number(o.label());
            if (n.isPresent()
                    && told(n.get())
                    && (n.get().contains("-") || n.get().startsWith("LINE") || forms.get(form(n.get())) > 1)) {
                keep(o);
            }
        }
    }

    /** Of a form that numbers at flags have, where there are any. */
    private boolean told(String number) {
        return atFlags.isEmpty()
                || atFlags.values().stream()
                        .anyMatch(l -> form(number(l).orElseThrow()).equals(form(number)));
    }

    /**
     * What could be a designation names the figure that it stands closer to than to the line; one beside it, where no number
     * at a flag has such letters, or where it is a solenoid's.
     */
    private boolean nearerToFigure(On o, Near<Body> figures) {
        boolean flagged = atFlags.values().stream().anyMatch(l -> letters(l).equals(letters(o.label())));
        boolean coil = Designations.isCoil(o.label().text());
        boolean strange = !flagged && (coil || !atFlags.isEmpty());
        double reach = strange ? FIGURE * o.label().sizePt() : o.gap();
        return (coil || Designations.looksLike(o.label().text()))
                && figures.touching(o.label().box().grow(reach)).stream()
                        .anyMatch(b ->
                                !b.reservoir() && b.box().distancePt(o.label().box()) < reach);
    }

    private void keep(On o) {
        numbers.computeIfAbsent(o.run(), k -> new ArrayList<>()).add(o);
    }

    private List<On> on(List<Run> runs) {
        return runs.stream()
                .flatMap(r -> numbers.getOrDefault(r, List.of()).stream())
                .toList();
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

    /** The number against the flag, or on the leg of the line which ends here; another leg's may be another line's. */
    public Optional<String> numberAt(Node end) {
        Label atFlag = atFlags.get(end.flag());
        if (atFlag != null) {
            return number(atFlag);
        }
        return on(Net.leg(end)).stream()
                .min(Comparator.comparingDouble(o -> o.at().distancePt(end.place())))
                .flatMap(o -> number(o.label()));
    }

    /** The line's number, where all that stand along it agree; else the most frequent. */
    public Optional<String> number(Net net) {
        return on(net.runs()).stream()
                .map(o -> number(o.label()).orElseThrow())
                .collect(Collectors.groupingBy(n -> n, java.util.TreeMap::new, Collectors.counting()))
                .entrySet()
                .stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey);
    }

    public Optional<String> size(Net net) {
        return net.runs().stream().map(sizes::get).filter(Objects::nonNull).findFirst();
    }

    /** Labels that are line numbers. */
    public Set<Label> used() {
        return Stream.concat(numbers.values().stream().flatMap(List::stream).map(On::label), atFlags.values().stream())
                .collect(Collectors.toSet());
    }
}
