package linewalk.renderer.card;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import linewalk.drawing.Line;
import linewalk.linker.Neighbourhood;

/** What is joined to the parts and lines shown. Tanks end every way: their oil stands open to the air. */
final class Surroundings {

    private final CardJob job;
    private final Neighbourhood network;
    private final Set<Component> shown;
    private final Neighbourhood.Reached beside;
    private final Set<Component> tapped;
    private final Set<Component> connected;
    private final Set<Component> openly;

    Surroundings(CardJob job) {
        this.job = job;
        network = new Neighbourhood(job.set());
        shown = job.shown().parts();
        Set<Line> lines = new LinkedHashSet<>(job.shown().lines());
        for (Component c : shown) {
            // a tank's other lines belong to other circuits
            if (c.kind() != Kind.TANK) {
                lines.addAll(network.linesAt(c));
            }
        }
        beside = network.from(lines, c -> false);
        tapped = network.from(lines, c -> isBranch(c) && !shown.contains(c)).parts();
        connected = network.from(lines, c -> c.kind() != Kind.TANK).parts();
        openly = network.from(lines, c -> c.kind() != Kind.TANK && !isClosed(c)).parts();
    }

    /** On the way from a line to a gauge stands nothing else. */
    private static boolean isBranch(Component c) {
        return c.ports().size() == 2 && (c.kind() == Kind.SHUT_OFF_VALVE || c.kind() == Kind.HOSE);
    }

    /** As the chart says for the step, else as drawn. */
    boolean isClosed(Component c) {
        if (c.kind() != Kind.SHUT_OFF_VALVE) {
            return false;
        }
        Boolean said = job.state() == null ? null : job.state().open().get(Pairs.plain(c.tag()));
        return said == null ? isDrawnClosed(c) : !said;
    }

    boolean isDrawnClosed(Component c) {
        String setting = job.names().setting(c).toLowerCase(java.util.Locale.ROOT);
        return setting.contains("closed") || setting.strip().matches("n\\.?c\\.?");
    }

    /** Parts of a kind that are shown, each designation once. */
    List<Component> shown(Kind kind) {
        return ofKind(shown, kind);
    }

    /** Parts of a kind that stand on or next to what is shown. */
    List<Component> near(Kind kind) {
        return ofKind(with(beside.parts()), kind);
    }

    /** As {@link #near}, and those behind a shut-off valve or a hose, as gauges stand. */
    List<Component> tapped(Kind kind) {
        return ofKind(with(tapped), kind);
    }

    private Set<Component> with(Set<Component> others) {
        Set<Component> all = new LinkedHashSet<>(shown);
        all.addAll(others);
        return all;
    }

    /** Parts of a kind that are joined to what is shown, wherever they stand. */
    List<Component> connected(Kind kind) {
        return ofKind(with(connected), kind);
    }

    /** Whether a part is joined to what is shown over no valve that is taken to be closed. */
    boolean isOpenly(Component c) {
        return shown.contains(c) || openly.contains(c);
    }

    boolean isShown(Component c) {
        return shown.stream().anyMatch(s -> s.equals(c) || sameTag(s, c));
    }

    /** Lines of what is shown and those that lead on from it. */
    Set<Line> lines() {
        return beside.lines();
    }

    Set<Line> linesAt(Component c) {
        return network.linesAt(c);
    }

    /** Parts at the lines of one part, over crossings of sheets. */
    Set<Component> neighbours(Component c) {
        return network.from(network.linesAt(c), x -> false).parts();
    }

    /** All parts that oil at this one might come from or go to, on this side of the tanks. */
    Set<Component> circuitOf(Component c) {
        return network.from(network.linesAt(c), x -> x.kind() != Kind.TANK).parts();
    }

    static boolean sameTag(Component a, Component b) {
        return !a.tag().isEmpty() && Pairs.plain(a.tag()).equals(Pairs.plain(b.tag()));
    }

    private static List<Component> ofKind(Set<Component> parts, Kind kind) {
        Map<String, Component> byTag = new LinkedHashMap<>();
        for (Component c : parts) {
            if (c.kind() == kind) {
                byTag.putIfAbsent(c.tag().isEmpty() ? c.id() : Pairs.plain(c.tag()), c);
            }
        }
        return new ArrayList<>(byTag.values());
    }
}
