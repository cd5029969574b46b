package linewalk.samples.machine;

import java.util.List;
import linewalk.samples.symbol.Directional;
import linewalk.samples.symbol.InLine;
import linewalk.samples.symbol.Pressure;
import linewalk.samples.symbol.Spot;

/** Sheets of the valve house: one manifold each. */
final class ValveHouse {
    private ValveHouse() {}

    static SheetPlan hoist(int number) {
        SheetPlan s = new SheetPlan(number, "VALVE HOUSE - MANIFOLD MB1, HOIST");
        s.part("1V1", "Directional valve 4/3", Directional.fourThree("A-T B-T", "Y1A", "Y1B", true), 32, 21)
                .add();
        s.part("1V7", "Check valve", InLine.check(), 26, 27)
                .turned(1)
                .text(-0.5, -1.25)
                .add();
        s.main("..SS....").run("<110@5,27", "1V7.A").run("@21,27", "y7", "=187").add();
        s.main("..SS....").run("1V7.B", "x31.7", "1V1.P").add();
        s.main("..RR....").run("1V1.T", "y29", "x63", ">132").add();
        s.main("..SR....").run("1V1.A", "y16", "x27", "y7", ">140").add();
        s.main("..RS....").run("1V1.B", "y16", "x40", "y7", "=141").add();
        s.net(LineKind.PILOT, "XXXXXXXX").run("<K@5,34", "x30.32", "1V1.X").add();
        s.drain().run("1V1.Y", "y34", "x45", ">172").add();
        s.with(new Furniture.Enclosure(
                "MANIFOLD MB1",
                15,
                12,
                50,
                31.5,
                List.of(
                        new Furniture.FacePort("P", 15, 27),
                        new Furniture.FacePort("M1", 21, 12),
                        new Furniture.FacePort("A1", 27, 12),
                        new Furniture.FacePort("B1", 40, 12),
                        new Furniture.FacePort("T", 50, 29),
                        new Furniture.FacePort("X", 30.32, 31.5),
                        new Furniture.FacePort("Y", 33.68, 31.5))));
        s.with(new Furniture.Leader(new Spot(50, 18), new Spot(53, 15.5), "8x M12x110-10.9 / 80 Nm"));
        s.with(new Furniture.Bubble(new Spot(26, 27), 0.85, new Spot(18, 20), "D", "5"));
        s.note("MB1 BOLTED TO WALL FRAME W3. PORTS NOT SHOWN ARE PLUGGED.")
                .note("CONNECTORS Y1A AND Y1B: 24 V DC, 2 A MAX. EACH.");
        return s.revised("B", "D7", "1V7 ADDED", "2024-09-02");
    }

    static SheetPlan pinsAndFlap(int number) {
        SheetPlan s = new SheetPlan(number, "VALVE HOUSE - MANIFOLD MB2, LOCK PINS AND END FLAP");
        s.part("2V2", "Pressure reducing valve", Pressure.reducing(), 20, 26)
                .set("80 bar", "1160 PSI")
                .test("MP9")
                .text(1.3, -0.55)
                .add();
        s.part("2V1", "Directional valve 4/2", Directional.fourTwo("Y2"), 20.3, 19)
                .add();
        s.part("3V1", "Directional valve 4/3", Directional.fourThree("", "Y3A", "Y3B", false), 44, 19)
                .add();
        s.main("SSSSSSSS")
                .run("<121@5,29", "x43.7", "3V1.P")
                .run("@20,29", "2V2.P")
                .add();
        s.main("EEEEEEEE")
                .run("2V2.A", "2V1.P")
                .run("@20,23", "x14", "y7", "=N")
                .add();
        s.main(".R..RR..")
                .run("2V1.T", "y22", "x27", "y31", "x63", ">133")
                .run("3V1.T", "@44.3,31")
                .add();
        s.drain().run("2V2.L", "x23", "y35.5", "x34", ">176").add();
        s.main(".EEE....").run("2V1.A", "y7", ">150").add();
        s.main("ER..EEEE").run("2V1.B", "y15", "x29", "y7", "=151").add();
        s.main("....SR..").run("3V1.A", "y15", "x38", "y7", "=154").add();
        s.main("....RS..").run("3V1.B", "y15", "x50", "y7", "=155").add();
        s.with(new Furniture.Enclosure(
                "MANIFOLD MB2",
                10,
                11.5,
                56,
                33,
                List.of(
                        new Furniture.FacePort("P", 10, 29),
                        new Furniture.FacePort("T", 56, 31),
                        new Furniture.FacePort("M", 14, 11.5),
                        new Furniture.FacePort("A2", 20, 11.5),
                        new Furniture.FacePort("B2", 29, 11.5),
                        new Furniture.FacePort("A3", 38, 11.5),
                        new Furniture.FacePort("B3", 50, 11.5),
                        new Furniture.FacePort("L", 23, 33))));
        s.with(new Furniture.Leader(new Spot(56, 20), new Spot(59, 17.5), "6x M10x90-10.9"));
        s.note("MB2 AS 6/C4 OF BERTH 1, EXCEPT 2V2.").note("SETTING OF 2V2 WITH PINS WITHDRAWN.");
        return s.revised("B", "D4", "TEST PORT M ADDED", "2024-06-19");
    }

    static SheetPlan winch(int number) {
        SheetPlan s = new SheetPlan(number, "VALVE HOUSE - MANIFOLD MB3, MOORING WINCH");
        s.part("4V1", "Directional valve 4/3", Directional.fourThree("A-T B-T", "Y4A", "Y4B", false), 24, 19)
                .add();
        s.part("4V2", "Directional valve 3/2", Directional.threeTwo("Y5"), 44, 19)
                .add();
        s.main("SSSSSSSS")
                .run("<122@5,28", "x43.7", "4V2.P")
                .run("@23.7,28", "4V1.P")
                .run("@34,28", "y35", ">165")
                .add();
        s.main("......RR")
                .run("4V1.T", "y30.5", "x63", ">134")
                .run("4V2.T", "@44.3,30.5")
                .add();
        s.main("......SR").run("4V1.A", "y15", "x18", "y7", "=160").add();
        s.main("......RS").run("4V1.B", "y15", "x31", "y7", "=161").add();
        s.main("......SS").run("4V2.A", "y7", ">162").add();
        s.with(new Furniture.Enclosure(
                "MANIFOLD MB3",
                12,
                11.5,
                54,
                32,
                List.of(
                        new Furniture.FacePort("P1", 12, 28),
                        new Furniture.FacePort("P2", 34, 32),
                        new Furniture.FacePort("T", 54, 30.5),
                        new Furniture.FacePort("A4", 18, 11.5),
                        new Furniture.FacePort("B4", 31, 11.5),
                        new Furniture.FacePort("A5", 43.7, 11.5))));
        s.with(new Furniture.Leader(new Spot(54, 20), new Spot(57, 17.5), "6x M10x90-10.9"));
        s.with(new Furniture.Table(
                57,
                6.5,
                "CONNECTORS",
                List.of(3.0, 4.0, 3.0),
                List.of(
                        List.of("COIL", "TERMINAL", "WIRE"),
                        List.of("Y4A", "X4:7", "K71"),
                        List.of("Y4B", "X4:8", "K72"),
                        List.of("Y5", "X4:9", "7-C2"))));
        s.note("P2 RESERVED FOR A SECOND WINCH.").note("4V1 FLOATS AT REST SO THAT THE BRAKE CAN CLOSE.");
        return s.revised("C", "F6", "PORT P2 ADDED", "2025-01-20");
    }
}
