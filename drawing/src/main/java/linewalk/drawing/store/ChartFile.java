package linewalk.drawing.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import linewalk.drawing.CycleChart;

/** {@code cycle.csv}: columns {@code step} and, if wanted, {@code name}; every other column is a solenoid. */
final class ChartFile {

    private static final Set<String> ON = Set.of("1", "x", "+", "on", "yes");
    private static final Set<String> OFF = Set.of("0", "-", "off", "no");

    private ChartFile() {}

    static CycleChart read(Path folder) {
        Path file = folder.resolve("cycle.csv");
        if (!Files.exists(file)) {
            return CycleChart.NONE;
        }
        Csv.Table table = Csv.read(file);
        List<String> solenoids = new ArrayList<>(table.columns());
        solenoids.removeAll(List.of("step", "name"));
        List<CycleChart.Step> steps = new ArrayList<>();
        for (Csv.Row row : table.rows()) {
            steps.add(step(table, row, solenoids));
        }
        return new CycleChart(solenoids, steps);
    }

    private static CycleChart.Step step(Csv.Table table, Csv.Row row, List<String> solenoids) {
        if (row.get("step") == null) {
            throw table.wrong(row, "step", "the step has no number or name");
        }
        Set<String> energised = new LinkedHashSet<>();
        for (String s : solenoids) {
            String cell = row.get(s) == null ? "0" : row.get(s).toLowerCase(Locale.ROOT);
            if (ON.contains(cell)) {
                energised.add(s);
            } else if (!OFF.contains(cell)) {
                throw table.wrong(row, s, "'" + cell + "' is neither on (1, X, +) nor off (0, -, empty)");
            }
        }
        return new CycleChart.Step(row.get("step"), row.get("name"), energised);
    }
}
