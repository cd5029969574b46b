package linewalk.linker;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import linewalk.drawing.Box;
import linewalk.drawing.Component;
import linewalk.drawing.End;
import linewalk.drawing.HandTag;
import linewalk.drawing.Kind;
import linewalk.drawing.Origin;
import linewalk.drawing.Point;
import linewalk.drawing.Port;
import linewalk.drawing.Position;

/** Components, ports and positions that people gave, changed or took away. */
final class ComponentTags {

    private static final double SIDE_PT = 40;

    private final TagBoard board;

    ComponentTags(TagBoard board) {
        this.board = board;
    }

    void place(HandTag.OfComponent tag) {
        String what = "component " + (tag.name() == null ? "" : tag.name());
        Optional<PageDraft> found = board.page(tag.source(), tag.page());
        if (found.isEmpty()) {
            board.noPage(tag.source(), tag.page(), what.strip());
            return;
        }
        PageDraft page = found.get();
        Point place = new Point(tag.xPt(), tag.yPt());
        String seen = tag.saw() != null ? tag.saw() : tag.name();
        Optional<Component> near = TagBoard.nearest(
                        page, page.components, place, seen, c -> c.box().distancePt(place), Component::tag)
                .filter(c ->
                        tag.saw() != null || sameTag(tag.name(), c) || c.box().contains(place));
        boolean absent = Boolean.TRUE.equals(tag.absent());
        if (near.isEmpty() && (absent || tag.name() == null)) {
            board.unplaced(page, place, what.strip(), "there is no component at this place");
        } else if (near.isPresent() && tag.saw() != null && !sameTag(tag.saw(), near.get())) {
            board.unplaced(
                    page,
                    place,
                    what.strip(),
                    "it saw '" + tag.saw() + "', but '" + near.get().tag() + "' stands there now");
        } else if (absent) {
            remove(page, near.get());
        } else {
            near.ifPresent(page.components::remove);
            page.components.add(tagged(page, tag, place, near.orElse(null)));
        }
    }

    private static boolean sameTag(String saw, Component c) {
        return Names.plain(saw).equals(Names.plain(c.tag()));
    }

    private static void remove(PageDraft page, Component c) {
        page.components.remove(c);
        c.ports().forEach(p -> open(page, p.id()));
    }

    /** Line ends at a port that is no more end in nothing. */
    private static void open(PageDraft page, String portId) {
        LineEdits.replaceEnds(
                page, e -> e instanceof End.AtPort p && p.port().equals(portId) ? new End.Open(e.place()) : e);
    }

    private static Component tagged(PageDraft page, HandTag.OfComponent tag, Point place, Component read) {
        Kind kind = tag.kind() == null ? null : Kind.find(tag.kind()).orElse(Kind.UNKNOWN);
        String name = tag.name() == null ? read.tag() : tag.name().strip();
        return new Component(
                read == null ? freshId(page, place) : read.id(),
                name,
                page.page,
                read == null ? place : read.place(),
                box(tag, place, read),
                kind != null ? kind : read == null ? Kind.UNKNOWN : read.kind(),
                tag.setting() != null ? tag.setting() : read == null ? null : read.setting(),
                Origin.HAND,
                1,
                read == null ? List.of() : read.ports(),
                read == null ? List.of() : read.positions());
    }

    private static String freshId(PageDraft page, Point place) {
        String id = page.idPrefix + "c" + Math.round(place.xPt()) + "-" + Math.round(place.yPt());
        return page.components.stream().anyMatch(c -> c.id().equals(id)) ? id + "-hand" : id;
    }

    private static Box box(HandTag.OfComponent tag, Point place, Component read) {
        if (tag.widthPt() == null && tag.heightPt() == null && read != null) {
            return read.box();
        }
        double w = tag.widthPt() == null ? SIDE_PT : tag.widthPt();
        double h = tag.heightPt() == null ? SIDE_PT : tag.heightPt();
        return new Box(place.xPt() - w / 2, place.yPt() - h / 2, place.xPt() + w / 2, place.yPt() + h / 2);
    }

