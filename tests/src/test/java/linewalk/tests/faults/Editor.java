package linewalk.tests.faults;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Flow;
import linewalk.drawing.Point;
import linewalk.drawing.Reference;
import linewalk.drawing.ReferenceReading;
import linewalk.drawing.ReferenceReading.Says;
import linewalk.drawing.Sheet;
import linewalk.drawing.SheetReading;
import linewalk.drawing.Target;
import linewalk.drawing.Zone;
import linewalk.drawing.ZoneGrid;

/** One drafting error put into a correct set, as its pages would then be read. */
final class Editor {

    enum Kind {
        SHEET,
        ZONE,
        ZONE_BY_ONE,
        REMOVE,
        SWAP,
        DUPLICATE,
        LABEL,
        ARROW
    }

    /** @param wrong the references that now are wrong, as the correct set knew them */
    record Edited(List<SheetReading> readings, List<Reference> wrong) {}

    private final DrawingSet set;
    private final List<SheetReading> readings;
    private final Random random;
    private final Map<String, Reference> byId;

    Editor(DrawingSet set, List<SheetReading> readings, Random random) {
        this.set = set;
        this.readings = readings;
        this.random = random;
        this.byId = set.references().stream().collect(Collectors.toMap(Reference::id, r -> r));
    }

    /** Empty where the drawn lot can't be edited so: no label at both ends, say. */
    Optional<Edited> edit(Kind kind) {
        Reference r = set.references().get(random.nextInt(set.references().size()));
        if (r.mates().size() != 1 || r.targets().size() != 1) {
            return Optional.empty();
        }
        Reference mate = byId.get(r.mates().get(0));
        return switch (kind) {
            case SHEET -> aim(r, anySheet(r), r.targets().get(0).zone());
            case ZONE -> zone(r, mate, steps -> steps > 1);
            case ZONE_BY_ONE -> zone(r, mate, steps -> steps == 1);
            case REMOVE -> Optional.of(new Edited(change(r, x -> null), List.of(r)));
            case SWAP -> swap(r);
            case DUPLICATE -> duplicate(r);
            case LABEL -> label(r, mate);
            case ARROW -> arrow(r, mate);
        };
    }

    /** The readings less some references of the set that they make. */
    static List<SheetReading> without(List<SheetReading> readings, DrawingSet set, Set<String> ids) {
        List<SheetReading> left = readings;
        for (Reference r : set.references()) {
            left = ids.contains(r.id()) ? change(left, r, x -> null) : left;
        }
        return left;
    }

    Reference mate(Reference r) {
        return byId.get(r.mates().get(0));
    }

    private Optional<Edited> aim(Reference r, String sheet, Zone zone) {
        Says says = new Says(List.of(new Target(sheet, zone)), 1);
        String text = zone == null ? "SHEET " + sheet : sheet + "/" + zone;
        return Optional.of(new Edited(
                change(r, x -> with(x, x.place(), x.id(), text, List.of(says), x.label(), x.flow())), List.of(r)));
    }

    /** Of the set, or one more than it has. */
    private String anySheet(Reference r) {
        List<String> names =
                new ArrayList<>(set.sheets().stream().map(Sheet::name).toList());
        names.add("" + (names.size() + 1));
        names.removeIf(n -> n.equals(r.targets().get(0).sheet()));
        return names.get(random.nextInt(names.size()));
    }

    private Optional<Edited> zone(Reference r, Reference mate, Predicate<Integer> steps) {
        Target target = r.targets().get(0);
        ZoneGrid grid = set.getSheet(mate.page()).grid();
        if (target.zone() == null || grid == null) {
            return Optional.empty();
        }
        List<Zone> zones = zones(grid).stream()
                .filter(z -> steps.test(grid.steps(z, target.zone()).orElse(0)))
                .filter(z -> grid.box(z).stream()
                        .noneMatch(b -> b.intersects(mate.box().grow(2))))
                .toList();
        return zones.isEmpty() ? Optional.empty() : aim(r, target.sheet(), zones.get(random.nextInt(zones.size())));
    }

    private static List<Zone> zones(ZoneGrid grid) {
        return grid.rows().stream()
                .flatMap(row -> grid.columns().stream().map(c -> Zone.parse(row.label() + c.label())))
                .flatMap(Optional::stream)
                .toList();
    }

