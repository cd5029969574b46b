package linewalk.samples.style;

import java.util.List;

/**
 * Border grid of a sheet, in millimetres from the paper's top left: field borders (one more than labels), labels left
 * to right and top to bottom, the drawing frame and the strip around it for the labels.
 */
public record Grid(
        List<Double> columnsMm,
        List<Double> rowsMm,
        List<String> columnLabels,
        List<String> rowLabels,
        double leftMm,
        double topMm,
        double rightMm,
        double bottomMm,
        double stripMm,
        boolean bothSides,
        boolean centreMarks) {
    public Zone zoneAt(double xMm, double yMm) {
        int column = field(columnsMm, xMm);
        int row = field(rowsMm, yMm);
        return zone(column, row);
    }

    public Zone zone(int column, int row) {
        return new Zone(column, row, columnLabels.get(column), rowLabels.get(row));
    }

    private static int field(List<Double> borders, double at) {
        int i = 0;
        while (i < borders.size() - 2 && at > borders.get(i + 1)) {
            i++;
        }
        return i;
    }
}
