package linewalk.renderer.iso;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * On which side of upright lines their letters stand: at the right, at the left where the next line is too near. Letters
 * with room on neither side are left out.
 */
final class LetterSides {

    /** From a line's middle to its letter, in modules. */
    static final double BESIDE = 0.35;

    private static final double CLEAR = 0.25;

    private final Map<Dock, Boolean> toLeft = new HashMap<>();
    private final Set<Dock> crowded = new HashSet<>();

    LetterSides(List<Dock> docks) {
        for (Side side : List.of(Side.TOP, Side.BOTTOM)) {
            choose(docks.stream()
                    .filter(d -> d.side() == side)
                    .sorted(Comparator.comparingDouble(Dock::at))
                    .toList());
        }
    }

    private void choose(List<Dock> row) {
        double taken = -Double.MAX_VALUE;
        for (int i = 0; i < row.size(); i++) {
            Dock d = row.get(i);
            double need = BESIDE + d.letterWidth() + CLEAR;
            double next = i + 1 < row.size() ? row.get(i + 1).at() : Double.MAX_VALUE;
            boolean right = d.at() + need < next;
            if (d.letterWidth() > 0 && right) {
                toLeft.put(d, false);
            } else if (d.letterWidth() > 0 && d.at() - need > taken) {
                toLeft.put(d, true);
            } else if (d.letterWidth() > 0) {
                crowded.add(d);
            }
            taken = d.letterWidth() > 0 && right ? d.at() + need : d.at();
        }
    }

    /** Every letter has its place. */
    boolean fit() {
        return crowded.isEmpty();
    }

    boolean isLeft(Dock d) {
        return toLeft.getOrDefault(d, false);
    }
}
