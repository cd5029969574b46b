package linewalk.linker.step;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.Component;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.End;
import linewalk.drawing.Kind;
import linewalk.drawing.Line;
import linewalk.drawing.LineKind;
import linewalk.drawing.Port;
import linewalk.drawing.Reference;

/**
 * The set as volumes of oil: lines, their mates on other sheets, and ports drawn on several sheets are one volume each.
 * Built once for a set; with {@code cut}, doubtful joins and mates are left out.
 */
final class Net {

    static final double SURE = 0.9;

    final List<Part> parts = new ArrayList<>();
    /** Actuators by designation: drawn in pieces, they move as one. */
    final List<List<Part>> actuators = new ArrayList<>();

    final List<Line> lines;
    /** The last volume is a tank of no sheet, for lines that lead nowhere known. */
    final int size;

    final boolean[] tank;
    /** An actuator's or brake's working port, or an accumulator. */
    final boolean[] load;
    /** A port of something that seals: what is shut in here may stand under pressure. */
    final boolean[] sealed;
    /** Lines here lead off to nowhere known. */
    final boolean[] loose;

    final boolean[] drainLike;
    final boolean[] quiet;
    final boolean[] pilotOnly;
    /** By line: drawn as pilot line, and on its sheet it joins nothing but pilot ports. */
    final boolean[] pilotLine;

    final boolean doubtful;
    private final int[] lineVolume;
    private final int[][] endVolumes;

    private final boolean cut;

    Net(DrawingSet set, boolean cut) {
        this.cut = cut;
        lines = set.lines();
        Volumes v = new Volumes(set, cut);
        doubtful = v.doubtful();
        size = v.count() + 1;
        tank = new boolean[size];
        tank[size - 1] = true;
        load = new boolean[size];
        sealed = new boolean[size];
        loose = new boolean[size];
        lineVolume = new int[lines.size()];
        endVolumes = new int[lines.size()][];
        parts(set, v);
        PortCount ports = new PortCount(this, v);
        lines(set, v, ports);
        drainLike = ports.drainLike();
        quiet = ports.quiet();
        pilotOnly = ports.pilotOnly();
        pilotLine = pilotLines();
    }

    private void parts(DrawingSet set, Volumes v) {
        Map<String, List<Part>> byTag = new LinkedHashMap<>();
        for (Component c : set.components()) {
            Part part = Part.of(parts.size(), c, v);
            parts.add(part);
            if (c.kind().isActuator()) {
                byTag.computeIfAbsent(c.tag().isBlank() ? c.id() : Words.plain(c.tag()), k -> new ArrayList<>())
                        .add(part);
            }
            for (int i = 0; i < part.volumes().length; i++) {
                mark(part, i);
            }
        }
        actuators.addAll(byTag.values());
    }

    private void mark(Part part, int port) {
        Kind kind = part.component().kind();
        int volume = part.volumes()[port];
        boolean working = part.working(port);
        tank[volume] |= kind == Kind.TANK;
        load[volume] |=
                working && part.main()[port] && (kind.isActuator() || kind == Kind.BRAKE || kind == Kind.ACCUMULATOR);
        sealed[volume] |= working && Kinds.seals(kind);
    }

    private void lines(DrawingSet set, Volumes v, PortCount ports) {
        Map<String, Reference> references = new HashMap<>();
        set.references().forEach(r -> references.put(r.id(), r));
        for (int i = 0; i < lines.size(); i++) {
            Line line = lines.get(i);
            lineVolume[i] = v.ofLine(i);
            endVolumes[i] = new int[line.ends().size()];
            for (int e = 0; e < endVolumes[i].length; e++) {
                End end = line.ends().get(e);
                endVolumes[i][e] = v.ofEnd(i, end);
                boolean ends = end instanceof End.Open
                        || end instanceof End.AtReference r
                                && (!references.containsKey(r.reference()) || !v.mated(references.get(r.reference())));
                loose[endVolumes[i][e]] |= ends;
                ports.line(endVolumes[i][e], line.kind());
            }
        }
    }

    private boolean[] pilotLines() {
        Set<String> pilotPorts = new HashSet<>();
        for (Part p : parts) {
            for (Port o : p.component().ports()) {
                if (Words.pilot(o) || PortCount.shifts(p, o)) {
                    pilotPorts.add(o.id());
                }
            }
        }
        boolean[] found = new boolean[lines.size()];
        for (int i = 0; i < found.length; i++) {
            found[i] = lines.get(i).kind() == LineKind.PILOT
                    && lines.get(i).ends().stream()
                            .allMatch(e -> !(e instanceof End.AtPort at) || pilotPorts.contains(at.port()));
        }
        return found;
    }

    /** The volumes that a line is part of: one, but for a doubtful line that was cut. */
    int[] volumes(int line) {
        return endVolumes[line].length == 0 ? new int[] {lineVolume[line]} : endVolumes[line];
    }

    /** Its ends are joined with nothing. */
    boolean isCut(int line) {
        return cut && lines.get(line).confidence() < SURE;
    }

    int nowhere() {
        return size - 1;
    }

    boolean[] none() {
        return new boolean[size];
    }
}
