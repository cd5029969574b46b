package linewalk.renderer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import linewalk.drawing.Component;
import linewalk.drawing.End;
import linewalk.drawing.Kind;
import linewalk.drawing.Line;
import linewalk.drawing.LineKind;
import linewalk.drawing.Port;
import linewalk.drawing.Reference;
import linewalk.renderer.ink.LineStyle;
import linewalk.renderer.ink.Palette;
import linewalk.renderer.iso.PortUse;
import linewalk.renderer.iso.Symbol;
import linewalk.renderer.iso.Symbols;
import linewalk.renderer.scheme.Net;
import linewalk.renderer.scheme.Node;
import linewalk.renderer.scheme.Scheme;

/** Makes the scheme of a print: what stands at each node, and which nets join them. */
final class SchemeBuilder {

    private static final int MOST_ENDS_A_STUB = 5;
    private static final double STUB_WORDS_PT = 130;

    /**
     * A scheme with the line that each net shows, by its name, and the part that stands at each node.
     *
     * @param branches the line of each node that says where a line leads
     * @param marked doubts that have their mark somewhere
     * @param energy tells what to beware of in a net's line
     */
    record Built(
            Scheme scheme,
            Map<String, SchemeDraft.Strand> strands,
            Map<Node, Component> parts,
            Map<Node, SchemeDraft.Strand> branches,
            Set<Doubts.Doubt> marked,
            HeldEnergy energy) {

        /** What to beware of in a net's line, wherever on it one stands. */
        Optional<String> caution(Net net) {
            return energy.caution(strands.get(net.name()).line());
        }

        List<Node> nodesOf(Kind kind) {
            return scheme.nodes().stream()
                    .filter(n -> parts.containsKey(n) && parts.get(n).kind() == kind)
                    .toList();
        }
    }

    private final PrintJob job;
    private final Doubts doubts;
    private final HeldEnergy energy;
    private final SchemeDraft draft;
    private final Heights heights;
    private final Stands stands;
    private final PartWords partWords;
    private final PumpEnds pumpEnds;
    private final Words words;
    private final List<Node> nodes = new ArrayList<>();
    private final List<Node> spotNodes = new ArrayList<>();
    private final Map<Node, Component> parts = new LinkedHashMap<>();
    private final Map<Node, SchemeDraft.Strand> branches = new LinkedHashMap<>();
    private final List<Net> nets = new ArrayList<>();
    private final Set<Doubts.Doubt> marked = new HashSet<>();
    private final Map<String, SchemeDraft.Strand> strands = new LinkedHashMap<>();

    private SchemeBuilder(PrintJob job, Doubts doubts) {
        this.job = job;
        this.doubts = doubts;
        energy = new HeldEnergy(job);
        draft = new SchemeDraft(job, new SetIndex(job.set()), energy);
        heights = draft.heights();
        stands = new Stands(job);
        pumpEnds = new PumpEnds(job);
        partWords = new PartWords(job, doubts, stands, energy);
        words = new Words(job);
    }

    static Built build(PrintJob job, Doubts doubts) {
        SchemeBuilder b = new SchemeBuilder(job, doubts);
        for (int i = 0; i < b.draft.spots.size(); i++) {
            b.add(i);
        }
        for (int i = 0; i < b.draft.strands.size(); i++) {
            b.net(i);
        }
        b.parts.values().forEach(p -> b.marked.addAll(doubts.about(p.id())));
        return new Built(new Scheme(b.nodes, b.nets), b.strands, b.parts, b.branches, b.marked, b.energy);
    }

    private Palette palette() {
        return job.facts().palette();
    }

    private LineStyle style(SchemeDraft.Strand s) {
        return LineLook.of(s.line(), job.moment()).style(palette());
    }

    private void add(int spot) {
        SchemeDraft.Spot s = draft.spots.get(spot);
        Node node = s.part() == null
                ? new Node("crossing " + s.crossing().get(0).id(), crossing(spot), heights.ofNode(spot))
                : new Node("part " + s.part().id(), part(spot, s.part()), heights.ofNode(spot));
        if (s.part() != null) {
            parts.put(node, s.part());
        }
        spotNodes.add(node);
        nodes.add(node);
    }

