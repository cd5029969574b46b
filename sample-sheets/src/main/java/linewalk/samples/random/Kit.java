package linewalk.samples.random;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import linewalk.samples.machine.Words;
import linewalk.samples.symbol.Actuators;
import linewalk.samples.symbol.Directional;
import linewalk.samples.symbol.InLine;
import linewalk.samples.symbol.Machines;
import linewalk.samples.symbol.Pressure;
import linewalk.samples.symbol.Storage;
import linewalk.samples.symbol.Symbol;

/**
 * A kind of part that a circuit may have: its letter in designations, the turns in which it is drawn, and the symbol by
 * the number of its designation.
 */
record Kit(String letter, List<Integer> turns, List<Words> settings, Function<Integer, Symbol> symbol) {
    private static final List<Integer> ANY = List.of(0, 0, 1, 2, 3);
    private static final List<Integer> LEVEL = List.of(0, 0, 2);
    private static final List<Integer> UPRIGHT = List.of(0);
    private static final List<String> CENTRES = List.of("", "A-T B-T");
    private static final List<Words> PRESSURES =
            List.of(new Words("230 bar", "3300 PSI"), new Words("80 bar", "1160 PSI"));
    private static final List<Words> FLOWS = List.of(new Words("4 L/min", "1.1 GPM"));
    private static final List<Words> SIZES = List.of(new Words("63/36 x 400", "2-1/2 x 16"));
    private static final List<Words> NONE = List.of();

    static List<Kit> all() {
        return List.of(
                new Kit(
                        "V",
                        LEVEL,
                        NONE,
                        n -> Directional.fourThree(CENTRES.get(n / 2 % 2), "Y" + n + "A", "Y" + n + "B", false)),
                new Kit(
                        "V",
                        LEVEL,
                        NONE,
                        n -> Directional.fourThree(CENTRES.get(n / 2 % 2), "Y" + n + "A", "Y" + n + "B", true)),
                new Kit("V", LEVEL, NONE, n -> Directional.fourTwo("Y" + n)),
                new Kit("V", LEVEL, NONE, n -> Directional.threeTwo("Y" + n)),
                new Kit("V", LEVEL, NONE, n -> Directional.twoTwo("Y" + n)),
                new Kit("V", ANY, PRESSURES, n -> Pressure.relief()),
                new Kit("V", ANY, PRESSURES, n -> Pressure.reducing()),
                new Kit("V", ANY, NONE, n -> Pressure.pilotCheck()),
                new Kit("V", ANY, PRESSURES, n -> Pressure.counterbalance()),
                new Kit("V", ANY, NONE, n -> InLine.check()),
                new Kit("V", ANY, NONE, n -> InLine.check()),
                new Kit("V", ANY, NONE, n -> InLine.shutOff()),
                new Kit("V", ANY, FLOWS, n -> InLine.flowControl()),
                new Kit("Z", ANY, List.of(Words.same("10 um")), n -> InLine.filter()),
                new Kit("Z", ANY, NONE, n -> InLine.cooler()),
                new Kit("Z", ANY, List.of(new Words("32 L", "8.5 GAL")), n -> new Storage.Accumulator()),
                new Kit("P", ANY, List.of(new Words("71 cm3", "4.33 cu in/rev")), n -> Machines.pump(n % 2 == 0)),
                new Kit("M", ANY, NONE, n -> Machines.motor()),
                new Kit("A", ANY, SIZES, n -> new Actuators.Cylinder()),
                new Kit("A", ANY, NONE, n -> new Actuators.Brake()),
                new Kit("MP", ANY, NONE, n -> new Storage.TestPoint()),
                new Kit("T", UPRIGHT, NONE, Kit::tank));
    }

    private static Symbol tank(int number) {
        Map<String, Double> pipes = new LinkedHashMap<>();
        int count = 1 + number % 4;
        double half = 2.5 + count;
        for (int i = 0; i < count; i++) {
            // To the right of the mark of the oil's level.
            pipes.put("R" + (i + 1), half - 1 - 1.5 * i);
        }
        return new Storage.Tank(half, 1.5, pipes);
    }
}
