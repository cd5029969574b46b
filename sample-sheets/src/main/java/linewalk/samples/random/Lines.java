package linewalk.samples.random;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.samples.machine.Flow;
import linewalk.samples.machine.Heading;
import linewalk.samples.machine.LineKind;
import linewalk.samples.style.DraftingStyle;
import linewalk.samples.symbol.Spot;

/** Joins ports and references by lines, some with branches. */
final class Lines {
    private static final double BRANCH = 0.7;

    private final Board board;
    private final Chance chance;
    private final DraftingStyle style;
    private final Router router;
    private final Map<String, Tip> open;
    private final List<Draft> drafts = new ArrayList<>();
    private final Set<Goes> references = new LinkedHashSet<>();
    private int numbered;

    Lines(Board board, Chance chance, DraftingStyle style, Map<String, Tip> ports) {
        this.board = board;
        this.chance = chance;
        this.style = style;
        this.router = new Router(board, chance);
        this.open = new LinkedHashMap<>(ports);
    }

    List<Draft> drafts() {
        return List.copyOf(drafts);
    }

    List<Goes> references() {
        return List.copyOf(references);
    }

    /** Ports that no line reaches. */
    Set<String> unused() {
        return open.keySet();
    }

    void draw() {
        for (String port : chance.shuffled(List.copyOf(open.keySet()))) {
            Tip from = open.get(port);
            if (from == null) {
                continue;
            }
            Draft draft = new Draft();
            if (chance.is(0.3) || !joinToPort(draft, from)) {
                joinToReference(draft, from);
            }
            if (!draft.isEmpty()) {
                drafts.add(draft);
                branch(draft);
            }
        }
    }

    private void branch(Draft draft) {
        int branches = chance.is(0.5) ? 0 : chance.between(1, 4);
        for (int i = 0; i < branches; i++) {
            for (int tries = 0; tries < 4; tries++) {
                Tip from = join(draft);
                if (from != null && (chance.is(0.25) ? joinToReference(draft, from) : joinToPort(draft, from))) {
                    draft.joins().add(from);
                    if (chance.is(0.3)) {
                        draft.split(from.at());
                    }
                    break;
                }
            }
        }
    }

    /** A place on the line where a branch may leave it; where joins have dots, sometimes opposite another branch. */
    private Tip join(Draft draft) {
        if (style.dotRadius() > 0 && !draft.joins().isEmpty() && chance.is(0.15)) {
            Tip other = chance.of(draft.joins());
            return branchAt(other.at(), -other.dx(), -other.dy());
        }
        List<Board.Leg> legs = board.legs().stream()
                .filter(leg -> leg.net() == draft && leg.length() > 1.8)
                .toList();
        if (legs.isEmpty()) {
            return null;
        }
        Board.Leg leg = chance.of(legs);
        Area area = leg.area();
        Spot at = leg.level()
                ? new Spot(chance.snapped(area.x0() + 0.8, area.x1() - 0.8), area.y0())
                : new Spot(area.x0(), chance.snapped(area.y0() + 0.8, area.y1() - 0.8));
        boolean free =
                board.corners().stream().noneMatch(corner -> Area.of(corner).distance(at) < 0.7)
                        && board.legs().stream()
                                .noneMatch(other -> other != leg && other.area().distance(at) < 0.6);
        int way = chance.is(0.5) ? 1 : -1;
        return free ? branchAt(at, leg.level() ? 0 : way, leg.level() ? way : 0) : null;
    }

    private static Tip branchAt(Spot at, int dx, int dy) {
        return new Tip(at, at.plus(dx * BRANCH, dy * BRANCH), dx, dy, null, null);
    }

    private boolean joinToPort(Draft draft, Tip from) {
        List<Tip> near = open.values().stream()
                .filter(tip -> !tip.owner().equals(from.owner()))
                .sorted(Comparator.comparingDouble(tip -> Area.of(tip.at()).distance(from.at())))
                .limit(6)
                .toList();
        for (Tip to : chance.shuffled(near).subList(0, Math.min(3, near.size()))) {
            if (draw(draft, from, to, new Draft.End(to.port(), null))) {
                open.remove(to.port());
                board.free(to.port());
                return true;
            }
        }
        return false;
    }

    private boolean joinToReference(Draft draft, Tip from) {
        for (int tries = 0; tries < 12; tries++) {
            Goes goes = reference(from, tries);
            if (!board.hasRoom(goes.text(style), 0.4, from.owner() == null ? "" : from.port())
                    || !board.hasRoom(goes.label(style), 0.4, from.owner() == null ? "" : from.port())) {
                continue;
            }
            board.take(goes.text(style), goes.owner());
            board.take(goes.label(style), goes.owner());
            if (draw(draft, from, goes.tip(style), new Draft.End(null, goes))) {
                references.add(goes);
                return true;
            }
            board.free(goes.owner());
        }
        return false;
    }

    private Goes reference(Tip from, int tries) {
        boolean labelled = chance.is(0.5);
        Goes plain = new Goes(
                numbered++,
                new Spot(0, 0),
                chance.of(List.of(Heading.values())),
                chance.of(List.of(Flow.values())),
                chance.is(0.12),
                chance.is(0.08) ? 2 : 1,
                labelled,
                labelled && chance.is(0.3));
        if (tries % 2 == 1) {
            return moved(plain, plain.way(), chance.snapped(2, 66), chance.snapped(3, 37));
        }
        Heading way = heading(from.dx(), from.dy());
        Tip tip = moved(plain, way, 0, 0).tip(style);
        double straight = Math.abs(tip.exit().x() + tip.exit().y());
        Spot end = from.farther(straight + chance.snapped(0, 2 + tries));
        return moved(plain, way, end.x(), end.y());
    }

    private static Goes moved(Goes goes, Heading way, double x, double y) {
        boolean letter = goes.letter();
        return new Goes(
                goes.number(),
                new Spot(x, y),
                way,
                goes.flow(),
                letter,
                letter ? 1 : goes.targets(),
                goes.labelled() && !letter,
                goes.sized() && !letter);
    }

    private static Heading heading(int dx, int dy) {
        for (Heading way : Heading.values()) {
            if (way.dx == dx && way.dy == dy) {
                return way;
            }
        }
        throw new IllegalArgumentException("no way " + dx + " " + dy);
    }

    private boolean draw(Draft draft, Tip from, Tip to, Draft.End last) {
        List<Spot> path = router.way(from, to, draft);
        if (path == null) {
            return false;
        }
        board.draw(path, draft);
        draft.stroke(kind(from, to), path, new Draft.End(from.port(), null), last);
        if (from.port() != null) {
            open.remove(from.port());
            board.free(from.port());
        }
        return true;
    }

    /** Ports tell pilot and drain lines; some lines are such all the same. */
    private LineKind kind(Tip from, Tip to) {
        String ports = name(from) + name(to);
        if (ports.matches(".*[XY].*")) {
            return LineKind.PILOT;
        }
        if (ports.contains("L")) {
            return LineKind.DRAIN;
        }
        return chance.is(0.85) ? LineKind.MAIN : chance.of(List.of(LineKind.PILOT, LineKind.DRAIN));
    }

    private static String name(Tip tip) {
        boolean port = tip.port() != null && tip.port().contains(":");
        return port ? tip.port().substring(tip.port().indexOf(':') + 1) : "";
    }
}
