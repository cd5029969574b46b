package linewalk.renderer.iso;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import linewalk.drawing.Box;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import linewalk.drawing.LineKind;
import linewalk.drawing.Origin;
import linewalk.drawing.PageKey;
import linewalk.drawing.Passage;
import linewalk.drawing.Passage.Opens;
import linewalk.drawing.Point;
import linewalk.drawing.Port;
import linewalk.drawing.Position;
import linewalk.drawing.Position.How;

/**
 * A part in words. Ports are a letter, or a number for a port without one, then {@code ^} where the line leads up or
 * {@code _} where it leads down, then {@code p} for a pilot and {@code d} for a drain line: {@code A^ 2_ X_p}. Positions
 * are {@code Y1A solenoid: P-A B>T}, with {@code >} one way, {@code ~} throttled, {@code -} open, and
 * {@code !pressure} or {@code !pilot} after a passage that something opens.
 */
final class Sketch {

    private static final Pattern PASSAGE = Pattern.compile("(\\w+)([->~]+)(\\w+)(?:!(\\w+))?");

    final Kind kind;
    final List<PortUse> uses = new ArrayList<>();
    private final List<Port> ports = new ArrayList<>();
    private final List<Position> positions = new ArrayList<>();
    private String setting;
    private Position active;
    private Set<String> energised = Set.of();
    private boolean changed;

    Sketch(Kind kind, String ports) {
        this.kind = kind;
        for (String word : ports.isBlank() ? new String[0] : ports.strip().split(" +")) {
            port(word);
        }
    }

    private void port(String word) {
        int sign = Math.max(word.indexOf('^'), word.indexOf('_'));
        String id = word.substring(0, sign);
        String line = word.substring(sign + 1);
        LineKind kind = line.equals("p") ? LineKind.PILOT : line.equals("d") ? LineKind.DRAIN : LineKind.WORKING;
        String name = id.matches("\\d+") ? null : id;
        boolean up = word.charAt(sign) == '^';
        uses.add(new PortUse(id, name, kind, up));
        ports.add(new Port(id, name, new Point(10 + 20 * ports.size(), up ? 0 : 50)));
    }

    Sketch position(String words) {
        String[] f = words.split(":", -1);
        String[] head = f[0].strip().split(" ");
        List<Passage> passages = new ArrayList<>();
        Matcher m = PASSAGE.matcher(f[1]);
        while (m.find()) {
            passages.add(new Passage(
                    m.group(1),
                    m.group(3),
                    m.group(2).contains(">"),
                    m.group(2).contains("~"),
                    m.group(4) == null ? null : Opens.valueOf(m.group(4).toUpperCase())));
        }
        How how = head.length < 2 ? null : How.valueOf(head[1].toUpperCase());
        positions.add(new Position(List.of(head[0].split("/")), how, passages));
        return this;
    }

    Sketch setting(String text) {
        setting = text;
        return this;
    }

    /** Where the ports lie on the drawing, in order; the outline is 100 by 50. */
    Sketch drawnAt(double... xy) {
        for (int i = 0; i < xy.length / 2; i++) {
            Port p = ports.get(i);
            ports.set(i, new Port(p.id(), p.name(), new Point(xy[2 * i], xy[2 * i + 1])));
        }
        return this;
    }

    Sketch active(int position) {
        active = positions.get(position);
        return this;
    }

    Sketch on(String... names) {
        energised = Set.of(names);
        return this;
    }

    Sketch changed() {
        changed = true;
        return this;
    }

    Component part() {
        return new Component(
                "c",
                "V1",
                new PageKey("sketch.pdf", 1),
                new Point(50, 25),
                new Box(0, 0, 100, 50),
                kind,
                setting,
                Origin.TEXT,
                1,
                ports,
                positions);
    }

    Symbol symbol() {
        return Symbols.of(part(), uses, new Standing(active, energised, changed));
    }
}
