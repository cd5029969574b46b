package linewalk.importer;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import linewalk.drawing.Affine;
import linewalk.drawing.Box;
import linewalk.drawing.Component;
import linewalk.drawing.Enclosure;
import linewalk.drawing.Enclosure.FacePort;
import linewalk.drawing.End;
import linewalk.drawing.Finding;
import linewalk.drawing.Kind;
import linewalk.drawing.KindReading;
import linewalk.drawing.KindReading.Choice;
import linewalk.drawing.Line;
import linewalk.drawing.Point;
import linewalk.drawing.Port;
import linewalk.drawing.ReferenceReading;
import linewalk.drawing.SheetReading;
import linewalk.drawing.ZoneGrid;
import linewalk.importer.kind.KindReader;
import linewalk.importer.page.PageGeometry;

/** A reading of an upright page, moved to where its things lie on the page as scanned. */
record Moved(Affine to, PageGeometry geometry) {

    /** Kinds of scans prove right less often than those of vector pages: none is told as sure. */
    private static final double MOST_SURE = 0.75;

    /** So do lines, but for those of which every end was understood. */
    private static final double LINE_DOUBTFUL = 0.75;

    private static final double LINE_SURE = 0.92;

    private static final double REFERENCE_SURE = 0.9;

    /** How far off a part's box its ports may lie, in its shorter sides. */
    private static final double RIM = 0.1;

    SheetReading of(SheetReading r) {
        return new SheetReading(
                r.page(),
                geometry.widthPt(),
                geometry.heightPt(),
                geometry.toPage(),
                r.names(),
                r.sheetCount(),
                r.drawingNumber(),
                r.title(),
                r.revision(),
                r.grid() == null ? null : grid(r.grid()),
                r.references().stream().map(this::reference).toList(),
                r.components().stream().map(this::component).toList(),
                r.enclosures().stream().map(this::enclosure).toList(),
                r.lines().stream().map(l -> line(l, r)).toList(),
                r.doubts().stream().map(this::finding).toList());
    }

    private Point at(Point p) {
        return p == null ? null : to.apply(p);
    }

    private Box at(Box b) {
        return b == null ? null : to.apply(b);
    }

    private ZoneGrid grid(ZoneGrid g) {
        return new ZoneGrid(g.columns(), g.rows(), g.printed(), to.inverse());
    }

    private ReferenceReading reference(ReferenceReading r) {
        return new ReferenceReading(
                r.id(),
                at(r.place()),
                at(r.box()),
                r.text(),
                r.form(),
                r.readings(),
                r.label(),
                r.flow(),
                r.tip(),
                r.evidence(),
                r.origin(),
                r.confidence());
    }

    private Component component(Component c) {
        List<Port> ports = c.ports().stream()
                .map(p -> new Port(p.id(), p.name(), at(p.place()), p.confidence()))
                .toList();
        KindReading symbol = c.symbol() == null ? null : doubted(c.symbol());
        return new Component(
                c.id(),
                c.tag(),
                c.page(),
                at(c.place()),
                at(c.box()),
                c.kind(),
                c.setting(),
                c.origin(),
                Math.min(c.confidence(), sure(c.kind(), symbol)),
                ports,
                c.positions(),
                symbol);
    }

    /** A part is no surer than its kind; one whose kind is not told promises none. */
    private static double sure(Kind kind, KindReading symbol) {
        return kind == null || kind == Kind.UNKNOWN ? 1 : symbol == null ? MOST_SURE : symbol.likelihood();
    }

    private static KindReading doubted(KindReading symbol) {
        List<Choice> choices = symbol.choices().stream()
                .map(c -> new Choice(c.kind(), Math.min(MOST_SURE, c.likelihood())))
                .toList();
        return new KindReading(choices, symbol.evidence());
    }

    private Enclosure enclosure(Enclosure e) {
        List<FacePort> ports = e.ports().stream()
                .map(p -> new FacePort(p.name(), at(p.place())))
                .toList();
        return new Enclosure(e.tag(), e.page(), at(e.box()), ports);
    }

    private Line line(Line l, SheetReading r) {
        return new Line(
                l.id(),
                l.page(),
                l.kind(),
                l.label(),
                l.size(),
                Math.min(understood(l, r) ? LINE_SURE : LINE_DOUBTFUL, l.confidence()),
                l.ends().stream().map(this::end).toList(),
                l.runs().stream()
                        .map(run -> run.stream().map(this::at).toList())
                        .toList());
    }

    /** It ends in no more than one place of each part, at ports that were made out, and nowhere in the open. */
    private static boolean understood(Line l, SheetReading r) {
        Set<String> parts = new HashSet<>();
        for (End e : l.ends()) {
            boolean good = e instanceof End.AtPort p && parts.add(p.component()) && known(p, r)
                    || e instanceof End.AtReference f && read(f, r);
            if (!good) {
                return false;
            }
        }
        return l.ends().size() > 1;
    }

    /** Read well, and its zone is one that sheets of this set have: they are divided alike, but for a few. */
    private static boolean read(End.AtReference at, SheetReading r) {
        ReferenceReading f = r.references().stream()
                .filter(x -> x.id().equals(at.reference()))
                .findFirst()
                .orElseThrow();
        boolean zoned = r.grid() == null
                || f.readings().isEmpty()
                || f.readings().get(0).targets().stream()
                        .allMatch(t -> t.zone() == null || r.grid().has(t.zone()));
        return zoned && f.confidence() >= REFERENCE_SURE;
    }

    /** At the part's outline, and the port has its letter beside it, or the symbol was made out. */
    private static boolean known(End.AtPort at, SheetReading r) {
        Component c = r.components().stream()
                .filter(x -> x.id().equals(at.component()))
                .findFirst()
                .orElseThrow();
        double rim = RIM * Math.min(c.box().widthPt(), c.box().heightPt());
        if (!c.box().grow(rim).contains(at.place())) {
            return false;
        }
        boolean lettered = c.ports().stream().anyMatch(p -> p.id().equals(at.port()) && p.name() != null);
        boolean explained = c.symbol() == null || !c.symbol().evidence().contains(KindReader.UNEXPLAINED);
        return lettered || c.kind() != Kind.UNKNOWN && explained;
    }

    private End end(End e) {
        if (e instanceof End.AtPort p) {
            return new End.AtPort(p.component(), p.port(), at(p.place()));
        }
        return e instanceof End.AtReference r
                ? new End.AtReference(r.reference(), at(r.place()))
                : new End.Open(at(e.place()));
    }

    private Finding finding(Finding f) {
        return new Finding(f.rule(), f.page(), at(f.place()), f.references(), f.components(), f.message(), f.remedy());
    }
}
