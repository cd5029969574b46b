package linewalk.importer.kind;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import linewalk.drawing.Box;
import linewalk.importer.page.Segment;
import linewalk.importer.page.Stroke;
import linewalk.importer.symbol.Arc;

/**
 * What stands in and around one figure.
 *
 * @param core the figure's outlines alone
 * @param shapes its closed outlines
 * @param beside closed outlines without a name that stand near: a brake's shoe, a coupling's ball
 * @param triangles filled ones and drawn ones, heads of arrows among them
 * @param arrows heads with their shafts
 * @param solid straight pieces, sides of outlines not among them
 * @param dashed straight pieces of pilot and drain lines
 * @param arcs open bends
 * @param curves open curved strokes whole
 * @param words texts inside
 * @param contacts where lines meet it
 */
record Picture(
        Box core,
        List<Shape> shapes,
        List<Shape> beside,
        List<Triangle> triangles,
        List<Arrow> arrows,
        List<Spring> springs,
        List<Segment> solid,
        List<Segment> dashed,
        List<Arc> arcs,
        List<Stroke> curves,
        List<String> words,
        List<Contact> contacts,
        double tolPt) {

    List<Shape> of(Form... forms) {
        List<Form> wanted = List.of(forms);
        return shapes.stream().filter(s -> wanted.contains(s.form())).toList();
    }

    /** Outlines that no other holds, enclosures left out unless nothing else is there. */
    List<Shape> outer() {
        List<Shape> whole = shapes.stream().filter(s -> !s.broken()).toList();
        return whole.stream()
                .filter(s -> whole.stream().noneMatch(o -> o.holds(s)))
                .toList();
    }

    double sizePt() {
        return Math.max(core.widthPt(), core.heightPt());
    }

    /** Contacts of working lines; both where there are but two, since a return may be drawn as a drain. */
    List<Contact> working() {
        List<Contact> solidOnes = contacts.stream().filter(c -> !c.dashed()).toList();
        return solidOnes.isEmpty() || contacts.size() == 2 ? contacts : solidOnes;
    }

    /** Contacts of dashed lines beside working ones. */
    List<Contact> pilots() {
        return working().size() == contacts.size()
                ? List.of()
                : contacts.stream().filter(Contact::dashed).toList();
    }

    boolean anySolid(Predicate<Segment> test) {
        return solid.stream().anyMatch(test);
    }

    /** Pieces and sides of outlines. */
    Stream<Segment> drawn() {
        return Stream.concat(solid.stream(), shapes.stream().flatMap(s -> s.sides().stream()));
    }

    /** As {@link #drawn}, with what stands beside. */
    Stream<Segment> drawnAround() {
        return Stream.concat(drawn(), beside.stream().flatMap(s -> s.sides().stream()));
    }
}
