package linewalk.linker;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import linewalk.drawing.Box;
import linewalk.drawing.End;
import linewalk.drawing.Flow;
import linewalk.drawing.HandTag;
import linewalk.drawing.Origin;
import linewalk.drawing.Point;
import linewalk.drawing.ReferenceReading;
import linewalk.drawing.Target;

/** Pairs that people tied or untied. */
final class MateTags {

    record Pair(String a, String b) {}

    private final TagBoard board;
    private final List<Pair> tied = new ArrayList<>();
    private final List<Pair> untied = new ArrayList<>();

    MateTags(TagBoard board) {
        this.board = board;
    }

    /** Before sifting: a line end without a reference that is tied to one gets one. */
    void prepare(HandTag.OfMate tag) {
        String toSource = tag.toSource() == null ? tag.source() : tag.toSource();
        Optional<PageDraft> from = board.page(tag.source(), tag.page());
        Optional<PageDraft> to = board.page(toSource, tag.toPage());
        if (from.isPresent() && to.isPresent() && !Boolean.TRUE.equals(tag.absent())) {
            referenceAt(from.get(), new Point(tag.xPt(), tag.yPt()), tag.saw(), to.get());
            referenceAt(to.get(), new Point(tag.toXPt(), tag.toYPt()), tag.toSaw(), from.get());
        }
    }

    private static void referenceAt(PageDraft page, Point place, String saw, PageDraft other) {
        List<End> open = page.lines.stream()
                .flatMap(l -> l.ends().stream())
                .filter(e -> e instanceof End.Open)
                .toList();
        Optional<End> end =
                TagBoard.nearest(page, open, place, null, e -> e.place().distancePt(place), e -> null);
        if (end.isEmpty() || ReferenceTags.nearest(page, place, saw).isPresent()) {
            return;
        }
        Point at = end.get().place();
        String id = ReferenceTags.freshId(page, at);
        page.candidates.add(new ReferenceReading(
                id,
                at,
                Box.around(at).grow(6),
                other.name,
                "hand",
                List.of(new ReferenceReading.Says(List.of(new Target(other.name, null)), 1)),
                null,
                Flow.UNKNOWN,
                Flow.UNKNOWN,
                Set.of(),
                Origin.HAND,
                1));
        LineEdits.replaceEnds(page, e -> e.equals(end.get()) ? new End.AtReference(id, at) : e);
    }

    void place(HandTag.OfMate tag, List<Ref> refs) {
        Map<String, Ref> byId = new HashMap<>();
        refs.forEach(r -> byId.put(r.id(), r));
        Ref from = find(tag.source(), tag.page(), new Point(tag.xPt(), tag.yPt()), tag.saw(), byId);
        String toSource = tag.toSource() == null ? tag.source() : tag.toSource();
        Ref to = from == null
                ? null
                : find(toSource, tag.toPage(), new Point(tag.toXPt(), tag.toYPt()), tag.toSaw(), byId);
        if (from != null && to != null) {
            (Boolean.TRUE.equals(tag.absent()) ? untied : tied).add(new Pair(from.id(), to.id()));
        }
    }

    private Ref find(String source, int number, Point place, String saw, Map<String, Ref> byId) {
        Optional<PageDraft> page = board.page(source, number);
        if (page.isEmpty()) {
            board.noPage(source, number, "a mate");
            return null;
        }
        Optional<ReferenceReading> near = ReferenceTags.nearest(page.get(), place, saw);
        boolean changed = near.isPresent()
                && saw != null
                && !Names.plain(saw).equals(Names.plain(near.get().text()));
        if (near.isEmpty() || changed || !byId.containsKey(near.get().id())) {
            String why = changed
                    ? "it saw '" + saw + "', but '" + near.get().text() + "' stands there now"
                    : "there is no reference at one of its places";
            board.unplaced(page.get(), place, "a mate", why);
            return null;
        }
        return byId.get(near.get().id());
    }

    List<Pair> tied() {
        return tied;
    }

    boolean untied(Ref a, Ref b) {
        return untied.contains(new Pair(a.id(), b.id())) || untied.contains(new Pair(b.id(), a.id()));
    }
}
