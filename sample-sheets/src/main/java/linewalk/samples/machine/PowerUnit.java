package linewalk.samples.machine;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linewalk.samples.symbol.Directional;
import linewalk.samples.symbol.InLine;
import linewalk.samples.symbol.Machines;
import linewalk.samples.symbol.Pressure;
import linewalk.samples.symbol.Spot;
import linewalk.samples.symbol.Storage;

/** Sheets of the power unit container; with {@code deckGear} they also serve the deck gear manifold. */
final class PowerUnit {
    private PowerUnit() {}

    static SheetPlan reservoirAndPumps(int number, boolean deckGear) {
        SheetPlan s = new SheetPlan(number, "POWER UNIT - RESERVOIR AND PUMPS");
        Map<String, Double> pipes = new LinkedHashMap<>();
        pipes.put("S1", -18.0);
        pipes.put("S2", -2.0);
        pipes.put("R2", 10.0);
        pipes.put("R1", 14.0);
        pipes.put("D1", 18.0);
        s.part("TANK", "Reservoir", new Storage.Tank(24, 2.5, pipes), 32, 33.5)
                .set("1200 L  ISO VG 32", "320 GAL  ISO VG 32")
                .text(-12, 0.6)
                .add();
        pumpSet(s, "1", 14, "71 cm3", "4.33 cu in/rev", "37 kW", "50 HP", false);
        pumpSet(s, "2", 30, "45 cm3  170 bar", "2.75 cu in/rev  2450 PSI", "18.5 kW", "25 HP", true);
        s.main("..SS....").run("0V1.B", "y7", ">101").add();
        s.main("SSSSSSSS").run("0V2.B", "y10", "x63", ">102").add();
        s.drain()
                .run("0P1.L", "x21", "y13", "x42", ">171")
                .run("0P2.L", "x37", "@37,13")
                .add();
        NetPlan drain = s.drain().run("<171@63,21", "x50", "TANK.D1");
        if (deckGear) {
            drain.run("<191@63,17", "x53", "@53,21");
        }
        drain.add();
        s.main("RRRRRRRR").run("<135@63,25", "x46", "TANK.R1").add();
        s.drain().run("TANK.R2", "y29", "x63", ">136").add();
        s.with(new Furniture.Leader(new Spot(8, 35), new Spot(5, 30), "6x M16x60-8.8 / TANK FEET"));
        s.with(new Furniture.Bubble(new Spot(30, 27), 0.95, new Spot(23.5, 27), "B", "4"));
        s.note("ALL PIPE SIZES ARE OUTSIDE DIAMETER AND WALL UNLESS STATED.")
                .note("0M1 AND 0M2 RUN CLOCKWISE SEEN FROM THE SHAFT END. SEE TABLE 2/C3 OF THE MANUAL.")
                .note("FLUSH TO CLASS 18/16/13 BEFORE FIRST START.")
                .note("DO NOT SCALE.");
        return s.revised("B", "D5", "0V4 MOVED BELOW PUMP", "2024-09-02");
    }

    private static void pumpSet(
            SheetPlan s,
            String n,
            double x,
            String size,
            String sizeUs,
            String power,
            String powerUs,
            boolean variable) {
        String valve = n.equals("1") ? "0V3" : "0V4";
        s.part("0P" + n, "Pump", Machines.pump(variable), x, 22)
                .set(size, sizeUs)
                .test("MP" + n)
                .text(1.2, 1.1)
                .add();
        s.part("0M" + n, "Electric motor", Machines.electricMotor(), x - 4, 22)
                .set(power, powerUs)
                .text(-1, -1.9)
                .add();
        s.part("0V" + n, "Check valve", InLine.check(), x, 16).add();
        s.part(valve, "Suction valve", InLine.shutOff(), x, 27).text(1.15, 0).add();
        s.main("IIIIIIII").run("TANK.S" + n, valve + ".A").add();
        s.main("IIIIIIII").run(valve + ".B", "0P" + n + ".S").add();
        s.main(n.equals("1") ? "..SS...." : "SSSSSSSS")
                .run("0P" + n + ".P", "0V" + n + ".A")
                .add();
    }