    private Optional<Edited> swap(Reference r) {
        Reference other = set.references().get(random.nextInt(set.references().size()));
        boolean alike = other.targets().equals(r.targets()) || other.id().equals(r.id());
        if (alike
                || other.mates().size() != 1
                || other.targets().size() != 1
                || other.mates().contains(r.id())) {
            return Optional.empty();
        }
        ReferenceReading a = reading(r);
        ReferenceReading b = reading(other);
        List<SheetReading> once = change(readings, r, x -> said(x, b));
        return Optional.of(new Edited(change(once, other, x -> said(x, a)), List.of(r, other)));
    }

    private static ReferenceReading said(ReferenceReading at, ReferenceReading says) {
        return with(at, at.place(), at.id(), says.text(), says.readings(), at.label(), at.flow());
    }

    /** The same once more, in another field of its sheet. */
    private Optional<Edited> duplicate(Reference r) {
        ZoneGrid grid = set.getSheet(r.page()).grid();
        if (grid == null || r.zone() == null) {
            return Optional.empty();
        }
        List<Zone> far = zones(grid).stream()
                .filter(z -> grid.steps(z, r.zone()).orElse(0) > 1)
                .toList();
        Point place =
                grid.box(far.get(random.nextInt(far.size()))).orElseThrow().center();
        ReferenceReading read = reading(r);
        ReferenceReading twin =
                with(read, place, read.id() + "-twin", read.text(), read.readings(), read.label(), read.flow());
        List<SheetReading> more = readings.stream()
                .map(p -> p.page().equals(r.page()) ? references(p, plus(p.references(), twin)) : p)
                .toList();
        return Optional.of(new Edited(more, List.of(r)));
    }

    private Optional<Edited> label(Reference r, Reference mate) {
        if (r.label() == null || !r.label().equals(mate.label())) {
            return Optional.empty();
        }
        String other = r.label().replaceAll("\\d+$", "") + (100 + random.nextInt(900));
        return other.equals(r.label())
                ? Optional.empty()
                : Optional.of(new Edited(
                        change(r, x -> with(x, x.place(), x.id(), x.text(), x.readings(), other, x.flow())),
                        List.of(r)));
    }

    private Optional<Edited> arrow(Reference r, Reference mate) {
        if (r.flow() == Flow.UNKNOWN || mate.flow() == Flow.UNKNOWN) {
            return Optional.empty();
        }
        Flow turned = r.flow() == Flow.OUT ? Flow.IN : Flow.OUT;
        return Optional.of(new Edited(
                change(r, x -> with(x, x.place(), x.id(), x.text(), x.readings(), x.label(), turned)), List.of(r)));
    }

    private ReferenceReading reading(Reference r) {
        return readings.stream()
                .filter(p -> p.page().equals(r.page()))
                .flatMap(p -> p.references().stream())
                .filter(x -> r.id().endsWith(":" + x.id()))
                .findFirst()
                .orElseThrow();
    }

    private List<SheetReading> change(Reference r, Function<ReferenceReading, ReferenceReading> edit) {
        return change(readings, r, edit);
    }

    private static List<SheetReading> change(
            List<SheetReading> readings, Reference r, Function<ReferenceReading, ReferenceReading> edit) {
        return readings.stream()
                .map(p -> !p.page().equals(r.page())
                        ? p
                        : references(
                                p,
                                p.references().stream()
                                        .map(x -> r.id().endsWith(":" + x.id()) ? edit.apply(x) : x)
                                        .filter(Objects::nonNull)
                                        .toList()))
                .toList();
    }

    private static List<ReferenceReading> plus(List<ReferenceReading> all, ReferenceReading one) {
        List<ReferenceReading> more = new ArrayList<>(all);
        more.add(one);
        return more;
    }

    private static ReferenceReading with(
            ReferenceReading r, Point place, String id, String text, List<Says> says, String label, Flow flow) {
        double dx = place.xPt() - r.place().xPt();
        double dy = place.yPt() - r.place().yPt();
        return new ReferenceReading(
                id,
                place,
                new linewalk.drawing.Box(
                        r.box().x0Pt() + dx,
                        r.box().y0Pt() + dy,
                        r.box().x1Pt() + dx,
                        r.box().y1Pt() + dy),
                text,
                r.form(),
                says,
                label,
                flow,
                flow == r.flow() ? r.tip() : Flow.UNKNOWN,
                r.evidence(),
                r.origin(),
                r.confidence());
    }

    private static SheetReading references(SheetReading p, List<ReferenceReading> references) {
        return new SheetReading(
                p.page(),
                p.widthPt(),
                p.heightPt(),
                p.toPage(),
                p.names(),
                p.sheetCount(),
                p.drawingNumber(),
                p.title(),
                p.revision(),
                p.grid(),
                references,
                p.components(),
                p.enclosures(),
                p.lines(),
                p.doubts());
    }
}
