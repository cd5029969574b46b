package linewalk.importer.valve;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import linewalk.drawing.Box;
import linewalk.drawing.Component;
import linewalk.drawing.Finding;
import linewalk.drawing.Kind;
import linewalk.drawing.KindReading;
import linewalk.drawing.KindReading.Choice;
import linewalk.drawing.Point;
import linewalk.drawing.Port;
import linewalk.drawing.Position;
import linewalk.drawing.Rule;
import linewalk.importer.lettering.Label;
import linewalk.importer.page.Fill;
import linewalk.importer.page.Marks;
import linewalk.importer.page.Near;
import linewalk.importer.page.Segment;
import linewalk.importer.page.Stroke;
import linewalk.importer.page.WholeStrokes;
import linewalk.importer.symbol.Body;

/** A page's directional valves: fills in what their symbols say, and keeps what was not read surely as findings. */
public final class Valves {

    /** How far around a figure its operators are drawn, in its shorter sides. */
    private static final double REACH = 2.5;

    private static final double LIKELY = 0.9;

    /** What a parts list may call a valve that is drawn as a row of squares. */
    private static final Set<Kind> SWITCHING = EnumSet.of(
            Kind.DIRECTIONAL_VALVE,
            Kind.PROPORTIONAL_VALVE,
            Kind.SHUT_OFF_VALVE,
            Kind.UNLOADING_VALVE,
            Kind.DECOMPRESSION_VALVE,
            Kind.CARTRIDGE_VALVE);

    private final Near<Stroke> strokes;
    private final Near<Stroke> drawn;
    private final Near<Fill> bars;
    private final Near<Fill> fills;
    private final List<Label> labels;
    private final double tolPt;
    private static final Pattern COIL = Pattern.compile("Y\\d+");

    private final List<Finding> doubts = new ArrayList<>();

    /**
     * @param drawn the page's marks as they were drawn
     * @param marks the same as whole strokes
     * @param leaders strokes that point at parts and are none of theirs
     * @param taken labels that already say something else: references, designations, line numbers
     */
    public Valves(Marks drawn, Marks marks, List<Stroke> leaders, List<Label> labels, Set<Label> taken, double tolPt) {
        this.strokes = new Near<>(marks.strokes(), Stroke::box);
        this.fills = new Near<>(marks.fills().stream().filter(f -> !f.light()).toList(), Fill::box);
        List<Segment> pointing = Segment.straightOf(leaders);
        Predicate<Point> pointed = p -> pointing.stream().anyMatch(l -> l.distancePt(p) <= tolPt);
        this.drawn = new Near<>(
                drawn.strokes().stream()
                        .filter(s -> !s.points().stream().allMatch(pointed))
                        .toList(),
                Stroke::box);
        this.bars = new Near<>(drawn.fills().stream().filter(f -> !f.light()).toList(), Fill::box);
        this.labels = labels.stream().filter(l -> !taken.contains(l)).toList();
        this.tolPt = tolPt;
    }

    public List<Finding> doubts() {
        return doubts;
    }

    /** The component with its kind and positions where its figure is a row of squares; else as it is. */
    public Component read(Component c, Body body) {
        if (body.reservoir() || body.outlines().isEmpty() || c.ports().size() < 2) {
            return c;
        }
        Optional<ValveReading> found = Optional.empty();
        double longest = 0;
        Box around = body.core()
                .grow(REACH * Math.min(body.core().widthPt(), body.core().heightPt()));
        List<Stroke> pieces = WholeStrokes.apart(drawn.touching(around), bars.touching(around), tolPt);
        for (Lie lie : Lie.values()) {
            List<Point> ports =
                    c.ports().stream().map(p -> lie.local(p.place())).toList();
            List<Ink> squares = ink(pieces, around, lie);
            Optional<Row> row = new RowFinder(squares, ports, lie.local(body.core()), tolPt).find();
            double length = row.map(r -> r.squares() * r.pitchPt()).orElse(0.0);
            if (length > longest) {
                List<Ink> ends = ink(strokes.touching(around), around, lie);
                Optional<ValveReading> reading =
                        new ValveReader(squares, ends, c.ports(), names(c), lie, tolPt).read(row.get());
                if (reading.isPresent()) {
                    found = reading;
                    longest = length;
                }
            }
        }
        found = found.filter(v -> v.doubt() == null || !otherKind(c));
        found.filter(v -> v.doubt() != null).ifPresent(v -> doubts.add(doubt(c, v.doubt())));
        return found.map(v -> filled(c, v)).orElse(c);
    }

    /** The figure looks like something else, so a row that cannot be read is none. */
    private static boolean otherKind(Component c) {
        return c.kind() != null && c.kind() != Kind.UNKNOWN && !SWITCHING.contains(c.kind());
    }

    private List<Ink> ink(List<Stroke> pieces, Box around, Lie lie) {
        List<Ink> out = new ArrayList<>();
        pieces.forEach(s -> out.add(Ink.of(s, lie)));
        fills.touching(around).forEach(f -> out.add(Ink.of(f, lie)));
        return out;
    }

    /** Labels that may name an operator: not those that name this valve's ports; Y1 is a coil's name before a drain's. */
    private List<Label> names(Component c) {
        return labels.stream()
                .filter(l -> c.box().distancePt(l.box()) < 8 * l.sizePt())
                .filter(l -> c.ports().stream().noneMatch(p -> namesPort(l, p)))
                .toList();
    }

    private static boolean namesPort(Label l, Port p) {
        return l.text().equals(p.name())
                && !COIL.matcher(l.text()).matches()
                && l.box().distancePt(p.place()) < 2 * l.sizePt();
    }

    /** A row read to its end is a directional valve, whatever else the figure looked like. */
    private static Component filled(Component c, ValveReading v) {
        return new Component(
                c.id(),
                c.tag(),
                c.page(),
                c.place(),
                c.box(),
                v.kind(),
                c.setting(),
                c.origin(),
                c.confidence(),
                c.ports().stream().map(p -> unlessCoil(p, v.positions())).toList(),
                v.positions(),
                symbol(v.kind()));
    }

    /** What turned out to name a coil names no port. */
    private static Port unlessCoil(Port p, List<Position> positions) {
        boolean coil = p.name() != null
                && COIL.matcher(p.name()).matches()
                && positions.stream().anyMatch(x -> x.how() == Position.How.SOLENOID && x.by().contains(p.name()));
        return coil ? new Port(p.id(), null, p.place(), p.confidence()) : p;
    }

    private static KindReading symbol(Kind kind) {
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice(kind, LIKELY));
        for (Kind k : SWITCHING) {
            if (k != kind) {
                choices.add(new Choice(k, (1 - LIKELY) / SWITCHING.size()));
            }
        }
        return new KindReading(choices, "a row of squares with operators at its ends");
    }

    private static Finding doubt(Component c, String why) {
        return new Finding(
                Rule.DOUBTFUL_READING,
                c.page(),
                c.place(),
                List.of(),
                List.of(c.tag()),
                "The squares of " + c.tag() + " were not read: " + why + ".",
                "say what it joins in each position with tags");
    }
}
