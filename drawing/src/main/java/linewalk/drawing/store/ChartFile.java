package linewalk.drawing.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.CycleChart;
import linewalk.drawing.UserError;

/**
 * {@code cycle.csv}, or {@code cycle.xlsx} with the same table on its first sheet: columns {@code step} and, if wanted,
 * {@code name}; what every other column says is told by {@link ChartColumn}.
 */
final class ChartFile {

    private ChartFile() {}

    static CycleChart read(Path folder) {
        Path csv = folder.resolve("cycle.csv");
        Path book = folder.resolve("cycle.xlsx");
        if (Files.exists(book)) {
            if (Files.exists(csv)) {
                throw new UserError(folder + " has both cycle.csv and cycle.xlsx; keep the one that counts");
            }
            return chart(Workbooks.read(book));
        }
        return Files.exists(csv) ? chart(Csv.read(csv)) : CycleChart.NONE;
    }

    private static CycleChart chart(Csv.Table table) {
        List<ChartColumn> columns = table.columns().stream()
                .filter(c -> !c.equals("step") && !c.equals("name"))
                .map(c -> ChartColumn.of(table, c))
                .toList();
        List<CycleChart.Step> steps =
                table.rows().stream().map(r -> step(table, r, columns)).toList();
        List<String> switches = columns.stream()
                .filter(c -> c.says() == ChartColumn.Says.SWITCH)
                .map(ChartColumn::tag)
                .toList();
        return new CycleChart(switches, steps);
    }

    private static CycleChart.Step step(Csv.Table table, Csv.Row row, List<ChartColumn> columns) {
        if (row.get("step") == null) {
            throw table.wrong(row, "step", "the step has no number or name");
        }
        Set<String> energised = new LinkedHashSet<>();
        Map<String, String> positions = new LinkedHashMap<>();
        Map<String, Boolean> open = new LinkedHashMap<>();
        Map<String, CycleChart.Motion> motions = new LinkedHashMap<>();
        Map<String, CycleChart.Load> loads = new LinkedHashMap<>();
        Map<String, Double> pressuresBar = new LinkedHashMap<>();
        for (ChartColumn c : columns) {
            String cell = row.get(c.header());
            if (cell == null) {
                continue;
            }
            ChartCell at = new ChartCell(table, row, c.header(), cell);
            switch (c.says()) {
                case SWITCH -> {
                    if (at.on()) {
                        energised.add(c.tag());
                    }
                }
                case POSITION -> positions.put(c.tag(), at.position());
                case OPEN -> open.put(c.tag(), at.open());
                case MOTION -> motions.put(c.tag(), at.motion());
                case LOAD -> loads.put(c.tag(), at.load());
                case PRESSURE -> pressuresBar.put(c.tag(), at.pressureBar(c.unit()));
            }
        }
        CycleChart.Said said = new CycleChart.Said(positions, open, motions, loads, pressuresBar);
        return new CycleChart.Step(row.get("step"), row.get("name"), energised, said);
    }
}
