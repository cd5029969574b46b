package linewalk.linker;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Random drawing sets in grids of only 16 zones, with or without drafting errors and misreadings. */
final class RandomSet {

    private static final int SHEETS = 8;
    private static final int PAIRS = 200;

    private final Random random;
    private final boolean errors;
    /** The ends that belong together, both ways; where one was not drawn there is no pair. */
    final Map<String, String> mate = new HashMap<>();

    /** An end as it should be drawn. */
    private record End(String id, int sheet, String zone, String label, String flow) {}

    RandomSet(Random random, boolean errors) {
        this.random = random;
        this.errors = errors;
    }

    String text() {
        Map<Integer, List<String>> rows = new HashMap<>();
        for (int i = 0; i < PAIRS; i++) {
            String label = random.nextInt(2) == 0 ? "" : "L-" + (100 + random.nextInt(90));
            boolean flow = random.nextBoolean();
            End a = new End("a" + i, 1 + random.nextInt(SHEETS), zone(), label, flow ? "out" : "");
            End b = new End("b" + i, 1 + random.nextInt(SHEETS), zone(), label, flow ? "in" : "");
            boolean bothDrawn = draw(a, b, rows) & draw(b, a, rows);
            if (bothDrawn) {
                mate.put(a.id, b.id);
                mate.put(b.id, a.id);
            }
        }
        StringBuilder text = new StringBuilder();
        for (int s = 1; s <= SHEETS; s++) {
            text.append("sheet ").append(s).append('\n');
            rows.getOrDefault(s, List.of()).forEach(r -> text.append(r).append('\n'));
        }
        return text.toString();
    }

    private String zone() {
        return "" + "ABCD".charAt(random.nextInt(4)) + (1 + random.nextInt(4));
    }

    /** False where the drafter forgot this end, or the page hid it. */
    private boolean draw(End e, End other, Map<Integer, List<String>> rows) {
        if (chance(15)) {
            return false;
        }
        String zone = chance(3) ? neighbour(other.zone) : chance(2) ? zone() : other.zone;
        int sheet = chance(1) ? 1 + random.nextInt(SHEETS) : other.sheet;
        String label =
                e.label.isEmpty() ? "" : chance(3) ? "L-" + (100 + random.nextInt(90)) : chance(4) ? "" : e.label;
        String flow = chance(2) ? "out" : e.flow;
        String misread = chance(4) ? "ocr or=" + sheet + "/" + zone + ":0.4" : "";
        String said = misread.isEmpty() ? zone : neighbour(zone);
        rows.computeIfAbsent(e.sheet, k -> new ArrayList<>())
                .add(String.join(
                        " ",
                        "ref",
                        e.id,
                        e.zone + "+" + random.nextInt(40) + "," + random.nextInt(40),
                        ">",
                        sheet + "/" + said,
                        label,
                        flow,
                        misread));
        return true;
    }

    private boolean chance(int percent) {
        return errors && random.nextInt(100) < percent;
    }

    private static String neighbour(String zone) {
        int column = zone.charAt(1) - '0';
        return "" + zone.charAt(0) + (column == 4 ? 3 : column + 1);
    }
}
