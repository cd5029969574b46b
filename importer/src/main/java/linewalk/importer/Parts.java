package linewalk.importer;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import linewalk.drawing.Box;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import linewalk.drawing.Origin;
import linewalk.drawing.PageKey;
import linewalk.drawing.Point;
import linewalk.drawing.Port;
import linewalk.importer.kind.Contact;
import linewalk.importer.kind.KindReader;
import linewalk.importer.lettering.Label;
import linewalk.importer.line.Net;
import linewalk.importer.line.Node;
import linewalk.importer.line.Run;
import linewalk.importer.page.Segment;
import linewalk.importer.symbol.Body;
import linewalk.importer.symbol.Designations;
import linewalk.importer.symbol.Designations.Named;
import linewalk.importer.valve.Valves;

/** Named figures to components with ports where lines meet them. */
final class Parts {

    private static final Pattern PORT_NAME = Pattern.compile("[A-Z]\\d?");
    private static final Pattern SETTING = Pattern.compile(
            "(?i).*\\d\\s*(?:bar|psi|mpa|kpa|l/min|lpm|gpm|cm3|cc|kw|hp|l|gal|um|\u00b5m|micron)\\b.*|\\d+(?:/\\d+)? ?x ?\\d+.*");

    /** How a shut-off valve stands. */
    private static final Pattern STATE = Pattern.compile(
            "(?i)(?:normally|norm\\.?|locked|held|kept) (?:closed|shut|open)\\b.*|n ?[./]? ?[co](?:\\.|\\b).*");

    /** How near to the port its letter stands, in text sizes. */
    private static final double LETTER = 1.7;

    private static final int WORDS = 3;

    /** Confidence of a port whose line has no other end. */
    private static final double ALONE = 0.85;

    private final PageKey page;
    private final List<Label> labels;
    private final double tolPt;
    private final Ids ids;
    private final Valves valves;
    private final Map<Body, Named> named;
    private final Map<Body, Body> partOf;
    private final KindReader kinds;
    private final Map<Body, List<Node>> contacts = new IdentityHashMap<>();
    private final Map<Node, Double> confidence = new IdentityHashMap<>();
    private final Set<Node> toTank = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Map<Node, Port> ports = new IdentityHashMap<>();
    private final Map<Node, String> owners = new IdentityHashMap<>();

    Parts(
            PageKey page,
            List<Label> labels,
            double tolPt,
            Ids ids,
            Map<Body, Named> named,
            Map<Body, Body> partOf,
            List<Net> nets,
            Set<Node> references,
            KindReader kinds,
            Valves valves) {
        this.page = page;
        this.valves = valves;
        this.labels = labels;
        this.tolPt = tolPt;
        this.ids = ids;
        this.named = named;
        this.partOf = partOf;
        this.kinds = kinds;
        for (Net n : nets) {
            if (n.contacts().stream().anyMatch(c -> c.body().reservoir())) {
                toTank.addAll(n.contacts());
            }
            for (Node c : n.contacts()) {
                confidence.put(c, leadsOn(n, references) ? n.confidence() : Math.min(n.confidence(), ALONE));
                Body body = partOf.getOrDefault(c.body(), c.body());
                contacts.computeIfAbsent(body, b -> new ArrayList<>()).add(c);
            }
        }
    }

    /** A line with a second end; one that leads nowhere may be no line. */
    private static boolean leadsOn(Net n, Set<Node> references) {
        return n.contacts().size() > 1 || n.nodes().stream().anyMatch(references::contains);
    }

    List<Component> components(List<Body> bodies) {
        List<Component> out = new ArrayList<>();
        for (Body b : bodies) {
            if (named.containsKey(b) && !cell(b) && !table(b) || b.reservoir() && contacts.containsKey(b)) {
                out.add(component(b));
            }
        }
        return out;
    }

    /** A box around a word that no line meets is a cell of a table or a note. */
    private boolean cell(Body b) {
        return !contacts.containsKey(b)
                && b.marks().isEmpty()
                && b.outlines().size() == 1
                && b.outlines().get(0).corners() == 4
                && b.covers(named.get(b).label().center());
    }

    /** Boxes full of words are rows of a table; a symbol holds letters at most. */
    private boolean table(Body b) {
        return labels.stream()
                        .filter(l -> l.text().length() > 1 && b.covers(l.center()))
                        .limit(WORDS)
                        .count()
                == WORDS;
    }

    Optional<Port> port(Node contact) {
        return Optional.ofNullable(ports.get(contact));
    }

    String owner(Node contact) {
        return owners.get(contact);
    }