    void place(HandTag.OfPort tag) {
        String what = "port " + (tag.name() == null ? "" : tag.name()) + " of " + tag.component();
        Optional<PageDraft> found = board.page(tag.source(), tag.page());
        if (found.isEmpty()) {
            board.noPage(tag.source(), tag.page(), what);
            return;
        }
        PageDraft page = found.get();
        Point place = new Point(tag.xPt(), tag.yPt());
        Optional<Component> owner = owner(page, tag.component(), place);
        if (owner.isEmpty()) {
            board.unplaced(page, place, what, "there is no " + tag.component() + " on sheet " + page.name);
            return;
        }
        Component c = owner.get();
        Optional<Port> near = near(page, c, tag, place);
        boolean absent = Boolean.TRUE.equals(tag.absent());
        if (near.isEmpty() && absent) {
            board.unplaced(page, place, what, "there is no port at this place");
            return;
        }
        replace(page, c, withPort(c, near.orElse(null), absent ? null : port(c, tag, place, near.orElse(null))));
        if (absent) {
            open(page, near.get().id());
        }
    }

    /** Ports stand close: another name, or a few points more, is another port. */
    private static Optional<Port> near(PageDraft page, Component c, HandTag.OfPort tag, Point place) {
        String name = tag.saw() != null ? tag.saw() : tag.name();
        double closePt = TagBoard.closePt(page);
        return TagBoard.nearest(page, c.ports(), place, name, p -> p.place().distancePt(place), Port::name)
                .filter(p -> p.place().distancePt(place) <= closePt
                        || name != null && Names.plain(name).equals(Names.plain(p.name())));
    }

    private static Optional<Component> owner(PageDraft page, String tag, Point place) {
        return page.components.stream()
                .filter(c -> Names.plain(tag).equals(Names.plain(c.tag())))
                .min(Comparator.comparingDouble(c -> c.box().distancePt(place)));
    }

    private static Port port(Component c, HandTag.OfPort tag, Point place, Port read) {
        String id = read != null ? read.id() : c.id() + ".p" + Math.round(place.xPt()) + "-" + Math.round(place.yPt());
        String name =
                tag.name() != null && !tag.name().isBlank() ? tag.name().strip() : read == null ? null : read.name();
        return new Port(id, name, read == null ? place : read.place());
    }

    private static Component withPort(Component c, Port old, Port now) {
        List<Port> ports = new ArrayList<>(c.ports());
        int at = old == null ? -1 : ports.indexOf(old);
        if (at >= 0) {
            ports.remove(at);
        }
        if (now != null) {
            ports.add(at < 0 ? ports.size() : at, now);
        }
        return LineEdits.with(c, ports, c.positions());
    }

    static void replace(PageDraft page, Component old, Component now) {
        page.components.set(page.components.indexOf(old), now);
    }

    void place(HandTag.OfPosition tag) {
        boolean placed = false;
        String fault = "there is no " + tag.component() + " in the set";
        for (PageDraft page : board.pages) {
            for (Component c : List.copyOf(page.components)) {
                if (!Names.plain(tag.component()).equals(Names.plain(c.tag()))
                        || c.ports().isEmpty()) {
                    continue;
                }
                PassageNotation notation = new PassageNotation(c);
                Optional<Position> position = notation.position(tag);
                fault = notation.fault();
                if (position.isPresent()) {
                    replace(page, c, withPosition(c, position.get()));
                    placed = true;
                }
            }
        }
        if (!placed) {
            board.unplaced(null, null, "a position of " + tag.component(), fault);
        }
    }

    /** Takes the place of the position that the same thing brings about. */
    private static Component withPosition(Component c, Position position) {
        List<Position> positions = new ArrayList<>(c.positions());
        positions.removeIf(p -> sameBy(p, position));
        positions.add(position);
        return LineEdits.with(c, c.ports(), positions);
    }

    private static boolean sameBy(Position a, Position b) {
        return a.isRest() && b.isRest()
                || a.by().stream().anyMatch(x -> b.by().stream().anyMatch(x::equalsIgnoreCase));
    }
}