    private PartFigure part(int spot, Component c) {
        Map<String, PortUse> uses = new LinkedHashMap<>();
        Map<String, LineLook> looks = new LinkedHashMap<>();
        for (int i = 0; i < draft.strands.size(); i++) {
            SchemeDraft.Strand s = draft.strands.get(i);
            for (SchemeDraft.Meet m : s.meets()) {
                if (m.spot() == spot) {
                    looks.putIfAbsent(m.port(), LineLook.of(s.line(), job.moment()));
                    boolean up = pumpEnds.delivers(c, m.port(), s.line()).orElse(up(i, spot));
                    uses.putIfAbsent(m.port(), use(c, m.port(), s, up));
                }
            }
        }
        List<PortUse> all = new ArrayList<>();
        for (Port p : c.ports()) {
            if (uses.containsKey(p.id())) {
                all.add(uses.get(p.id()));
            } else if (!c.positions().isEmpty()) {
                all.add(new PortUse(p.id(), p.name(), LineKind.WORKING, false));
            }
        }
        Symbol symbol = Symbols.of(c, all, stands.of(c));
        Map<String, LineStyle> lines = new LinkedHashMap<>();
        looks.forEach((port, look) -> lines.put(port, look.style(palette(), symbol.duty(port))));
        return new PartFigure(symbol, partWords.of(c), lines);
    }

    private static PortUse use(Component c, String port, SchemeDraft.Strand s, boolean up) {
        String name = c.findPort(port).map(Port::name).orElse(null);
        return new PortUse(
                port,
                name,
                isOwnControl(c, port, s.line()) ? LineKind.PILOT : s.line().kind(),
                up);
    }

    /** A pump whose own outlet feeds its control: of its ports at one line the nearest is the outlet. */
    private static boolean isOwnControl(Component c, String port, Line line) {
        List<Port> own = c.ports().stream()
                .filter(p -> line.ends().stream()
                        .anyMatch(e -> e instanceof End.AtPort a && a.port().equals(p.id())))
                .sorted(Comparator.comparingDouble(p -> p.place().distancePt(c.place())))
                .toList();
        return c.kind() == Kind.PUMP && own.size() > 1 && own.stream().skip(1).anyMatch(p -> p.id().equals(port));
    }

    /** Whether a net leads up from a node; a branch leads up unless it is a drain. */
    private boolean up(int strand, int spot) {
        SchemeDraft.Strand s = draft.strands.get(strand);
        if (s.meets().size() == 1 && s.tanks().isEmpty()) {
            return s.line().kind() != LineKind.DRAIN;
        }
        return heights.ofNet(strand) > heights.ofNode(spot) + 1e-6;
    }

    private CrossingFigure crossing(int spot) {
        List<CrossingFigure.Flag> flags = new ArrayList<>();
        List<Doubts.Doubt> some = new ArrayList<>();
        for (Reference r : draft.spots.get(spot).crossing()) {
            for (int i = 0; i < draft.strands.size(); i++) {
                if (draft.strands.get(i).meets().contains(new SchemeDraft.Meet(spot, r.id()))) {
                    String line =
                            r.label() == null ? draft.strands.get(i).line().label() : r.label();
                    String label = line == null ? "" : " (" + line + ")";
                    flags.add(new CrossingFigure.Flag(r.id(), words.address(r) + label, up(i, spot)));
                    break;
                }
            }
            doubts.about(r.id()).stream().filter(d -> !some.contains(d)).forEach(some::add);
        }
        marked.addAll(some);
        return new CrossingFigure(apart(flags), some);
    }

    /** Two lines at equal height come from both sides all the same. */
    private static List<CrossingFigure.Flag> apart(List<CrossingFigure.Flag> flags) {
        if (flags.size() < 2
                || flags.stream().map(CrossingFigure.Flag::above).distinct().count() > 1) {
            return flags;
        }
        List<CrossingFigure.Flag> apart = new ArrayList<>(flags);
        CrossingFigure.Flag last = apart.remove(apart.size() - 1);
        apart.add(new CrossingFigure.Flag(last.reference(), last.address(), !last.above()));
        return apart;
    }

