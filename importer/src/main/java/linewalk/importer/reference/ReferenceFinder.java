package linewalk.importer.reference;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import linewalk.drawing.Box;
import linewalk.drawing.Flow;
import linewalk.drawing.Origin;
import linewalk.drawing.Point;
import linewalk.drawing.ReferenceReading;
import linewalk.drawing.ReferenceReading.Evidence;
import linewalk.drawing.ReferenceReading.Says;
import linewalk.drawing.Target;
import linewalk.importer.frame.Frame;
import linewalk.importer.lettering.Label;
import linewalk.importer.lettering.ReferenceGrammar;
import linewalk.importer.lettering.ReferenceGrammar.Parsed;
import linewalk.importer.lettering.SaidReadings;
import linewalk.importer.lettering.TextBlocks;
import linewalk.importer.line.Net;
import linewalk.importer.line.Node;
import linewalk.importer.page.Direction;
import linewalk.importer.symbol.FlagTest;
import linewalk.importer.symbol.NamedFlag;
import linewalk.importer.symbol.Outline;
import linewalk.importer.symbol.Symbols;

/**
 * Labels with evidence to reference candidates. A text alone is not enough: a line ends at it, or at the outline around
 * it.
 */
public final class ReferenceFinder {

    private static final Pattern MATCH_LETTER = Pattern.compile("[A-Z]{1,2}\\d?|\\d{1,4}");

    /** Pipe threads of ISO 228-1 look like a zone and a sheet. */
    private static final Pattern THREAD = Pattern.compile("G ?(?:\\d ?)?[1357]/[248]");

    /** How far a line may stop short of a reference that stands right ahead of it, in text sizes: an arrow may be between. */
    private static final double SHORT_OF = 3.2;

    /** An arrow drawn as an outline is at most this large, in text sizes. */
    private static final double TIP = 2;

    private static final int TIP_CORNERS = 5;

    /** The same for a reference beside its end. */
    private static final double BESIDE = 1.8;

    /** Numbers stand beside all kinds of names: whether they are sheets, the rest of the set must show. */
    private static final double LISTED = 0.4;

    private static final double GLUED = 0.15;

    private final List<Label> labels;
    private final Symbols symbols;
    private final List<Node> nodes;
    private final ReferenceGrammar grammar;
    private final FlowMarks flows;
    private final TextBlocks blocks;
    private final Map<Node, ReferenceReading> at = new IdentityHashMap<>();
    private final List<ReferenceReading> all = new ArrayList<>();
    private final Set<Label> used = new HashSet<>();

    /** Lines of text that together are one candidate. */
    private record Candidate(List<Label> lines, Parsed parsed) {
        Label text() {
            return Label.joined(lines);
        }
    }

    private record Match(Candidate candidate, Node end, double cost) {}

    private ReferenceFinder(
            List<Label> labels, Symbols symbols, List<Net> nets, ReferenceGrammar grammar, FlowMarks flows) {
        this.labels = labels;
        this.symbols = symbols;
        this.nodes = nets.stream().flatMap(n -> n.nodes().stream()).toList();
        this.grammar = grammar;
        this.flows = flows;
        this.blocks = new TextBlocks(labels);
    }

    public static References find(
            List<Label> labels, Frame frame, Symbols symbols, List<Net> nets, ReferenceGrammar grammar) {
        List<Label> inFrame = labels.stream()
                .filter(l -> !frame.labels().contains(l) && frame.inner().contains(l.center()))
                .toList();
        ReferenceFinder f = new ReferenceFinder(inFrame, symbols, nets, grammar, new FlowMarks(symbols.arrows()));
        f.inFlags();
        f.atLineEnds();
        return new References(f.at, f.all, f.used);
    }

    /** Labels that cannot be references. Lines that stop at a reference end there, so it bridges no gap between them. */
    public static List<Label> others(List<Label> labels, ReferenceGrammar grammar) {
        return labels.stream()
                .filter(l -> !reads(l.text(), grammar) && l.words().stream().noneMatch(w -> reads(w.text(), grammar)))
                .toList();
    }

