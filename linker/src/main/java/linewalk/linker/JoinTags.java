package linewalk.linker;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import linewalk.drawing.Component;
import linewalk.drawing.End;
import linewalk.drawing.HandTag;
import linewalk.drawing.Line;
import linewalk.drawing.LineKind;
import linewalk.drawing.Point;
import linewalk.drawing.Port;
import linewalk.drawing.ReferenceReading;

/** Lines that people drew between two ends, or took apart. */
final class JoinTags {

    private static final Pattern PLACE = Pattern.compile("@(-?[\\d.]+),(-?[\\d.]+)");

    private final TagBoard board;
    /** Ends of a line that tags have spoken of; a line is sure when they cover it. */
    private final Map<String, List<End>> told = new HashMap<>();

    JoinTags(TagBoard board) {
        this.board = board;
    }

    void place(HandTag.OfJoin tag) {
        String what = "the join " + tag.from() + " to " + tag.to();
        Optional<PageDraft> found = board.page(tag.source(), tag.page());
        if (found.isEmpty()) {
            board.noPage(tag.source(), tag.page(), what);
            return;
        }
        PageDraft page = found.get();
        Optional<End> from = end(page, tag.from());
        Optional<End> to = end(page, tag.to());
        if (from.isEmpty() || to.isEmpty()) {
            String missing = from.isEmpty() ? tag.from() : tag.to();
            board.unplaced(page, null, what, "there is no end " + missing + " on sheet " + page.name);
        } else if (Boolean.TRUE.equals(tag.absent())) {
            takeApart(page, from.get(), to.get(), what);
        } else {
            join(page, from.get(), to.get(), tag);
        }
    }

    private static Optional<End> end(PageDraft page, String text) {
        Matcher m = PLACE.matcher(text.strip());
        return m.matches()
                ? endAt(page, new Point(Double.parseDouble(m.group(1)), Double.parseDouble(m.group(2))))
                : portEnd(page, text.strip());
    }

    /** The nearest of references, open line ends and ports, references first. */
    private static Optional<End> endAt(PageDraft page, Point place) {
        Optional<ReferenceReading> reference = ReferenceTags.nearest(page, place, null);
        List<End> ends = page.lines.stream().flatMap(l -> l.ends().stream()).toList();
        Optional<End> end =
                TagBoard.nearest(page, ends, place, null, e -> e.place().distancePt(place), e -> null);
        if (reference.isEmpty()) {
            return end;
        }
        ReferenceReading r = reference.get();
        boolean endNearer =
                end.isPresent() && end.get().place().distancePt(place) < r.box().distancePt(place);
        return endNearer ? end : Optional.of(new End.AtReference(r.id(), r.place()));
    }

    private static Optional<End> portEnd(PageDraft page, String text) {
        int colon = text.indexOf(':');
        String tag = Names.plain(colon < 0 ? text : text.substring(0, colon));
        for (Component c : page.components) {
            if (!tag.equals(Names.plain(c.tag()))) {
                continue;
            }
            Optional<Port> port = colon < 0
                    ? c.ports().size() == 1 ? Optional.of(c.ports().get(0)) : Optional.empty()
                    : c.findPortNamed(text.substring(colon + 1));
            if (port.isPresent()) {
                return port.map(p -> new End.AtPort(c.id(), p.id(), p.place()));
            }
        }
        return Optional.empty();
    }

    /** One thing at the end of a line, wherever exactly the line stops. */
    private static boolean same(End a, End b) {
        if (a instanceof End.AtPort p && b instanceof End.AtPort q) {
            return p.port().equals(q.port());
        }
        if (a instanceof End.AtReference r && b instanceof End.AtReference s) {
            return r.reference().equals(s.reference());
        }
        return a.equals(b);
    }

    private static Optional<Line> lineAt(PageDraft page, End end) {
        return page.lines.stream()
                .filter(l -> l.ends().stream().anyMatch(e -> same(e, end)))
                .findFirst();
    }

    /** Both ends' lines become one; an open end that a tag joins is open no more. */
    private void join(PageDraft page, End from, End to, HandTag.OfJoin tag) {
        Optional<Line> a = lineAt(page, from);
        Optional<Line> b = lineAt(page, to);
        List<End> ends = new ArrayList<>();
        List<List<Point>> runs = new ArrayList<>();
        for (Line l : a.equals(b)
                ? a.stream().toList()
                : Stream.of(a, b).flatMap(Optional::stream).toList()) {
            l.ends().forEach(e -> add(ends, e));
            runs.addAll(l.runs());
            page.lines.remove(l);
        }
        List<End> said = new ArrayList<>(List.of(from, to));
        a.ifPresent(l -> said.addAll(told.getOrDefault(l.id(), List.of())));
        b.ifPresent(l -> said.addAll(told.getOrDefault(l.id(), List.of())));
        add(ends, from);
        add(ends, to);
        ends.removeIf(e -> e instanceof End.Open && (same(e, from) || same(e, to)));
        Line read = a.or(() -> b).orElse(null);
        boolean covered = ends.stream().allMatch(e -> said.stream().anyMatch(s -> same(s, e)));
        double confidence = covered ? 1 : Math.min(confidence(a), confidence(b));
        String id = read == null ? page.idPrefix + "l" + spot(from) + "-" + spot(to) : read.id();
        told.put(id, said);
        page.lines.add(new Line(
                id,
                page.page,
                kind(tag.kind(), read),
                tag.label() != null ? tag.label() : read == null ? null : read.label(),
                read == null ? null : read.size(),
                confidence,
                ends,
                runs));
    }

    private static double confidence(Optional<Line> line) {
        return line.map(Line::confidence).orElse(1.0);
    }

    private static void add(List<End> ends, End end) {
        if (ends.stream().noneMatch(e -> same(e, end))) {
            ends.add(end);
        }
    }

    private static String spot(End e) {
        return Math.round(e.place().xPt()) + "-" + Math.round(e.place().yPt());
    }

    private static LineKind kind(String word, Line read) {
        for (LineKind kind : LineKind.values()) {
            if (word != null && kind.name().equalsIgnoreCase(word.strip())) {
                return kind;
            }
        }
        return read == null ? LineKind.WORKING : read.kind();
    }

    /** The end named second leaves the line of the first and keeps what is drawn to it as a line of its own. */
    private void takeApart(PageDraft page, End from, End to, String what) {
        Optional<Line> line = lineAt(page, from).filter(l -> l.ends().stream().anyMatch(e -> same(e, to)));
        if (line.isEmpty()) {
            board.unplaced(page, from.place(), what, "no line joins them");
            return;
        }
        List<End> rest = line.get().ends().stream().filter(e -> !same(e, to)).toList();
        page.lines.set(
                page.lines.indexOf(line.get()),
                LineEdits.with(line.get(), rest, line.get().confidence()));
    }
}