    private Component component(Body b) {
        Optional<Named> name = Optional.ofNullable(named.get(b));
        String tag = b.reservoir()
                ? tankTag(name)
                : Designations.of(name.orElseThrow().label());
        Point center = b.core().center();
        String id = ids.of("c", center);
        List<Port> found = ports(b, id);
        double confidence = name.map(Named::confidence).orElse(0.9);
        Optional<KindReader.Read> read = b.reservoir() ? Optional.empty() : kinds.read(figure(b), met(b), tag);
        Kind kind =
                b.reservoir() ? Kind.TANK : read.map(KindReader.Read::surely).orElse(Kind.UNKNOWN);
        Optional<Label> label = name.map(Named::label);
        Optional<String> state = kind == Kind.SHUT_OFF_VALVE ? label.flatMap(l -> said(l, STATE)) : Optional.empty();
        String setting = state.or(() -> label.flatMap(l -> said(l, SETTING))).orElse(null);
        Component c = new Component(
                id,
                tag,
                page,
                center,
                figure(b).stream().map(Body::box).reduce(Box::union).orElseThrow(),
                kind,
                setting,
                Origin.TEXT,
                confidence,
                found,
                read.map(KindReader.Read::positions).orElse(List.of()),
                read.map(KindReader.Read::kind).orElse(null));
        return valves.read(c, b);
    }

    /** The body and those that are part of it. */
    private List<Body> figure(Body b) {
        List<Body> figure = new ArrayList<>(List.of(b));
        partOf.forEach((part, whole) -> {
            if (whole == b) {
                figure.add(part);
            }
        });
        return figure;
    }

    /** Its ports with the lines that meet it there: dashed where all of them are. */
    private List<Contact> met(Body b) {
        Map<Port, Contact> met = new LinkedHashMap<>();
        for (Node c : contacts.getOrDefault(b, List.of())) {
            Port port = ports.get(c);
            met.merge(
                    port,
                    new Contact(port, dashed(c), toTank.contains(c)),
                    (x, y) -> new Contact(port, x.dashed() && y.dashed(), x.toTank() || y.toTank()));
        }
        return List.copyOf(met.values());
    }

    /** Most of the way to where the line meets anything; the last dash may look solid. */
    private static boolean dashed(Node contact) {
        List<Run> way = contact.runs().size() == 1 ? Net.leg(contact) : contact.runs();
        double whole = way.stream().mapToDouble(Run::lengthPt).sum();
        double broken = way.stream()
                .filter(r -> !r.dash().solid())
                .mapToDouble(Run::lengthPt)
                .sum();
        return broken > whole / 2;
    }

    private static String tankTag(Optional<Named> name) {
        return name.map(n -> n.label().text()).filter(Designations::looksLike).orElse("TANK");
    }

    private List<Port> ports(Body b, String id) {
        List<Port> found = new ArrayList<>();
        for (Node c : contacts.getOrDefault(b, List.of())) {
            Point at = entrance(b, c);
            Port port = found.stream()
                    .filter(p -> p.place().distancePt(at) < 3 * tolPt)
                    .findFirst()
                    .orElse(null);
            if (port == null) {
                String portId = id + ":" + Math.round(at.xPt()) + "-" + Math.round(at.yPt());
                port = new Port(portId, letter(b, at).orElse(null), at, confidence.get(c));
                found.add(port);
            }
            ports.put(c, port);
            owners.put(c, id);
        }
        return found;
    }

    /** A pipe that stands in a reservoir enters it where it passes the bottom or a side; from above, it is where it ends. */
    private Point entrance(Body b, Node c) {
        if (!b.reservoir() || c.runs().size() != 1) {
            return c.place();
        }
        List<Segment> pipe = Segment.of(c.run().points());
        return b.marks().stream()
                .filter(m -> m.box().y1Pt() > b.box().y1Pt() - tolPt)
                .flatMap(m -> Segment.of(m.points()).stream())
                .filter(side -> side.box().y1Pt() > b.box().y0Pt() + tolPt)
                .flatMap(side -> pipe.stream().map(side::crossing).filter(Objects::nonNull))
                .findFirst()
                .orElse(c.place());
    }

    /** The letter printed beside the port; V2 may be the name of a valve. */
    private Optional<String> letter(Body b, Point at) {
        return labels.stream()
                .filter(l -> PORT_NAME.matcher(l.text()).matches())
                .filter(l -> named.values().stream().noneMatch(n -> n.label() == l))
                .filter(l -> l.box().distancePt(at) < LETTER * l.sizePt() && !b.covers(l.center()))
                .min(Comparator.comparingDouble(l -> l.box().distancePt(at)))
                .map(Label::text);
    }

    /** What is said behind the designation, in its text or apart from it, or right below. */
    private Optional<String> said(Label tag, Pattern what) {
        String behind = tag.text().substring(Designations.of(tag).length()).strip();
        if (what.matcher(behind).matches()) {
            return Optional.of(behind);
        }
        return labels.stream()
                .filter(l -> l != tag && what.matcher(l.text()).matches())
                .filter(l -> l.box().distancePt(tag.box()) < 1.6 * tag.sizePt())
                .min(Comparator.comparingDouble(l -> l.box().distancePt(tag.box())))
                .map(Label::text);
    }
}
