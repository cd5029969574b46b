package linewalk.linker;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import linewalk.drawing.Box;
import linewalk.drawing.Flow;
import linewalk.drawing.HandTag;
import linewalk.drawing.Origin;
import linewalk.drawing.Point;
import linewalk.drawing.ReferenceReading;
import linewalk.drawing.Target;
import linewalk.drawing.Zone;

/** References that people gave, changed or took away. */
final class ReferenceTags {

    private final TagBoard board;

    ReferenceTags(TagBoard board) {
        this.board = board;
    }

    void place(HandTag.OfReference tag) {
        Optional<PageDraft> found = board.page(tag.source(), tag.page());
        String what = "reference " + (tag.targets() == null ? "" : tag.targets());
        if (found.isEmpty()) {
            board.noPage(tag.source(), tag.page(), what.strip());
            return;
        }
        PageDraft page = found.get();
        Point place = new Point(tag.xPt(), tag.yPt());
        Optional<ReferenceReading> near = nearest(page, place, tag.saw()).filter(r -> same(page, tag, place, r));
        boolean absent = Boolean.TRUE.equals(tag.absent());
        boolean silent = tag.targets() == null || tag.targets().isBlank();
        boolean unread = near.isEmpty() || near.get().readings().isEmpty();
        if (near.isEmpty() && absent || !absent && silent && unread) {
            board.unplaced(
                    page,
                    place,
                    what.strip(),
                    near.isEmpty()
                            ? "there is no reference at this place"
                            : "neither it nor the drawing says where the reference goes");
            return;
        }
        if (near.isPresent() && changed(tag.saw(), near.get().text())) {
            board.unplaced(
                    page,
                    place,
                    what.strip(),
                    "it saw '" + tag.saw() + "', but '" + near.get().text() + "' stands there now");
            return;
        }
        near.ifPresent(page.candidates::remove);
        if (!absent) {
            page.candidates.add(tagged(page, tag, place, near.orElse(null)));
        }
    }

    /** A tag without the text it saw may mean a new reference close to one that was read. */
    private static boolean same(PageDraft page, HandTag.OfReference tag, Point place, ReferenceReading r) {
        boolean saw = tag.saw() != null && !tag.saw().isBlank();
        double distancePt = r.box().distancePt(place);
        return r.origin() == Origin.HAND ? distancePt == 0 : saw || distancePt <= TagBoard.closePt(page);
    }

    static Optional<ReferenceReading> nearest(PageDraft page, Point place, String saw) {
        return TagBoard.nearest(
                page, page.candidates, place, saw, r -> r.box().distancePt(place), ReferenceReading::text);
    }

    private static boolean changed(String saw, String text) {
        return saw != null && !saw.isBlank() && !Names.plain(saw).equals(Names.plain(text));
    }

    private static ReferenceReading tagged(
            PageDraft page, HandTag.OfReference tag, Point place, ReferenceReading read) {
        List<Target> targets = targets(tag.targets());
        List<ReferenceReading.Says> says = targets.isEmpty() && read != null
                ? read.readings().subList(0, Math.min(1, read.readings().size()))
                : List.of(new ReferenceReading.Says(targets, 1));
        return new ReferenceReading(
                read == null ? freshId(page, place) : read.id(),
                read == null ? place : read.place(),
                read == null ? Box.around(place).grow(6) : read.box(),
                read == null ? tag.targets() : read.text(),
                read == null ? "hand" : read.form(),
                says,
                isGiven(tag.label()) ? tag.label() : read == null ? null : read.label(),
                flow(tag.flow(), read),
                Flow.UNKNOWN,
                read == null ? Set.of() : read.evidence(),
                Origin.HAND,
                1);
    }

    static String freshId(PageDraft page, Point place) {
        String id = page.idPrefix + "r" + Math.round(place.xPt()) + "-" + Math.round(place.yPt());
        return page.candidates.stream().anyMatch(r -> r.id().equals(id)) ? id + "-hand" : id;
    }

    /** A field left out or empty leaves what was read. */
    private static boolean isGiven(String field) {
        return field != null && !field.isBlank();
    }

    private static Flow flow(String word, ReferenceReading read) {
        if (!isGiven(word)) {
            return read == null ? Flow.UNKNOWN : read.flow();
        }
        String plain = word.strip().toLowerCase(Locale.ROOT);
        return plain.equals("out") ? Flow.OUT : plain.equals("in") ? Flow.IN : Flow.UNKNOWN;
    }

    /** {@code 3/B4 6/K1}: the part behind the last slash is a zone where it reads as one. */
    static List<Target> targets(String text) {
        List<Target> targets = new ArrayList<>();
        for (String word : text == null ? new String[0] : text.strip().split("\\s+")) {
            int slash = word.lastIndexOf('/');
            Optional<Zone> zone = slash < 0 ? Optional.empty() : Zone.parse(word.substring(slash + 1));
            if (!word.isEmpty()) {
                targets.add(new Target(zone.isPresent() ? word.substring(0, slash) : word, zone.orElse(null)));
            }
        }
        return targets;
    }
}
