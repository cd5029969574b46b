package linewalk.samples.machine;

import java.util.List;
import linewalk.samples.symbol.InLine;
import linewalk.samples.symbol.Storage;

/** The accumulator and the panel where most test points end. */
final class TestPanel {
    private TestPanel() {}

    static SheetPlan accumulatorAndTestPanel(int number) {
        SheetPlan s = new SheetPlan(number, "POWER UNIT - ACCUMULATOR AND TEST PANEL");
        s.part("0Z6", "Bladder accumulator", new Storage.Accumulator(), 20, 8)
                .set("32 L / 100 bar", "8.5 GAL / 1450 PSI")
                .test("MP2")
                .text(0.95, -0.6)
                .add();
        s.part("0V8", "Shut-off valve", InLine.shutOff(), 20, 14).add();
        s.part("0V9", "Discharge valve", InLine.shutOff(), 28, 11)
                .turned(1)
                .set("NORMALLY CLOSED")
                .text(-1, 0.9)
                .add();
        s.main("SSSSSSSS")
                .run("<120@5,17", "x57", ">121+122")
                .run("@20,17", "0V8.A")
                .run(LineKind.PILOT, "@38,17", "y22", "x63", ">K")
                .add();
        s.main("SSSSSSSS").run("0V8.B", "0Z6.P").run("@20,11", "0V9.A").add();
        s.net(LineKind.DRAIN, "........").run("0V9.B", "x63", ">174").add();
        String[] links = {"181", "R", "183", "184", "185", "186", "N", "S", "187"};
        String[] classes = {
            "HHS.HHHH", "HHS.HHHH", "HHHHS.HH", "......S.", ".......S", "RRRRRRRR", "EEEEEEEE", ".EEE....", "..SS...."
        };
        for (int i = 0; i < links.length; i++) {
            String point = "MP" + (i + 3);
            double x = 6 + 4.6 * i;
            s.part(point, "Test point", new Storage.TestPoint(), x, 27)
                    .test(point)
                    .add();
            s.main(classes[i]).run(point + ".P", "y35", "=" + links[i]).add();
        }
        s.with(new Furniture.Enclosure("TEST PANEL TP1", 4, 24.2, 46.5, 29.5, List.of()));
        s.with(testPointTable());
        s.note("CAPS ON ALL TEST COUPLINGS. MINI HOSES 4 mm.")
                .note("OPEN 0V9 AND READ ZERO AT MP2 BEFORE ANY WORK. SEE 5.B2 OF THE MANUAL.");
        return s.revised("B", "E8", "MP11 ADDED", "2024-06-19");
    }

    private static Furniture testPointTable() {
        return new Furniture.Table(
                53,
                24.5,
                "TEST POINTS",
                List.of(3.0, 8.0, 4.0),
                List.of(
                        List.of("MP", "MEASURES", "HOSE"),
                        List.of("MP3", "1A1 ROD SIDE", "2E1"),
                        List.of("MP4", "1A2 ROD SIDE", "2E2"),
                        List.of("MP5", "3A1 CAP SIDE", "3E1"),
                        List.of("MP6", "4M1 PORT A", "4K1"),
                        List.of("MP7", "4M1 PORT B", "4K2"),
                        List.of("MP8", "RETURN", "(4-G5)"),
                        List.of("MP9", "PINS SUPPLY", "5-A0"),
                        List.of("MP10", "PINS WITHDRAW", "-"),
                        List.of("MP11", "HOIST SUPPLY", "-")));
    }
}
