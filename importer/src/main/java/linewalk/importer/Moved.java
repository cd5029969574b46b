package linewalk.importer;

import java.util.List;
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
import linewalk.importer.page.PageGeometry;

/** A reading of an upright page, moved to where its things lie on the page as scanned. */
record Moved(Affine to, PageGeometry geometry) {

    /** Kinds of scans prove right less often than those of vector pages: none is told as sure. */
    private static final double MOST_SURE = 0.75;

    SheetReading of(SheetReading r) {
        ScannedEnds ends = new ScannedEnds(r);
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
                r.lines().stream().map(l -> line(l, ends)).toList(),
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

    private Line line(Line l, ScannedEnds ends) {
        return new Line(
                l.id(),
                l.page(),
                l.kind(),
                l.label(),
                l.size(),
                Math.min(ends.confidence(l), l.confidence()),
                l.ends().stream().map(this::end).toList(),
                l.runs().stream()
                        .map(run -> run.stream().map(this::at).toList())
                        .toList());
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
