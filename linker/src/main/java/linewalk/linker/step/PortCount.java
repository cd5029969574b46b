package linewalk.linker.step;

import linewalk.drawing.Kind;
import linewalk.drawing.LineKind;
import linewalk.drawing.Port;
import linewalk.drawing.Position;

/** Which ports and lines meet in each volume. */
final class PortCount {

    private final int[] drains;
    private final int[] pilots;
    private final int[] tanks;
    private final int[] passive;
    private final int[] others;
    private final boolean[][] kinds;

    PortCount(Net net, Volumes v) {
        drains = new int[net.size];
        pilots = new int[net.size];
        tanks = new int[net.size];
        passive = new int[net.size];
        others = new int[net.size];
        kinds = new boolean[LineKind.values().length][net.size];
        for (Part part : net.parts) {
            for (int i = 0; i < part.volumes().length; i++) {
                count(part, i)[part.volumes()[i]]++;
            }
        }
    }

    private int[] count(Part part, int at) {
        Port p = part.component().ports().get(at);
        Kind kind = part.kind();
        if (kind == Kind.TANK) {
            return tanks;
        } else if (Words.pilot(p) || shifts(part, p)) {
            return pilots;
        } else if (Words.drain(p)) {
            return drains;
        }
        boolean gauge = kind == Kind.GAUGE || kind == Kind.SWITCH;
        boolean lets = Kinds.PIPES.contains(kind) || kind == Kind.CHECK_VALVE || kind == Kind.SHUT_OFF_VALVE;
        return gauge || lets ? passive : others;
    }

    /** One of the part's positions is named after the port. */
    static boolean shifts(Part part, Port p) {
        return p.name() != null
                && part.component().positions().stream()
                        .anyMatch(x -> x.how() == Position.How.PILOT && x.by().contains(p.name()));
    }

    void line(int volume, LineKind kind) {
        kinds[kind.ordinal()][volume] = true;
    }

    private boolean drawn(LineKind kind, int volume) {
        return kinds[kind.ordinal()][volume];
    }

    boolean[] drainLike() {
        boolean[] found = new boolean[drains.length];
        for (int i = 0; i < found.length; i++) {
            boolean drawn = drawn(LineKind.DRAIN, i) && !drawn(LineKind.WORKING, i);
            found[i] = drawn || drains[i] > 0 && others[i] == 0 && pilots[i] == 0;
        }
        return found;
    }

    /** Nothing but drains, tanks and parts that oil simply passes. */
    boolean[] quiet() {
        boolean[] found = new boolean[drains.length];
        for (int i = 0; i < found.length; i++) {
            found[i] = others[i] == 0 && pilots[i] == 0;
        }
        return found;
    }

    /**
     * All ends are pilot ports, but for one place at most where it is fed; or so drawn, unless it is a branch of a line
     * that joins other parts.
     */
    boolean[] pilotOnly() {
        boolean[] found = new boolean[drains.length];
        for (int i = 0; i < found.length; i++) {
            int joined = others[i] + passive[i] + drains[i];
            boolean branch = pilots[i] > 0 && others[i] > 1;
            boolean drawn = drawn(LineKind.PILOT, i) && !drawn(LineKind.WORKING, i) && !branch;
            found[i] = drawn || pilots[i] > 0 && joined <= 1 && tanks[i] == 0;
        }
        return found;
    }
}
