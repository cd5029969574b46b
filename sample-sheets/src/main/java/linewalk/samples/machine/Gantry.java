package linewalk.samples.machine;

import java.util.List;
import linewalk.samples.symbol.Actuators;
import linewalk.samples.symbol.InLine;
import linewalk.samples.symbol.Pressure;
import linewalk.samples.symbol.Spot;

/** The pipe trench and the two hoist cylinders on the gantry. The rod side carries the span. */
final class Gantry {
    private Gantry() {}

    static SheetPlan trench(int number) {
        SheetPlan s = new SheetPlan(number, "PIPE TRENCH - VALVE HOUSE TO GANTRY");
        valve(s, "1V8", 8);
        valve(s, "1V9", 13);
        valve(s, "2V5", 19);
        valve(s, "2V6", 23);
        valve(s, "3V5", 27);
        valve(s, "3V6", 31);
        s.main("..SR....").run("<140@5,8", "1V8.A").add();
        s.main("..SR....")
                .run("1V8.B", "x63", ">142")
                .run("@40,8", "y35", ">143")
                .add();
        s.main("..RS....").run("=141@5,13", "1V9.A").add();
        s.main("..RS....")
                .run("1V9.B", "x63", "=144")
                .run("@46,13", "y35", "=145")
                .add();
        through(s, "150", "2V5", "152", 19, ".EEE....");
        through(s, "151", "2V6", "153", 23, "ER..EEEE");
        through(s, "154", "3V5", "156", 27, "....SR..");
        through(s, "155", "3V6", "157", 31, "....RS..");
        s.with(new Furniture.Dimension(20, 36, 34, new Words("21 500", "70 FT 6 IN")));
        s.with(new Furniture.Leader(new Spot(30, 23), new Spot(32, 25.2), "CLAMPS EVERY 1500, SEE 12/A93"));
        s.note("COVER PLATES NOT SHOWN. PIPES SLOPE 1:200 TO VALVE HOUSE.")
                .note("VALVES 1V8 TO 3V6 LOCKED OPEN IN SERVICE.");
        return s.revised("B", "C2", "2V5 AND 2V6 ADDED", "2024-06-19");
    }

    private static void valve(SheetPlan s, String tag, double y) {
        s.part(tag, "Shut-off valve", InLine.shutOff(), 15, y)
                .turned(1)
                .text(0.9, -0.5)
                .add();
    }

    private static void through(SheetPlan s, String in, String valve, String out, double y, String classes) {
        s.main(classes).run("=" + in + "@5," + (int) y, valve + ".A").add();
        s.main(classes).run(valve + ".B", "x63", "=" + out).add();
    }

    static SheetPlan hoistPort(int number) {
        SheetPlan s = new SheetPlan(number, "GANTRY - HOIST CYLINDER, PORT SIDE");
        cylinder(s, "1A1", "MP3");
        s.part("1V2", "Pilot-operated check valve", Pressure.pilotCheck(), 31.5, 23)
                .add();
        s.part("1V3", "Counterbalance valve", Pressure.counterbalance(), 36.5, 19)
                .set("210 bar", "3050 PSI")
                .test("MP3")
                .add();
        s.part("1V6", "Shut-off valve", InLine.shutOff(), 46, 15)
                .turned(1)
                .set("NORMALLY CLOSED")
                .text(-1, 0.9)
                .add();
        s.main("..SR....")
                .run("<142@5,27", "x36.5", "1V3.V")
                .run(LineKind.PILOT, "1V2.X", "x25", "@25,27")
                .add();
        s.main("..RS....")
                .run("=144@5,31", "x31.5", "1V2.A")
                .run(LineKind.PILOT, "1V3.X", "x28", "@28,31")
                .add();
        s.main("HHRSHHHH").run("1V2.B", "1A1.A").add();
        s.main("HHS.HHHH")
                .run("1V3.C", "1A1.B")
                .run("@36.5,12", "x63", "=181")
                .run("@36.5,15", "1V6.A")
                .add();
        s.main("HHS.HHHH").run("1V6.B", "x63", "=146").add();
        s.with(new Furniture.Leader(new Spot(31, 8.3), new Spot(26, 6.3), "8x M20x60-8.8 / 280 Nm"));
        s.with(new Furniture.Bubble(new Spot(36.5, 19), -1.6, new Spot(43, 23), "A", "3"));
        s.with(partsList(48, 20, "9", "1A1"));
        s.note("1V3 FLANGED TO THE CYLINDER PORT, NO HOSE BETWEEN.")
                .note("OPEN 1V6 ONLY FOR LEVELLING WITH THE PINS SET. SEE 5.3 OF THE MANUAL.");
        return s.revised("C", "C5", "1V6 ADDED", "2025-01-20");
    }

    static SheetPlan hoistStarboard(int number) {
        SheetPlan s = new SheetPlan(number, "GANTRY - HOIST CYLINDER, STARBOARD SIDE");
        cylinder(s, "1A2", "MP4");
        s.part("1V4", "Pilot-operated check valve", Pressure.pilotCheck(), 31.5, 23)
                .mirrored()
                .text(-2.2, 0)
                .add();
        s.part("1V5", "Counterbalance valve", Pressure.counterbalance(), 36.5, 19)
                .set("210 bar", "3050 PSI")
                .test("MP4")
                .add();
        s.main("..SR....")
                .run("<143@63,27", "x36.5", "1V5.V")
                .run(LineKind.PILOT, "1V4.X", "@36.5,23")
                .add();
        s.main("..RS....")
                .run("=145@63,31", "x31.5", "1V4.A")
                .run(LineKind.PILOT, "1V5.X", "x27", "y27", "@31.5,27")
                .add();
        s.main("HHRSHHHH").run("1V4.B", "1A2.A").add();
        s.main("HHS.HHHH")
                .run("1V5.C", "1A2.B")
                .run("@36.5,12", "x8", "=R")
                .run("@36.5,15", "x8", "=146")
                .add();
        s.with(new Furniture.Leader(new Spot(31, 8.3), new Spot(26, 6.3), "8x M20x60-8.8 / 280 Nm"));
        s.with(new Furniture.Bubble(new Spot(31.5, 23), 1.35, new Spot(40, 24.6), "E", "3"));
        s.with(partsList(5, 20, "10", "1A2"));
        s.note("MIRROR IMAGE OF PORT SIDE EXCEPT 1V6.").note("BLEED AT THE UPPER SCREW.");
        return s.revised("B", "C6", "1V5 SETTING CHANGED", "2024-09-02");
    }

    private static void cylinder(SheetPlan s, String tag, String test) {
        s.part(tag, "Hoist cylinder", new Actuators.Cylinder(), 34, 9)
                .set("160/110 x 3600", "6 x 4-1/2 x 141")
                .test(test)
                .text(-1.5, -1.6)
                .add();
    }

    private static Furniture partsList(double x, double y, String sheet, String cylinder) {
        return new Furniture.Table(
                x,
                y,
                "PARTS LIST",
                List.of(3.0, 2.0, 7.0, 4.0),
                List.of(
                        List.of("ITEM", "QTY", "DESCRIPTION", "REMARK"),
                        List.of(sheet + ".1", "1", "CYLINDER", cylinder),
                        List.of(sheet + ".2", "1", "COUNTERBALANCE BLOCK", "-"),
                        List.of(sheet + ".3", "1", "PILOT CHECK BLOCK", "4.A2 SIM."),
                        List.of(sheet + ".4", "8", "BOLT M20x60-8.8", "280 Nm"),
                        List.of(sheet + ".5", "14", "PIPE CLAMP", "SEE 8.6")));
    }
}
