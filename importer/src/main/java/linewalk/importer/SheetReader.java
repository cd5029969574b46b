package linewalk.importer;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import linewalk.drawing.Affine;
import linewalk.drawing.Finding;
import linewalk.drawing.PageKey;
import linewalk.drawing.Rule;
import linewalk.drawing.SetSettings;
import linewalk.drawing.SheetReading;
import linewalk.drawing.UserError;
import linewalk.importer.frame.Frame;
import linewalk.importer.frame.FrameFinder;
import linewalk.importer.frame.TitleBlock;
import linewalk.importer.frame.TitleBlockFinder;
import linewalk.importer.kind.KindReader;
import linewalk.importer.lettering.Label;
import linewalk.importer.lettering.LabelBuilder;
import linewalk.importer.lettering.ReferenceGrammar;
import linewalk.importer.line.Bypasses;
import linewalk.importer.line.Net;
import linewalk.importer.line.NetworkBuilder;
import linewalk.importer.line.NotLines;
import linewalk.importer.ocr.LetterReader;
import linewalk.importer.page.MarkCollector;
import linewalk.importer.page.Marks;
import linewalk.importer.page.PageGeometry;
import linewalk.importer.page.Segment;
import linewalk.importer.page.WholeStrokes;
import linewalk.importer.reference.LineLabels;
import linewalk.importer.reference.ReferenceFinder;
import linewalk.importer.reference.References;
import linewalk.importer.scan.PageRaster;
import linewalk.importer.scan.ScanReader;
import linewalk.importer.stroke.LetterBook;
import linewalk.importer.stroke.StrokeLettering;
import linewalk.importer.symbol.BallSprings;
import linewalk.importer.symbol.Body;
import linewalk.importer.symbol.Designations;
import linewalk.importer.symbol.Designations.Named;
import linewalk.importer.symbol.FlagTest;
import linewalk.importer.symbol.NearRings;
import linewalk.importer.symbol.SymbolFinder;
import linewalk.importer.symbol.Symbols;
import linewalk.importer.valve.Valves;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/** One page to a reading: marks, frame, lettering, symbols, lines, references, in this order. One a thread. */
final class SheetReader implements AutoCloseable {

    private final ReferenceGrammar grammar;
    private final LetterReader letters = LetterReader.lazy();
    private final StrokeLettering lettering;
    private boolean whole;

    /** @param book what drawn letters look like, asked for at the first page that has some */
    SheetReader(SetSettings settings, Supplier<LetterBook> book) {
        grammar = new ReferenceGrammar(settings.patterns());
        lettering = new StrokeLettering(letters, book);
    }

    /** @param index of the page, from 0 */
    SheetReading read(PDDocument document, int index, PageKey key) throws IOException {
        PDPage page = document.getPage(index);
        PageGeometry geometry = PageGeometry.of(page);
        whole = true;
        try {
            Marks painted = MarkCollector.collect(page, geometry);
            Optional<Double> pxPerPt = PageRaster.resolution(painted);
            if (pxPerPt.isPresent()) {
                return scan(PageRaster.of(document, index, pxPerPt.get()), geometry, key);
            }
            Lettered drawn = lettered(painted, key);
            return read(drawn, WholeStrokes.of(drawn.marks()), geometry, key, false);
        } catch (LetterReader.Missing e) {
            whole = false;
            return unread(geometry, key, e.getMessage());
        } catch (MarkCollector.TooDense | ScanReader.Unreadable e) {
            return unread(geometry, key, e.getMessage());
        } catch (UserError e) {
            throw e;
        } catch (RuntimeException e) {
            // no page stops the others
            whole = false;
            return unread(geometry, key, "an error of the program itself; please report it: " + where(e));
        }
    }

    private SheetReading scan(PageRaster raster, PageGeometry geometry, PageKey key) throws ScanReader.Unreadable {
        ScanReader.Upturned page = new ScanReader(raster.grey(), raster.pxPerPt(), letters, this::word).read();
        Marks marks = page.marks();
        PageGeometry upright = new PageGeometry(marks.widthPt(), marks.heightPt(), Affine.IDENTITY, Affine.IDENTITY);
        Marks whole = NearRings.closed(BallSprings.whole(WholeStrokes.of(marks)));
        SheetReading reading = read(new Lettered(marks, List.of()), whole, upright, key, true);
        return new Moved(page.toDisplay(), geometry).of(reading);
    }

    private boolean word(String text) {
        return Designations.looksLike(text)
                || grammar.parse(text).isPresent()
                || TitleBlockFinder.numbers(text)
                || Designations.isCoil(text);
    }

    /** False where the last page was read without its letters, for want of what reads them: not to be kept. */
    boolean whole() {
        return whole;
    }

    @Override
    public void close() {
        letters.close();
    }

    /** @param doubts why lettering could not be read */
    private record Lettered(Marks marks, List<Finding> doubts) {}

    private Lettered lettered(Marks painted, PageKey key) {
        try {
            return new Lettered(lettering.read(painted), List.of());
        } catch (LetterReader.Missing e) {
            whole = false;
            Finding doubt = new Finding(
                    Rule.UNREAD,
                    key,
                    null,
                    List.of(),
                    List.of(),
                    "the lettering of this page is drawn and was not read: " + e.getMessage(),
                    "read it on another machine, or tag it by hand");
            return new Lettered(painted, List.of(doubt));
        }
    }

