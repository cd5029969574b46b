package linewalk.importer.symbol;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.importer.frame.Frame;
import linewalk.importer.lettering.Label;
import linewalk.importer.page.Fill;
import linewalk.importer.page.Marks;
import linewalk.importer.page.Near;
import linewalk.importer.page.Segment;
import linewalk.importer.page.Stroke;

/**
 * Closed outlines and motifs claim their strokes.
 *
 * <p>Needs the page's marks, labels and frame. Leaves every stroke in one place: the figure of a part, a flag, an
 * enclosure, a table, the frame, or line work. Order: tables, enclosures and port marks, flags, figures of touching
 * outlines, reservoirs, then the small strokes that belong to figures. The clouds and marks of revisions are left out.
 */
public final class SymbolFinder {

    /** A closed outline that spans more of the sheet than this is a border or a room, no symbol. */
    private static final double LARGEST = 0.4;

    /** A chain outline much larger than what it holds encloses several parts. */
    private static final double ENCLOSES = 0.13;

    private static final Pattern WORD = Pattern.compile("\\p{L}{3,}");

    private final Marks marks;
    private final List<Stroke> strokes;
    private final List<Label> labels;
    private final Frame frame;
    private final double tolPt;
    private final Set<Stroke> left = Collections.newSetFromMap(new IdentityHashMap<>());

    private SymbolFinder(Marks marks, List<Label> labels, Frame frame) {
        this.marks = marks;
        this.labels = labels;
        this.frame = frame;
        this.tolPt = marks.tolerancePt();
        Set<Stroke> clouds = Clouds.find(marks.strokes(), tolPt);
        List<Stroke> drawn =
                marks.strokes().stream().filter(s -> !clouds.contains(s)).toList();
        this.strokes = new ArrayList<>(OpenBoxes.close(new Loops(tolPt, marks.widthPt()).close(drawn), tolPt));
    }

    public static Symbols find(Marks marks, List<Label> labels, Frame frame, FlagTest flags) {
        return new SymbolFinder(marks, labels, frame).find(flags);
    }

    private Symbols find(FlagTest flagTest) {
        List<Box> tables = Tables.find(Segment.straightOf(strokes), labels);
        Near<Label> lettering = new Near<>(labels, Label::box);
        Near<Fill> dots =
                new Near<>(marks.fills().stream().filter(f -> f.isDot(tolPt)).toList(), Fill::box);
        for (Stroke s : strokes) {
            if (drawn(s)
                    && !outlinesLetters(s, lettering)
                    && !isRim(s, dots)
                    && tables.stream().noneMatch(t -> t.grow(tolPt).contains(s.box()))) {
                left.add(s);
            }
        }
        ArrowheadFinder arrows = new ArrowheadFinder(inOrder(), marks.fills(), tolPt);
        left.removeAll(arrows.strokes());
        strokes.addAll(arrows.shafts());
        left.addAll(arrows.shafts());
        List<Outline> closed = closedOutlines();
        List<Outline> tanks = closed.stream()
                .filter(o -> ReservoirFinder.isClosed(o, labels, strokes))
                .toList();
        take(closed, tanks);
        SquareRows rows = new SquareRows(closed, Segment.straightOf(strokes), tolPt);
        List<Outline> enclosing = closed.stream()
                .filter(o -> encloses(o) || enclosesOne(o, closed) || enclosesRow(o, rows) || facedWithPorts(o, closed))
                .toList();
        closed.removeAll(enclosing);
        left.removeAll(strokes(enclosing));
        left.removeIf(s -> s.dash().chain() && !s.closed());
        List<Outline> portMarks =
                closed.stream().filter(o -> onFace(o, enclosing)).toList();
        take(closed, portMarks);
        List<Outline> detail = closed.stream()
                .filter(o -> !o.stroke().dash().solid() && o.stroke().curved())
                .toList();
        take(closed, detail);
        take(closed, NamePlates.find(closed, labels, inOrder(), tolPt));
        take(closed, RevisionMarks.find(closed, labels, inOrder(), tolPt));
        List<Outline> flags = flagTest.flags(closed, labels, strokes, tolPt);
        take(closed, flags);
        flags = outer(flags);
        List<NamedFlag> named = FlagTest.named(closed, labels, marks.glyphs());
        List<Outline> empty = named.stream().map(NamedFlag::flag).toList();
        take(closed, empty);
        flags.addAll(empty);
        flags.addAll(flagTest.brackets(inOrder(), labels, tolPt));
        List<Outline> around = List.copyOf(flags);
        left.removeIf(s -> around.stream().anyMatch(f -> f.box().grow(tolPt).contains(s.box())));
        closed.addAll(Throttles.find(inOrder(), tolPt));
        closed.addAll(Brackets.find(inOrder(), tolPt));
        PaintedBows.find(marks.fills(), tolPt).stream()
                .filter(b -> closed.stream()
                        .noneMatch(o -> o.box().grow(tolPt).contains(b.box())
                                && b.box().grow(tolPt).contains(o.box())))
                .toList()
                .forEach(closed::add);
        Balloons balloons = new Balloons(flags, inOrder(), labels, tolPt);
        closed.addAll(new Hoses(inOrder(), labels, closed, balloons, dots, tolPt).find());
        left.removeAll(balloons.intoOutlines(closed, tolPt));
        List<Stroke> remaining = inOrder();
        List<Box> tankNames = labels.stream()
                .filter(l -> Designations.isReservoir(l.text()))
                .map(Label::box)
                .toList();
        FigureFinder figures = new FigureFinder(
                closed, tanks, tankNames, flags, remaining, balloons.leaders(arrows.found(), tolPt), tolPt);
        List<Body> bodies = figures.find();
        return new Symbols(
                bodies,
                flags,
                named,
                enclosing.stream().map(Outline::box).toList(),
                portMarks,
                tables,
                arrows.found(),
                figures.rest(),
                balloons,
                tolPt);
    }

