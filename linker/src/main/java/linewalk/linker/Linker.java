package linewalk.linker;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import linewalk.drawing.Component;
import linewalk.drawing.CycleChart;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Enclosure;
import linewalk.drawing.Finding;
import linewalk.drawing.HandTag;
import linewalk.drawing.Line;
import linewalk.drawing.Origin;
import linewalk.drawing.Part;
import linewalk.drawing.Reference;
import linewalk.drawing.SetSettings;
import linewalk.drawing.SheetReading;

/**
 * Links what the pages say, each for itself, into one set. Phases in order: sheets get their names, ids become unique,
 * hand tags and the parts list are laid over what was read, candidates are sifted, mates found, the set checked.
 */
public final class Linker {

    private final List<PageDraft> pages;
    private final List<Finding> findings = new ArrayList<>();
    private final SetSettings settings;
    private final CycleChart chart;

    private Linker(List<SheetReading> readings, SetSettings settings, CycleChart chart) {
        this.settings = settings;
        this.chart = chart;
        this.pages = inOrder(readings, settings);
    }

    /**
     * A pure function: the same set whatever the order of the readings.
     *
     * @param readings one per page, any order, no page twice
     * @throws linewalk.drawing.UserError where the settings name an unknown standard grid
     */
    public static DrawingSet link(
            List<SheetReading> readings, List<HandTag> tags, SetSettings settings, List<Part> parts, CycleChart chart) {
        return new Linker(readings, settings, chart).link(tags, parts);
    }

    private static List<PageDraft> inOrder(List<SheetReading> readings, SetSettings settings) {
        Map<String, Integer> sourceOrder = new HashMap<>();
        settings.sources().forEach(s -> sourceOrder.putIfAbsent(s, sourceOrder.size()));
        return readings.stream()
                .sorted(Comparator.comparing((SheetReading r) ->
                                sourceOrder.getOrDefault(r.page().source(), Integer.MAX_VALUE))
                        .thenComparing(SheetReading::page))
                .map(PageDraft::new)
                .toList();
    }

    private DrawingSet link(List<HandTag> tags, List<Part> parts) {
        TagBoard board = new TagBoard(pages, findings);
        nameSheets(tags, board);
        Qualifier.fill(pages);
        layTags(tags, board);
        new PartEvidence(parts).fill(pages);
        CoilNames.read(pages, chart);
        MateTags mateTags = new MateTags(board);
        each(tags, HandTag.OfMate.class, mateTags::prepare);
        Sifter sifter = new Sifter(pages, findings);
        RefIndex index = new RefIndex(pages, sifter.sift(), sifter.strange());
        each(tags, HandTag.OfMate.class, t -> mateTags.place(t, index.refs));
        Mates mates = MateFinder.find(index, mateTags);
        findings.addAll(Checks.of(pages, index, mates, tags, parts, chart));
        return assemble(index, mates);
    }

    private void nameSheets(List<HandTag> tags, TagBoard board) {
        SheetTags sheets = new SheetTags(board);
        each(tags, HandTag.OfSheet.class, sheets::place);
        SheetNaming.name(pages, findings);
        GridFellows.mend(pages);
        if (settings.standardGrid() != null && !settings.standardGrid().isBlank()) {
            for (PageDraft p : pages) {
                if (p.grid() == null) {
                    p.grid(StandardGrid.of(settings.standardGrid(), p.reading.widthPt(), p.reading.heightPt()));
                }
            }
        }
        each(tags, HandTag.OfGrid.class, sheets::place);
    }

    /** Components before their ports, ports and references before the lines that join them. */
    private void layTags(List<HandTag> tags, TagBoard board) {
        ComponentTags components = new ComponentTags(board);
        each(tags, HandTag.OfComponent.class, components::place);
        each(tags, HandTag.OfPort.class, components::place);
        each(tags, HandTag.OfPosition.class, components::place);
        each(tags, HandTag.OfReference.class, new ReferenceTags(board)::place);
        each(tags, HandTag.OfJoin.class, new JoinTags(board)::place);
    }

    private static <T extends HandTag> void each(List<HandTag> tags, Class<T> kind, Consumer<T> place) {
        tags.stream().filter(kind::isInstance).map(kind::cast).forEach(place);
    }

    private DrawingSet assemble(RefIndex index, Mates mates) {
        List<Reference> references = new ArrayList<>();
        List<Component> components = new ArrayList<>();
        List<Enclosure> enclosures = new ArrayList<>();
        List<Line> lines = new ArrayList<>();
        Map<PageDraft, List<Ref>> byPage = new HashMap<>();
        index.refs.forEach(
                r -> byPage.computeIfAbsent(r.page(), k -> new ArrayList<>()).add(r));
        for (PageDraft p : pages) {
            byPage.getOrDefault(p, List.of()).forEach(r -> references.add(reference(r, mates)));
            components.addAll(p.components);
            enclosures.addAll(p.enclosures);
            lines.addAll(p.lines);
        }
        List<Finding> sorted = new ArrayList<>(findings);
        sorted.sort(FindingOrder.BY_PLACE);
        return new DrawingSet(
                pages.stream().map(PageDraft::sheet).toList(),
                references,
                components,
                enclosures,
                lines,
                distinct(sorted));
    }

    private static List<Finding> distinct(List<Finding> findings) {
        Set<Finding> seen = new HashSet<>();
        return findings.stream().filter(seen::add).toList();
    }

    /** An end that is answered from where it points has been read right: each confirms the other. */
    private static Reference reference(Ref r, Mates mates) {
        double mateConfidence = mates.confidence(r);
        double confidence = r.origin() == Origin.HAND
                ? 1
                : Math.max(r.confidence(), 0.98 * Math.min(mateConfidence, 0.5 + r.confidence() / 2));
        return new Reference(
                r.id(),
                r.page().page,
                r.place(),
                r.box(),
                r.zone(),
                r.text(),
                r.targets(),
                r.label(),
                r.flow(),
                r.origin(),
                confidence,
                mates.ids(r),
                mateConfidence);
    }
}