    /** What went wrong, and where: "java.lang.NullPointerException at linewalk.importer.Ids.of(Ids.java:12)". */
    private static String where(RuntimeException e) {
        return e
                + Stream.of(e.getStackTrace())
                        .filter(f -> f.getClassName().startsWith("linewalk"))
                        .findFirst()
                        .map(f -> " at " + f)
                        .orElse("");
    }

    /** An empty sheet and the reason; part of a page would be taken for all of it. */
    private static SheetReading unread(PageGeometry geometry, PageKey key, String why) {
        Finding doubt = new Finding(
                Rule.UNREAD,
                key,
                null,
                List.of(),
                List.of(),
                "this page was not read: " + why,
                "export or scan it again, or tag it by hand");
        return new SheetReading(
                key,
                geometry.widthPt(),
                geometry.heightPt(),
                geometry.toPage(),
                List.of(),
                null,
                null,
                null,
                null,
                null,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(doubt));
    }

    private SheetReading read(Lettered lettered, Marks marks, PageGeometry geometry, PageKey key, boolean scanned) {
        List<Label> labels = LabelBuilder.labels(marks.glyphs(), marks.strokes());
        List<Segment> straight = Segment.straightOf(marks.strokes());
        Frame frame = FrameFinder.find(labels, straight, marks.widthPt(), marks.heightPt());
        TitleBlock title = TitleBlockFinder.find(labels, straight, marks.widthPt(), marks.heightPt());
        Symbols symbols = SymbolFinder.find(marks, labels, frame, new FlagTest(grammar));
        List<Label> texts = ReferenceFinder.others(labels, grammar);
        List<Label> maybe = labels.stream().filter(l -> !texts.contains(l)).toList();
        List<Net> nets = NetworkBuilder.build(symbols, marks.fills(), texts, maybe);
        // wherever the page prints its own drawing number, such as A400-C2, it leads nowhere
        List<Label> leading = labels.stream()
                .filter(l -> !l.text().equals(title.drawingNumber()))
                .toList();
        References references = ReferenceFinder.find(leading, frame, symbols, nets, grammar);
        List<Net> lines =
                new NotLines(symbols.tolerancePt(), references.at().keySet(), symbols.arrows(), labels).without(nets);

        Set<Label> taken = new HashSet<>(references.used());
        taken.addAll(frame.labels());
        taken.addAll(title.labels());
        LineLabels numbers = new LineLabels(lines, labels, taken, symbols);
        taken.addAll(numbers.used());
        Map<Body, Named> named = Designations.assign(symbols.bodies(), labels, taken, symbols);
        Map<Body, Body> partOf = new IdentityHashMap<>();
        Set<Body> numbered = Designations.numbered(named);
        Bypasses.nameMain(lines, named, numbered);
        lines = Bypasses.merge(lines, named.keySet(), numbered, partOf);
        named.keySet().removeAll(partOf.keySet());
        lines = Probes.without(Couplings.merge(lines, named, partOf), named);

        named.values().forEach(n -> taken.add(n.label()));
        Valves valves = new Valves(lettered.marks(), marks, symbols.leaders(), labels, taken, symbols.tolerancePt());
        Ids ids = new Ids();
        Parts parts = new Parts(
                key,
                labels,
                symbols.tolerancePt(),
                ids,
                named,
                partOf,
                lines,
                references.at().keySet(),
                new KindReader(marks, labels, symbols, named.keySet(), scanned),
                valves);
        Assembly assembly = new Assembly(key, ids, parts, references, numbers, symbols.tolerancePt());
        List<Finding> doubts = new ArrayList<>(doubts(key, lines, named.keySet()));
        List<linewalk.drawing.Component> components = parts.components(symbols.bodies());
        doubts.addAll(valves.doubts());
        doubts.addAll(lettered.doubts());
        Enclosures enclosures = new Enclosures(key, labels, taken, lines);
        return new SheetReading(
                key,
                geometry.widthPt(),
                geometry.heightPt(),
                geometry.toPage(),
                title.names(),
                title.sheetCount(),
                title.drawingNumber(),
                title.title(),
                title.revision(),
                frame.grid(),
                assembly.references(lines),
                components,
                symbols.enclosures().stream().map(enclosures::of).toList(),
                assembly.lines(lines, components),
                doubts);
    }

    /** Doubts of nets that reach a part or a flag; rulings that meet crosswise in a table are nobody's. */
    private static List<Finding> doubts(PageKey key, List<Net> lines, Set<Body> named) {
        return lines.stream()
                .filter(n -> n.nodes().stream().anyMatch(x -> x.flag() != null || named.contains(x.body())))
                .flatMap(n -> n.doubts().stream())
                .map(p -> new Finding(
                        Rule.DOUBTFUL_JOIN,
                        key,
                        p,
                        List.of(),
                        List.of(),
                        "four line ends meet here without a dot: they may cross or join",
                        "say which with a join tag"))
                .toList();
    }
}