    static SheetPlan filtersAndReliefs(int number, boolean deckGear) {
        SheetPlan s = new SheetPlan(number, "POWER UNIT - PRESSURE FILTERS AND RELIEF VALVES");
        s.part("0Z4", "Pressure filter", InLine.filter(), 14, 12)
                .turned(1)
                .set("10 um")
                .test("MP1")
                .add();
        s.part("0V5", "Relief valve", Pressure.relief(), 23, 17)
                .turned(2)
                .set("230 bar", "3300 PSI")
                .test("MP1")
                .text(0.9, -0.2)
                .add();
        s.part("0V7", "Unloading valve 2/2", Directional.twoTwo("Y0"), 38, 17).add();
        s.part("MP1", "Test point", new Storage.TestPoint(), 29, 8).test("MP1").add();
        s.part("0Z5", "Pressure filter", InLine.filter(), 14, 29)
                .turned(1)
                .set("6 um")
                .test("MP2")
                .add();
        s.part("0V6", "Relief valve", Pressure.relief(), 23, 26)
                .set("190 bar", "2750 PSI")
                .test("MP2")
                .add();
        s.part("MP2", "Test point", new Storage.TestPoint(), 31, 26).test("MP2").add();
        s.main("..SS....").run("<101@5,12", "0Z4.A").add();
        s.main("..SS....")
                .run("0Z4.B", "x63", ">110")
                .run("@23,12", "0V5.P")
                .run("@29,12", "MP1.P")
                .run("@38,12", "0V7.P")
                .add();
        s.main("RR..RRRR")
                .run("0V5.T", "y22", "x63", ">131")
                .run("0V6.T", "@23,22")
                .run("0V7.T", "@38,22")
                .add();
        s.main("SSSSSSSS").run("<102@5,29", "0Z5.A").add();
        NetPlan supply = s.main("SSSSSSSS")
                .run("0Z5.B", "x63", ">120")
                .run("@23,29", "0V6.P")
                .run("@31,29", "MP2.P");
        if (deckGear) {
            supply.run("@50,29", "y33", "x63", ">190");
        }
        supply.add();
        s.with(new Furniture.Leader(new Spot(14.4, 12.6), new Spot(17, 15.5), "4x M10x35-8.8"));
        s.with(new Furniture.Bubble(new Spot(38, 17), -1.7, new Spot(47, 17), "C", "6"));
        s.note("0V5 AND 0V6 SEALED AFTER SETTING.")
                .note("FILTER ELEMENTS: SEE TABLE 3.D1 OF THE INSTALLATION MANUAL.")
                .note("ALL BRANCHES TO TEST POINTS 12x2.");
        return s.revised("B", "C4", "0V7 ADDED", "2024-06-19");
    }

    static SheetPlan returnAndCooler(int number, boolean deckGear) {
        SheetPlan s = new SheetPlan(number, "POWER UNIT - RETURN FILTER AND COOLER");
        s.part("0Z3", "Oil cooler", InLine.cooler(), 28, 15)
                .turned(1)
                .set("30 kW", "102 000 BTU/H")
                .text(-1.2, 1.25)
                .add();
        s.part("0V10", "Bypass check valve", InLine.check(), 28, 10)
                .turned(1)
                .set("2 bar", "30 PSI")
                .add();
        s.part("0Z2", "Return filter", InLine.filter(), 42, 15)
                .turned(1)
                .set("10 um")
                .test("MP8")
                .text(-0.8, 1.25)
                .add();
        s.part("0V11", "Bypass check valve", InLine.check(), 42, 10)
                .turned(1)
                .set("3 bar", "45 PSI")
                .add();
        NetPlan header = s.main("RRRRRRRR")
                .run("<131@5,9", "x16", "y23", "<134@5,23")
                .run("<132@5,14", "@16,14")
                .run("<133@5,18", "@16,18")
                .run("@16,15", "0Z3.A")
                .run("@23,15", "y10", "0V10.A");
        if (deckGear) {
            header.run("<192@5,20.5", "@16,20.5");
        }
        header.add();
        s.main("RRRRRRRR")
                .run("0Z3.B", "0Z2.A")
                .run("0V10.B", "x33", "@33,15")
                .run("@37,15", "y10", "0V11.A")
                .run("@35,15", "y23", "x63", "=186!")
                .add();
        s.main("RRRRRRRR")
                .run("0Z2.B", "x63", ">135")
                .run("0V11.B", "x47", "@47,15")
                .add();
        s.drain()
                .run("<175@5,26.5", "x13", "y36", "<176@5,36")
                .run("<174@5,30", "@13,30")
                .run("<172@5,33", "@13,33")
                .run("@13,31", "x63", ">136")
                .add();
        s.with(new Furniture.Leader(new Spot(28.5, 14.3), new Spot(31, 6.5), "8x M12x40-8.8 / 80 Nm"));
        s.with(new Furniture.Table(
                48,
                25.5,
                "COOLING WATER",
                List.of(4.0, 6.0, 5.0),
                List.of(
                        List.of("ITEM", "CONNECTION", "REMARK"),
                        List.of("W1", "INLET FLANGE", "SEE 3.B7"),
                        List.of("W2", "OUTLET FLANGE", "4-C2 SIM."))));
        s.note("DRAIN HEADER TO STAY BELOW 0.5 bar (7 PSI).").note("0V10 OPENS WITH COLD OIL.");
        return s.revised("B", "B6", "BYPASS 0V11 ADDED", "2024-06-19");
    }
}