    /** Bold lettering is often drawn by outlining the letters. */
    private static boolean outlinesLetters(Stroke s, Near<Label> lettering) {
        Box b = s.box();
        return s.closed()
                && lettering.touching(b).stream()
                        .anyMatch(l -> l.box().grow(0.15 * l.sizePt()).contains(b));
    }

    /** The edge of a join dot, drawn with a pen of its own. */
    private boolean isRim(Stroke s, Near<Fill> dots) {
        return s.closed()
                && dots.touching(s.box()).stream()
                        .anyMatch(f -> f.box().grow(tolPt).contains(s.box())
                                && s.box().grow(tolPt).contains(f.box()));
    }

    /** A flag drawn with a double line is one. */
    private static List<Outline> outer(List<Outline> flags) {
        return new ArrayList<>(flags.stream()
                .filter(f -> flags.stream()
                        .noneMatch(o -> o != f
                                && o.box().contains(f.box())
                                && (!f.box().contains(o.box()) || flags.indexOf(o) < flags.indexOf(f))))
                .toList());
    }

    /** What is left, in drawing order. */
    private List<Stroke> inOrder() {
        return strokes.stream().filter(left::contains).toList();
    }

    private void take(List<Outline> closed, List<Outline> taken) {
        closed.removeAll(taken);
        left.removeAll(strokes(taken));
    }

    private static List<Stroke> strokes(List<Outline> outlines) {
        return outlines.stream().map(Outline::stroke).toList();
    }

    /** Inside the frame and no border. */
    private boolean drawn(Stroke s) {
        Box b = s.box();
        Box inner = frame.inner();
        boolean within = b.x1Pt() > inner.x0Pt() + tolPt
                && b.x0Pt() < inner.x1Pt() - tolPt
                && b.y1Pt() > inner.y0Pt() + tolPt
                && b.y0Pt() < inner.y1Pt() - tolPt;
        boolean border = s.closed() && b.widthPt() > 0.75 * marks.widthPt() && b.heightPt() > 0.7 * marks.heightPt();
        // a side of the frame is drawn on its own, or together with others
        boolean onFrame = frame.grid() != null
                && s.points().stream().noneMatch(inner.grow(-tolPt)::contains)
                && Segment.straightOf(List.of(s)).stream().allMatch(x -> x.horizontal() || x.vertical())
                && (b.widthPt() > 0.5 * marks.widthPt() || b.heightPt() > 0.5 * marks.heightPt());
        return within && !border && !onFrame && s.lengthPt() > 0.3;
    }

    private List<Outline> closedOutlines() {
        List<Outline> closed = new ArrayList<>();
        for (Stroke s : strokes) {
            if (left.contains(s) && s.closed() && s.points().size() > 2) {
                closed.add(Outline.of(s));
            }
        }
        return closed;
    }

    private boolean encloses(Outline o) {
        Box b = o.box();
        boolean large = b.widthPt() > LARGEST * marks.widthPt() || b.heightPt() > LARGEST * marks.heightPt();
        boolean broken = !o.stroke().dash().solid() && !o.stroke().curved();
        double share = Math.max(b.widthPt() / marks.widthPt(), b.heightPt() / marks.heightPt());
        long titled = labels.stream()
                .filter(l -> b.contains(l.center()) && Designations.looksLike(l.text()))
                .count();
        return large || broken && (share > ENCLOSES || titled > 1 || worded(b)) || titled > 2 && o.rectangle();
    }

    /** A title such as BLOCK B2 stands inside; within a symbol there are letters at most. */
    private boolean worded(Box b) {
        return labels.stream()
                .anyMatch(l -> b.contains(l.box()) && WORD.matcher(l.text()).find());
    }

    /** A chain outline around one part, which is drawn inside together with its designation. */
    private boolean enclosesOne(Outline o, List<Outline> closed) {
        Box b = o.box();
        return o.stroke().dash().chain()
                && o.rectangle()
                && labels.stream().anyMatch(l -> b.contains(l.center()) && Designations.looksLike(l.text()))
                && closed.stream().anyMatch(part -> part.stroke().dash().solid() && isWithin(part.box(), b));
    }

    /** A chain outline around a valve's row of squares: lines go on to the valve. */
    private boolean enclosesRow(Outline o, SquareRows rows) {
        return o.stroke().dash().chain() && o.rectangle() && rows.within(o.box(), 3 * tolPt);
    }

    /** Well inside, no mark on a side. */
    private boolean isWithin(Box part, Box b) {
        return Math.max(part.widthPt(), part.heightPt()) > 4 * tolPt
                && b.grow(-3 * tolPt).contains(part)
                && part.widthPt() < 0.7 * b.widthPt()
                && part.heightPt() < 0.7 * b.heightPt();
    }

    /** A broken outline with port marks on its faces is a block's, however small. */
    private boolean facedWithPorts(Outline o, List<Outline> closed) {
        return !o.stroke().dash().solid()
                && o.rectangle()
                && closed.stream().anyMatch(mark -> mark != o && onFace(mark, List.of(o)));
    }

    private boolean onFace(Outline o, List<Outline> enclosures) {
        if (o.box().widthPt() > 14 * tolPt || !o.circle() && !o.rectangle()) {
            return false;
        }
        Point c = o.box().center();
        return enclosures.stream()
                .anyMatch(e -> e.edgeDistancePt(c) < tolPt
                        && o.box().widthPt() < 0.3 * e.box().widthPt());
    }
}