    private static boolean reads(String text, ReferenceGrammar grammar) {
        return !THREAD.matcher(text).matches()
                && grammar.parse(text).filter(p -> p.zoned() || p.words()).isPresent();
    }

    private void inFlags() {
        Set<Outline> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Outline flag : symbols.flags()) {
            if (seen.add(flag)) {
                List<Outline> row = row(flag, seen);
                if (row.size() > 1
                        && row.stream().filter(f -> endAt(f).isPresent()).count() < 2) {
                    addRow(row);
                } else {
                    row.forEach(this::inFlag);
                }
            }
        }
    }

    /** Flags that touch side by side are one reference to several places. */
    private List<Outline> row(Outline first, Set<Outline> seen) {
        List<Outline> row = new ArrayList<>(List.of(first));
        if (zoned(first).isEmpty()) {
            return row;
        }
        for (Outline other : symbols.flags()) {
            boolean touches = row.stream().anyMatch(o -> o.meets(other, symbols.tolerancePt()));
            if (!seen.contains(other) && touches && zoned(other).isPresent()) {
                seen.add(other);
                row.add(other);
            }
        }
        return row;
    }

    private Optional<Parsed> zoned(Outline flag) {
        return FlagTest.parse(grammar, flag, FlagTest.inside(flag, labels)).filter(p -> p.zoned() && p.label() == null);
    }

    private void addRow(List<Outline> row) {
        List<Label> inside = new ArrayList<>();
        List<Target> targets = new ArrayList<>();
        Box box = row.get(0).box();
        Outline met = row.get(0);
        for (Outline o : row) {
            inside.addAll(FlagTest.inside(o, labels));
            targets.addAll(zoned(o).orElseThrow().readings().get(0).targets());
            box = box.union(o.box());
            met = endAt(o).isPresent() ? o : met;
        }
        Parsed all = new Parsed(zoned(met).orElseThrow().form(), List.of(new Says(targets, 1)), null, false, true);
        add(Label.joined(inside), box, all, null, endAt(met).orElse(null), met, EnumSet.of(Evidence.FLAG));
        used.addAll(inside);
    }

    private void inFlag(Outline flag) {
        List<Label> inside = FlagTest.inside(flag, labels);
        if (inside.isEmpty()) {
            symbols.named().stream().filter(n -> n.flag() == flag).findFirst().ifPresent(this::addNamed);
            return;
        }
        Label text = Label.joined(inside);
        Optional<Parsed> parsed = FlagTest.parse(grammar, flag, inside);
        boolean letter = inside.size() == 1 && MATCH_LETTER.matcher(text.text()).matches();
        List<Label> said =
                letter ? FlagTest.said(grammar, flag, FlagTest.outside(labels, symbols.flags()), blocks) : List.of();
        Optional<Label> zone = FlagTest.zoneBeside(flag, inside, labels);
        if (parsed.isPresent() && endAt(flag).isEmpty() && isDetail(flag, inside, parsed.get())) {
            used.addAll(inside);
        } else if (parsed.isPresent()) {
            addFlag(flag, inside, text, parsed.get());
        } else if (!said.isEmpty()) {
            addLetter(flag, inside.get(0), said);
        } else if (zone.isPresent()) {
            addZoned(flag, inside.get(0), zone.get());
        }
    }

    /** A divided bubble at no line's end, or a sheet alone where references name zones: it names a detail or a section. */
    private boolean isDetail(Outline flag, List<Label> inside, Parsed parsed) {
        return flag.circle() && inside.size() > 1
                || !parsed.zoned()
                        && parsed.label() == null
                        && symbols.flags().stream().anyMatch(f -> zoned(f).isPresent());
    }

    private Optional<Node> endAt(Outline flag) {
        return nodes.stream()
                .filter(n -> n.flag() == flag && !n.runs().isEmpty())
                .findFirst();
    }

    private void addFlag(Outline flag, List<Label> inside, Label text, Parsed parsed) {
        Optional<Node> end = endAt(flag);
        Set<Evidence> evidence = EnumSet.of(Evidence.FLAG);
        add(text, text.box().union(flag.box()), parsed, parsed.label(), end.orElse(null), flag, evidence);
        used.addAll(inside);
    }

    /** The sheet stands in the flag, the zone beside it. */
    private void addZoned(Outline flag, Label sheet, Label zone) {
        Label both = Label.joined(List.of(sheet, zone));
        SaidReadings.of(both, t -> grammar.parse(t.replaceFirst(" ", "/")))
                .ifPresent(parsed -> addFlag(flag, List.of(sheet, zone), both, parsed));
    }

    /** A list of sheets without zones: its name tells the mates. */
    private void addNamed(NamedFlag f) {
        List<Target> targets = f.sheets().stream().map(s -> new Target(s, null)).toList();
        Parsed parsed =
                new Parsed("x,9", List.of(new Says(targets, 1)), f.name().text(), false, false);
        Box box = f.list().box().union(f.name().box()).union(f.flag().box());
        Optional<Node> end = endAt(f.flag());
        double likely = f.glued() ? GLUED : end.isPresent() ? LISTED : GLUED;
        add(f.list(), box, parsed, parsed.label(), end.orElse(null), f.flag(), EnumSet.of(Evidence.FLAG), likely);
        labels.stream()
                .filter(l -> l.box().contains(f.list().box())
                        || l.box().contains(f.name().box()))
                .forEach(used::add);
    }

    private void addLetter(Outline flag, Label letter, List<Label> rows) {
        Label said = Label.joined(rows);
        Parsed parsed =
                SaidReadings.of(said, t -> FlagTest.saysSheet(grammar, t)).orElseThrow();
        Label text = Label.joined(List.of(letter, said));
        Set<Evidence> evidence = EnumSet.of(Evidence.FLAG);
        Parsed lettered = new Parsed("A:" + parsed.form(), parsed.readings(), letter.text(), true, parsed.zoned());
        add(
                text,
                text.box().union(flag.box()),
                lettered,
                letter.text(),
                endAt(flag).orElse(null),
                flag,
                evidence);
        used.add(letter);
        used.addAll(rows);
    }

    private void atLineEnds() {
        List<Match> matches = new ArrayList<>();
        List<Node> free = nodes.stream().filter(n -> n.free() || atTip(n)).toList();
        for (Candidate c : candidates()) {
            Label text = c.text();
            for (Node n : free) {
                double cost = n.free() || small(tip(n), text) ? cost(text, n) : Double.MAX_VALUE;
                if (cost < Double.MAX_VALUE) {
                    // two lines read together beat one of them alone
                    matches.add(new Match(c, n, cost - 3 * (c.lines().size() - 1)));
                }
            }
        }
        matches.sort(Comparator.comparingDouble(Match::cost));
        Map<Label, Node> own = new IdentityHashMap<>();
        matches.stream()
                .filter(m -> m.candidate().lines().size() == 1)
                .forEach(m -> own.putIfAbsent(m.candidate().lines().get(0), m.end()));
        matches.removeIf(m -> eachItsOwn(m.candidate(), own));
        for (Match m : matches) {
            if (!at.containsKey(m.end()) && m.candidate().lines().stream().noneMatch(used::contains)) {
                Label text = m.candidate().text();
                Parsed p = m.candidate().parsed();
                add(text, text.box(), p, p.label(), m.end(), null, EnumSet.noneOf(Evidence.class));
                used.addAll(m.candidate().lines());
            }
        }
    }

    /** References side by side, each at a line end of its own, are no text of several lines. */
    private static boolean eachItsOwn(Candidate c, Map<Label, Node> own) {
        Set<Node> ends = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Label l : c.lines()) {
            Node end = own.get(l);
            if (end == null) {
                return false;
            }
            ends.add(end);
        }
        return ends.size() == c.lines().size() && c.lines().size() > 1;
    }

    /** A line that ends at a lone, empty triangle or the like, where no other line does: an arrow drawn as an outline. */
    private boolean atTip(Node n) {
        Outline tip = tip(n);
        return n.runs().size() == 1
                && tip != null
                && tip.corners() <= TIP_CORNERS
                && FlagTest.inside(tip, labels).isEmpty()
                && nodes.stream().noneMatch(o -> o != n && tip(o) == tip);
    }

    private static Outline tip(Node n) {
        if (n.flag() != null) {
            return n.flag();
        }
        boolean lone = n.body() != null
                && n.body().outlines().size() == 1
                && n.body().marks().isEmpty();
        return lone ? n.body().outlines().get(0) : null;
    }

    private static boolean small(Outline tip, Label text) {
        return Math.max(tip.box().widthPt(), tip.box().heightPt()) < TIP * text.sizePt();
    }

    private List<Candidate> candidates() {
        List<Candidate> found = new ArrayList<>();
        for (Label l : labels) {
            if (used.contains(l)
                    || symbols.inTable(l.center())
                    || THREAD.matcher(l.text()).matches()) {
                continue;
            }
            List<Label> lines = new ArrayList<>(List.of(l));
            for (int n = 1; n <= 4; n++) {
                List<Label> block = List.copyOf(lines);
                Label text = Label.joined(block);
                grammar.parse(text.text())
                        .filter(p -> p.zoned() || p.words())
                        .flatMap(p -> SaidReadings.of(text, grammar::parse))
                        .ifPresent(p -> found.add(new Candidate(block, p)));
                Optional<Label> next = blocks.below(lines.get(lines.size() - 1));
                if (next.isEmpty() || used.contains(next.get())) {
                    break;
                }
                lines.add(next.get());
            }
        }
        return found;
    }

    /** In text sizes; the largest double where the line does not end at the text. */
    private double cost(Label text, Node end) {
        double size = text.sizePt();
        double gap = text.box().distancePt(end.place());
        if (gap > SHORT_OF * size) {
            return Double.MAX_VALUE;
        }
        Direction out = end.run().outward(end);
        double ahead = out.ahead(end.place(), text.center());
        Box grown = text.box().grow(0.6 * size);
        double reach = gap + size;
        boolean hits = grown.contains(end.place().plus(out.dx() * reach, out.dy() * reach));
        if (ahead > 0 && hits) {
            return gap / size;
        }
        // the text stands along the last piece of the line
        boolean level = Math.abs(out.dx()) > 0.9;
        double aside = level
                ? Math.max(
                        0,
                        Math.abs(text.center().yPt() - end.place().yPt())
                                - text.box().heightPt() / 2)
                : Math.max(
                        0,
                        Math.abs(text.center().xPt() - end.place().xPt())
                                - text.box().widthPt() / 2);
        return gap < BESIDE * size && aside < 1.2 * size ? 2 + gap / size : Double.MAX_VALUE;
    }

    private void add(Label text, Box box, Parsed parsed, String label, Node end, Outline flag, Set<Evidence> evidence) {
        if (end != null) {
            evidence.add(Evidence.LINE_END);
        }
        add(text, box, parsed, label, end, flag, evidence, confidence(evidence));
    }

    private void add(
            Label text,
            Box box,
            Parsed parsed,
            String label,
            Node end,
            Outline flag,
            Set<Evidence> evidence,
            double confidence) {
        if (parsed.words()) {
            evidence.add(Evidence.WORDS);
        }
        Flow flow = flows.at(end, flag, text);
        if (flow != Flow.UNKNOWN) {
            evidence.add(Evidence.ARROW);
        }
        Point place = text.center();
        String id = "r" + Math.round(place.xPt()) + "-" + Math.round(place.yPt());
        ReferenceReading r = new ReferenceReading(
                id,
                place,
                box,
                text.text(),
                parsed.form(),
                parsed.readings(),
                label,
                flow,
                FlowMarks.byTip(end, flag),
                evidence,
                text.drawn() ? Origin.OCR : Origin.TEXT,
                confidence);
        all.add(r);
        if (end != null) {
            at.put(end, r);
        }
    }

    private static double confidence(Set<Evidence> evidence) {
        if (!evidence.contains(Evidence.LINE_END)) {
            return evidence.contains(Evidence.FLAG) ? 0.5 : 0.2;
        }
        return evidence.contains(Evidence.FLAG) || evidence.contains(Evidence.ARROW) ? 0.98 : 0.95;
    }
}
