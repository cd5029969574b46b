package linewalk.samples.symbol;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Directional valves: squares side by side, the lines on the square at rest. */
public record Directional(List<SpoolPosition> positions, int rest, Map<String, Spot> ports, boolean piloted)
        implements Symbol {
    private static final double SIDE = 1.2;

    /** Spring-centred 4/3; {@code centre} are the passages at rest. */
    public static Symbol fourThree(String centre, String solenoidA, String solenoidB, boolean piloted) {
        Map<String, Spot> ports = fourPorts();
        if (piloted) {
            ports.put("X", new Spot(-1.68, 0.6));
            ports.put("Y", new Spot(1.68, 0.6));
        }
        return new Directional(
                List.of(
                        new SpoolPosition(solenoidA, "solenoid", "P>A B>T"),
                        new SpoolPosition("rest", "spring", centre),
                        new SpoolPosition(solenoidB, "solenoid", "P>B A>T")),
                1,
                ports,
                piloted);
    }

    /** Spring return, crossed at rest. */
    public static Symbol fourTwo(String solenoid) {
        return twoSquares(solenoid, "P>A B>T", "P>B A>T", fourPorts());
    }

    /** Closed at rest, A to T. */
    public static Symbol threeTwo(String solenoid) {
        Map<String, Spot> ports = fourPorts();
        ports.remove("B");
        return twoSquares(solenoid, "P>A", "A>T", ports);
    }

    /** Open at rest, P above, T below. */
    public static Symbol twoTwo(String solenoid) {
        Map<String, Spot> ports = new LinkedHashMap<>();
        ports.put("P", new Spot(0, -0.6));
        ports.put("T", new Spot(0, 0.6));
        return twoSquares(solenoid, "", "P>T", ports);
    }

    private static Symbol twoSquares(String solenoid, String shifted, String atRest, Map<String, Spot> ports) {
        return new Directional(
                List.of(new SpoolPosition(solenoid, "solenoid", shifted), new SpoolPosition("rest", "spring", atRest)),
                1,
                ports,
                false);
    }

    private static Map<String, Spot> fourPorts() {
        Map<String, Spot> ports = new LinkedHashMap<>();
        ports.put("P", new Spot(-0.3, 0.6));
        ports.put("T", new Spot(0.3, 0.6));
        ports.put("A", new Spot(-0.3, -0.6));
        ports.put("B", new Spot(0.3, -0.6));
        return ports;
    }

    @Override
    public String kind() {
        return "directional-valve";
    }

    @Override
    public Spot half() {
        return new Spot(1.8, 0.6);
    }

    @Override
    public Map<String, Spot> letters() {
        Map<String, Spot> out = new LinkedHashMap<>();
        ports.forEach((name, at) -> out.put(name, at.plus(at.x() < 0 ? -0.2 : 0.2, at.y() < 0 ? -0.22 : 0.24)));
        return out;
    }

    @Override
    public void draw(Ink ink) {
        for (int i = 0; i < positions.size(); i++) {
            double x = (i - rest) * SIDE;
            Motif.box(ink, Pen.OUTLINE, x, 0, SIDE / 2, SIDE / 2);
            drawPassages(ink, x, positions.get(i).passages());
        }
        double left = -rest * SIDE - SIDE / 2;
        double right = (positions.size() - 1 - rest) * SIDE + SIDE / 2;
        drawOperator(ink, left, -1, positions.get(0));
        drawOperator(ink, right, 1, positions.get(positions.size() - 1));
        if (positions.size() == 3) {
            Motif.spring(ink, left - 0.7, left, 0.3, 0.16);
            Motif.spring(ink, right, right + 0.7, 0.3, 0.16);
        }
    }

    private void drawOperator(Ink ink, double edge, int side, SpoolPosition position) {
        if (position.by().equals("rest")) {
            Motif.spring(ink, edge, edge + side * 0.8, 0.1, 0.2);
            return;
        }
        double inner = edge;
        if (piloted) {
            Motif.box(ink, Pen.OUTLINE, edge + side * 0.25, -0.3, 0.25, 0.28);
            ink.fill(edge, -0.3, edge + side * 0.38, -0.48, edge + side * 0.38, -0.12);
            inner += side * 0.5;
        }
        double middle = inner + side * 0.4;
        Motif.box(ink, Pen.OUTLINE, middle, -0.3, 0.4, 0.28);
        ink.line(Pen.THIN, middle - 0.2, -0.02, middle + 0.2, -0.58);
        ink.text(Lettering.centred(0.3), middle, -0.86, position.by());
    }

    private void drawPassages(Ink ink, double x, String passages) {
        List<String> open = new ArrayList<>();
        boolean floats = passages.equals("A-T B-T");
        if (floats) {
            ink.line(Pen.OUTLINE, x - 0.3, -0.6, x - 0.3, 0.06, x + 0.3, 0.06);
            ink.line(Pen.OUTLINE, x + 0.3, -0.6, x + 0.3, 0.6);
            open.addAll(List.of("A", "B", "T"));
        }
        for (String passage : passages.isEmpty() || floats ? List.<String>of() : List.of(passages.split(" "))) {
            Spot from = ports.get(passage.substring(0, 1));
            Spot to = ports.get(passage.substring(2));
            ink.arrow(Pen.OUTLINE, x + from.x(), from.y(), x + to.x(), to.y());
            open.add(passage.substring(0, 1));
            open.add(passage.substring(2));
        }
        ports.forEach((name, at) -> {
            if (!open.contains(name) && !"XY".contains(name)) {
                double inner = at.y() * 0.6;
                ink.line(Pen.OUTLINE, x + at.x(), at.y(), x + at.x(), inner);
                ink.line(Pen.OUTLINE, x + at.x() - 0.16, inner, x + at.x() + 0.16, inner);
            }
        });
    }
}
