package linewalk.linker;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import linewalk.drawing.HandTag;
import linewalk.drawing.Point;
import linewalk.drawing.ReferenceReading;

/** Pairs that people tied or untied. */
final class MateTags {

    record Pair(String a, String b) {}

    private final TagBoard board;
    private final List<Pair> tied = new ArrayList<>();
    private final List<Pair> untied = new ArrayList<>();

    MateTags(TagBoard board) {
        this.board = board;
    }

    void place(HandTag.OfMate tag, List<Ref> refs) {
        Map<String, Ref> byId = refs.stream().collect(Collectors.toMap(Ref::id, r -> r));
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