    private void net(int strand) {
        SchemeDraft.Strand s = draft.strands.get(strand);
        double height = heights.ofNet(strand);
        String name = "line " + s.line().id() + " " + strand;
        List<Net.Meeting> meetings = new ArrayList<>();
        s.meets().forEach(m -> meetings.add(new Net.Meeting(spotNodes.get(m.spot()), m.port())));
        for (int i = 0; i < s.tanks().size(); i++) {
            meetings.add(tank(s.tanks().get(i), name + " tank " + i, s));
        }
        boolean upwards = meetings.isEmpty()
                || s.tanks().isEmpty() && meetings.stream().anyMatch(m -> Net.leavesUpwards(m, height));
        for (int i = 0; i < s.away().size(); i += MOST_ENDS_A_STUB) {
            List<Beyond.Away> ends = s.away().subList(i, Math.min(s.away().size(), i + MOST_ENDS_A_STUB));
            Node node = new Node(name + " stub " + i, stub(ends, s, upwards), upwards ? 1 : 0);
            nodes.add(node);
            branches.put(node, s);
            meetings.add(new Net.Meeting(node, StubFigure.PORT));
        }
        List<Doubts.Doubt> some = doubts.about(s.line().id());
        if (some.isEmpty() || meetings.size() < 2) {
            put(new Net(name, height, meetings), s);
        } else {
            withDoubts(name, height, meetings, some, s);
        }
    }

    private void put(Net net, SchemeDraft.Strand s) {
        if (net.meetings().size() > 1) {
            nets.add(net);
            strands.put(net.name(), s);
        }
    }

    private void withDoubts(
            String name, double height, List<Net.Meeting> meetings, List<Doubts.Doubt> some, SchemeDraft.Strand s) {
        Node mark = new Node(name + " doubt", new DoubtFigure(some), height);
        nodes.add(mark);
        marked.addAll(some);
        boolean fromBelow = Net.leavesUpwards(meetings.get(0), height);
        Net.Meeting near = new Net.Meeting(mark, fromBelow ? DoubtFigure.BELOW : DoubtFigure.ABOVE);
        Net.Meeting far = new Net.Meeting(mark, fromBelow ? DoubtFigure.ABOVE : DoubtFigure.BELOW);
        List<Net.Meeting> others = new ArrayList<>(meetings.subList(1, meetings.size()));
        others.add(far);
        put(new Net(name + " before", height, List.of(meetings.get(0), near)), s);
        put(new Net(name, height, others), s);
    }

    private Net.Meeting tank(End.AtPort end, String name, SchemeDraft.Strand s) {
        Component tank = job.subject().excerpt().parts().stream()
                .filter(c -> c.id().equals(end.component()) && c.kind() == Kind.TANK)
                .findFirst()
                .orElseThrow();
        PortUse use = use(tank, end.port(), s, true);
        PartFigure figure = new PartFigure(
                Symbols.of(tank, List.of(use), stands.of(tank)), partWords.of(tank), Map.of(end.port(), style(s)));
        Node node = new Node(name, figure, 0);
        parts.put(node, tank);
        nodes.add(node);
        return new Net.Meeting(node, end.port());
    }

    private StubFigure stub(List<Beyond.Away> ends, SchemeDraft.Strand s, boolean upwards) {
        TextStack text = new TextStack(STUB_WORDS_PT);
        for (Beyond.Away end : ends) {
            List<Doubts.Doubt> some = end.reference() == null ? List.of() : doubts.about(end.reference());
            marked.addAll(some);
            text.item(end.words() + some.stream().map(d -> " " + d.mark()).collect(Collectors.joining()));
            if (end.caution() != null) {
                text.loud(end.caution());
            }
        }
        return new StubFigure(text, style(s), upwards);
    }
}
