package linewalk.samples.machine;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import linewalk.samples.symbol.Actuators;
import linewalk.samples.symbol.Directional;
import linewalk.samples.symbol.InLine;
import linewalk.samples.symbol.Pressure;

/**
 * A dense manifold: six like sections of four valves and a reducing valve at the inlet. Section {@code n} has the
 * valves 5Vn1 to 5Vn4 and the cylinder 5An.
 */
final class DeckGear {
    /** Per section, one letter a state: A or B is the energised coil, a dot neither. */
    private static final List<String> COILS =
            List.of(".AA.B...", "..AB....", "A.B.....", "...A..B.", ".B....A.", "....A..B");

    private static final List<String> NAMES = List.of(
            "Barrier arm, port",
            "Barrier arm, starboard",
            "Gangway latch",
            "Hatch cover",
            "Fender, port",
            "Fender, starboard");

    private DeckGear() {}

    /** The cycle's states with the coils of this manifold added. */
    static List<State> states(List<State> before) {
        List<State> out = new ArrayList<>();
        for (int i = 0; i < before.size(); i++) {
            Set<String> energised = new TreeSet<>(before.get(i).energised());
            for (int n = 1; n <= COILS.size(); n++) {
                char coil = COILS.get(n - 1).charAt(i);
                if (coil != '.') {
                    energised.add("Y5" + n + coil);
                }
            }
            out.add(new State(before.get(i).name(), energised));
        }
        return List.copyOf(out);
    }

    /** Each section once with coil A. */
    static List<Journey> journeys() {
        List<State> states = Cycle.states();
        String pump = Journeys.PUMP2.replace("120 ", "190 ");
        List<Journey> out = new ArrayList<>();
        for (int n = 1; n <= COILS.size(); n++) {
            String state = states.get(COILS.get(n - 1).indexOf('A')).name();
            String steps = "5V1 5Vn1 5Vn2 5Vn4 5An 5Vn3 5Vn1 192".replace("n", Integer.toString(n));
            out.add(Journeys.journey(state, pump + steps + Journeys.TO_TANK, "5A" + n));
        }
        return out;
    }

    static SheetPlan manifold(int number) {
        SheetPlan s = new SheetPlan(number, "VALVE HOUSE - MANIFOLD MB5, DECK GEAR");
        s.part("5V1", "Pressure reducing valve", Pressure.reducing(), 10.3, 27.4)
                .turned(1)
                .set("60 bar", "870 PSI")
                .text(-1.3, -2)
                .add();
        for (int n = 1; n <= COILS.size(); n++) {
            valves(s, n, column(n));
        }
        s.main("SSSSSSSS").run("<190@5,27.4", "5V1.P").add();
        NetPlan supply = s.main("EEEEEEEE").run("5V1.A", "x" + (column(6) - 0.3), "5V61.P");
        NetPlan tank = s.main("RRRRRRRR").run("5V11.T", "y28.7", "x63", ">192");
        for (int n = 1; n <= COILS.size(); n++) {
            if (n < COILS.size()) {
                supply.run("5V" + n + "1.P", "@" + (column(n) - 0.3) + ",27.4");
            }
            if (n > 1) {
                tank.run("5V" + n + "1.T", "@" + (column(n) + 0.3) + ",28.7");
            }
        }
        supply.add();
        tank.add();
        s.drain().run("5V1.L", "y32", "x63", ">191").add();
        for (int n = 1; n <= COILS.size(); n++) {
            lines(s, n, column(n));
        }
        furniture(s);
        return s.note("MB5 IN TWO BLOCKS, 5V1 IN THE INLET PLATE. ALL COILS 24 V DC.")
                .note("CYLINDERS STAY WHERE THEY ARE WITHOUT CURRENT.")
                .revised("B", "C5", "5A6 ADDED", "2025-01-20");
    }

    private static double column(int n) {
        return 14.5 + 8.2 * (n - 1);
    }

    private static void valves(SheetPlan s, int n, double x) {
        String v = "5V" + n;
        s.part("5A" + n, NAMES.get(n - 1), new Actuators.Cylinder(), x, 9.4)
                .set("50/28 x 250", "2 x 1-1/8 x 10")
                .text(-1.5, -1.6)
                .add();
        s.part(
                        v + "1",
                        "Directional valve 4/3",
                        Directional.fourThree("A-T B-T", "Y5" + n + "A", "Y5" + n + "B", false),
                        x,
                        24.6)
                .add();
        s.part(v + "2", "Pilot-operated check valve", Pressure.pilotCheck(), x - 2.5, 19)
                .mirrored()
                .text(0.95, -0.75)
                .add();
        s.part(v + "3", "Pilot-operated check valve", Pressure.pilotCheck(), x + 2.5, 20.7)
                .add();
        s.part(v + "4", "One-way flow control", InLine.flowControl(), x - 2.5, 16)
                .set("4 L/min", "1.1 GPM")
                .add();
    }

    private static void lines(SheetPlan s, int n, double x) {
        String v = "5V" + n;
        s.main(classes(n, "ER."))
                .run(v + "1.A", "y23.1", "x" + (x - 2.5), v + "2.A")
                .run(LineKind.PILOT, v + "3.X", "@" + (x - 2.5) + ",20.7")
                .add();
        s.main(classes(n, "ERH")).run(v + "2.B", v + "4.A").add();
        s.main(classes(n, "E.H")).run(v + "4.B", "5A" + n + ".A").add();
        s.main(classes(n, "RE."))
                .run(v + "1.B", "y23.1", "x" + (x + 2.5), v + "3.A")
                .run(LineKind.PILOT, v + "2.X", "x" + (x + 0.3), "y22.3", "@" + (x + 2.5) + ",22.3")
                .add();
        s.main(classes(n, "REH")).run(v + "3.B", "5A" + n + ".B").add();
    }

    /** The classes with coil A, with coil B and with neither, spread over the states. */
    private static String classes(int n, String withCoil) {
        return COILS.get(n - 1)
                .replace('.', '2')
                .replace('A', withCoil.charAt(0))
                .replace('B', withCoil.charAt(1))
                .replace('2', withCoil.charAt(2));
    }

    private static void furniture(SheetPlan s) {
        List<Furniture.FacePort> ports = new ArrayList<>(List.of(
                new Furniture.FacePort("P", 8.2, 27.4),
                new Furniture.FacePort("T", 60.3, 28.7),
                new Furniture.FacePort("L", 9.96, 30.6)));
        for (int n = 1; n <= COILS.size(); n++) {
            ports.add(new Furniture.FacePort("A" + n, column(n) - 2.5, 13.2));
            ports.add(new Furniture.FacePort("B" + n, column(n) + 2.5, 13.2));
        }
        s.with(new Furniture.Enclosure("MANIFOLD MB5", 8.2, 13.2, 60.3, 30.6, ports));
    }
}
