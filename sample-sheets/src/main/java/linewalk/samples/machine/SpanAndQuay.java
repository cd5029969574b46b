package linewalk.samples.machine;

import java.util.List;
import linewalk.samples.symbol.Actuators;
import linewalk.samples.symbol.InLine;
import linewalk.samples.symbol.Machines;
import linewalk.samples.symbol.Pressure;
import linewalk.samples.symbol.Spot;

/** Sheets of the hinged span and of the winch on the quay. */
final class SpanAndQuay {
    private SpanAndQuay() {}

    static SheetPlan lockPins(int number) {
        SheetPlan s = new SheetPlan(number, "SPAN - LOCK PINS, PORT AND STARBOARD");
        pin(s, "2A1", "2V3", 24);
        pin(s, "2A2", "2V4", 46);
        s.main("ER..EEEE")
                .run("=153@5,20", "x43.5", "2V4.A")
                .run("@21.5,20", "2V3.A")
                .add();
        s.main("E...EEEE").run("2V3.B", "2A1.A").add();
        s.main("E...EEEE").run("2V4.B", "2A2.A").add();
        s.main(".EEE....")
                .run("<152@5,24", "x48.5", "2A2.B")
                .run("@26.5,24", "2A1.B")
                .run("@36,24", "y27", "x63", "=S")
                .add();
        s.main("....SR..").run("=156@5,31", "x63", "=158").add();
        s.main("....RS..").run("=157@5,35", "x63", "=159").add();
        s.with(new Furniture.Leader(new Spot(24, 31), new Spot(26, 28.7), "HOSE LOOP AT HINGE, R 400 MIN."));
        s.with(new Furniture.Bubble(new Spot(21.5, 15), 1.4, new Spot(13, 11), "F", "9"));
        s.note("PINS ARE SET BY OIL AND HELD BY 2V1 AT REST.").note("L-156 AND L-157 PASS THROUGH TO THE NOSE.");
        return s.revised("B", "D2", "2V4 ADDED", "2024-06-19");
    }

    private static void pin(SheetPlan s, String tag, String valve, double x) {
        s.part(tag, "Lock pin cylinder", new Actuators.Cylinder(), x, 9)
                .set("63/36 x 180", "2-1/2 x 1-3/8 x 7")
                .test("MP10")
                .text(-1.5, -1.6)
                .add();
        s.part(valve, "One-way flow control", InLine.flowControl(), x - 2.5, 15)
                .set("6 L/min", "1.6 GPM")
                .text(1.6, -0.2)
                .add();
    }

    static SheetPlan endFlap(int number) {
        SheetPlan s = new SheetPlan(number, "SPAN NOSE - END FLAP");
        s.part("3A1", "End flap cylinder", new Actuators.Cylinder(), 34, 9)
                .set("100/70 x 900", "4 x 2-3/4 x 36")
                .test("MP5")
                .text(-1.5, -1.6)
                .add();
        s.part("3V4", "Counterbalance valve", Pressure.counterbalance(), 31.5, 17)
                .mirrored()
                .set("190 bar", "2750 PSI")
                .test("MP5")
                .text(-2.9, -0.2)
                .add();
        s.part("3V2", "One-way flow control", InLine.flowControl(), 31.5, 23)
                .set("20 L/min", "5.3 GPM")
                .text(-2.6, -0.2)
                .add();
        s.part("3V3", "One-way flow control", InLine.flowControl(), 36.5, 23)
                .set("20 L/min", "5.3 GPM")
                .add();
        s.main("....SR..").run("=158@5,28", "x31.5", "3V2.A").add();
        s.main("....S...").run("3V2.B", "3V4.V").add();
        s.main("HHHHS.HH").run("3V4.C", "3A1.A").run("@31.5,12.5", "x5", "=183").add();
        s.main("....RS..").run("=159@5,32", "x36.5", "3V3.A").add();
        s.main(".....S..")
                .run("3V3.B", "3A1.B")
                .run(LineKind.PILOT, "3V4.X", "@36.5,17")
                .add();
        s.with(new Furniture.Leader(new Spot(31, 8.3), new Spot(26, 6.3), "4x M16x50-8.8"));
        s.with(new Furniture.Bubble(new Spot(31.5, 17), -1.6, new Spot(43, 20.5), "G", "11"));
        s.note("FLAP DROPS BY ITS OWN WEIGHT: 3V4 HOLDS IT.").note("GRID C7 OF THE DECK PLAN IS THE FLAP HINGE.");
        return s.revised("B", "B5", "183 ADDED", "2024-06-19");
    }

    static SheetPlan winchAndBrake(int number) {
        SheetPlan s = new SheetPlan(number, "QUAY - MOORING WINCH AND BRAKE");
        s.part("4M1", "Winch motor", Machines.motor(), 42, 18)
                .set("630 cm3", "38.4 cu in/rev")
                .test("MP6")
                .text(1.3, 1)
                .add();
        flow(s, "4V3", 12, 12);
        flow(s, "4V4", 12, 24);
        s.part("4V5", "Cross-port relief valve", Pressure.relief(), 22, 18)
                .turned(2)
                .set("185 bar", "2680 PSI")
                .text(0.9, -0.2)
                .add();
        s.part("4V6", "Cross-port relief valve", Pressure.relief(), 30, 18)
                .set("185 bar", "2680 PSI")
                .add();
        s.part("4A1", "Winch brake", new Actuators.Brake(), 46, 27)
                .set("30 bar", "435 PSI")
                .text(-2.9, -0.2)
                .add();
        s.main("......SR").run("=160@5,12", "4V3.A").add();
        s.main("......S.")
                .run("4V3.B", "x42", "4M1.A")
                .run("@22,12", "4V5.P")
                .run("@30,12", "4V6.T")
                .run("@36,12", "y7", "=184")
                .add();
        s.main("......RS").run("=161!L-116@5,24", "4V4.A").add();
        s.main(".......S")
                .run("4V4.B", "x42", "4M1.B")
                .run("@22,24", "4V5.T")
                .run("@30,24", "4V6.P")
                .run("@36,24", "y35", "=185")
                .add();
        s.drain().run("4M1.L", "x63", ">175").add();
        s.main("......SS").run("<162@5,31", "x46.7", "4A1.A").add();
        s.with(new Furniture.Enclosure(
                "MOTOR BLOCK",
                17.5,
                14.5,
                34.5,
                21.5,
                List.of(
                        new Furniture.FacePort("V1", 22, 14.5),
                        new Furniture.FacePort("V2", 30, 14.5),
                        new Furniture.FacePort("V3", 22, 21.5),
                        new Furniture.FacePort("V4", 30, 21.5))));
        s.with(new Furniture.Leader(new Spot(46, 26.4), new Spot(50, 23), "4x M20x70-8.8 / BRAKE FOOT"));
        s.note("ROPE 28 mm, 40 m. HEAVE MEANS HAUL IN.").note("BRAKE CLOSES WHEN Y5 IS OFF.");
        return s.revised("C", "E4", "185 MOVED", "2025-01-20");
    }

    private static void flow(SheetPlan s, String tag, double x, double y) {
        s.part(tag, "One-way flow control", InLine.flowControl(), x, y)
                .turned(1)
                .set("60 L/min", "16 GPM")
                .add();
    }
}
