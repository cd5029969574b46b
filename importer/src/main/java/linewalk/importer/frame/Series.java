package linewalk.importer.frame;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import linewalk.importer.lettering.Label;

/**
 * Zone labels in a row: consecutive numbers or letters (I and O may be left out), rising or falling, at about equal
 * distances.
 *
 * @param horizontal they stand side by side; else one above the other
 */
record Series(List<Label> labels, boolean horizontal) {

    /** Spacing may differ at the ends, where the rest of the sheet falls (ISO 5457). */
    private static final double SPACING = 0.45;

    /** How nearly two spacings a gap must be to hold a label that was not read. */
    private static final double ONE_LOST = 0.25;

    private static final double ALIGNED = 0.7;
    static final int SHORTEST = 2;

    Series {
        labels = List.copyOf(labels);
    }

    boolean letters() {
        return Character.isLetter(labels.get(0).text().charAt(0));
    }

    double along(int i) {
        return along(labels.get(i), horizontal);
    }

    double acrossPt() {
        return across(labels.get(0), horizontal);
    }

    double spanPt() {
        return Math.abs(along(labels.size() - 1) - along(0));
    }

    static double along(Label l, boolean horizontal) {
        return horizontal ? l.center().xPt() : l.center().yPt();
    }

    static double across(Label l, boolean horizontal) {
        return horizontal ? l.center().yPt() : l.center().xPt();
    }

    /** All series among short labels; each at least two long. */
    static List<Series> find(List<Label> labels, boolean horizontal) {
        List<Label> sorted = new ArrayList<>(labels);
        ToDoubleFunction<Label> across = l -> across(l, horizontal);
        sorted.sort(Comparator.comparingDouble(across));
        List<Series> found = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= sorted.size(); i++) {
            boolean ends = i == sorted.size()
                    || across.applyAsDouble(sorted.get(i)) - across.applyAsDouble(sorted.get(i - 1))
                            > ALIGNED * sorted.get(i).sizePt();
            if (ends) {
                runs(sorted.subList(from, i), horizontal, found);
                from = i;
            }
        }
        return found;
    }

    private static void runs(List<Label> row, boolean horizontal, List<Series> found) {
        for (boolean letters : new boolean[] {true, false}) {
            List<Label> same = new ArrayList<>();
            for (Label l : row) {
                if (Character.isLetter(l.text().charAt(0)) == letters) {
                    same.add(l);
                }
            }
            same.sort(Comparator.comparingDouble(l -> along(l, horizontal)));
            for (int direction : new int[] {1, -1}) {
                longest(same, direction, horizontal, found);
            }
        }
    }

    /** The longest chain of consecutive labels; strange labels between (a line end, a note) are passed over. */
    private static void longest(List<Label> row, int direction, boolean horizontal, List<Series> found) {
        int n = row.size();
        Map<Integer, List<Label>> best = new HashMap<>();
        List<Label> longest = List.of();
        for (int i = 0; i < n; i++) {
            List<Label> chain = new ArrayList<>();
            for (int j = 0; j < i; j++) {
                boolean next = follows(row.get(j), row.get(i), direction) && even(best.get(j), row.get(i), horizontal);
                if (best.get(j).size() > chain.size()
                        && (next || skips(best.get(j), row.get(i), direction, horizontal))) {
                    chain = new ArrayList<>(best.get(j));
                }
            }
            chain.add(row.get(i));
            best.put(i, chain);
            if (chain.size() > longest.size()) {
                longest = chain;
            }
        }
        if (longest.size() >= SHORTEST) {
            found.add(new Series(longest, horizontal));
        }
    }

    private static boolean even(List<Label> chain, Label next, boolean horizontal) {
        int n = chain.size();
        double gap = along(next, horizontal) - along(chain.get(n - 1), horizontal);
        if (gap < 2 * next.sizePt()) {
            return false;
        }
        if (n < 2) {
            return true;
        }
        double before = lastGap(chain, horizontal);
        return Math.abs(gap - before) < SPACING * Math.max(gap, before);
    }

    /** From label to label, also where one between them was not read. */
    private static double lastGap(List<Label> chain, boolean horizontal) {
        Label a = chain.get(chain.size() - 2);
        Label b = chain.get(chain.size() - 1);
        double gap = along(b, horizontal) - along(a, horizontal);
        boolean lost = between(a.text(), b.text(), 1) != null || between(a.text(), b.text(), -1) != null;
        return lost ? gap / 2 : gap;
    }

    /** One label in between was not read: the place is there, and so is the letter's or number's own. */
    private static boolean skips(List<Label> chain, Label to, int direction, boolean horizontal) {
        int n = chain.size();
        if (n < 2) {
            return false;
        }
        double before = lastGap(chain, horizontal);
        double gap = along(to, horizontal) - along(chain.get(n - 1), horizontal);
        return Math.abs(gap - 2 * before) < ONE_LOST * before
                && between(chain.get(n - 1).text(), to.text(), direction) != null;
    }

    /** The zone between two that are no neighbours, but both neighbours of it; null where there is none. */
    static String between(String a, String b, int direction) {
        String from = direction > 0 ? a : b;
        String to = direction > 0 ? b : a;
        if (from.length() == 1 && to.length() == 1 && Character.isLetter(from.charAt(0))) {
            char c = (char) (from.charAt(0) + 1);
            c += c == 'I' || c == 'O' ? 1 : 0;
            return next(c, to.charAt(0)) ? String.valueOf(c) : null;
        }
        boolean numbers = Character.isDigit(from.charAt(0)) && Character.isDigit(to.charAt(0));
        return numbers && Integer.parseInt(to) == Integer.parseInt(from) + 2
                ? String.valueOf(Integer.parseInt(from) + 1)
                : null;
    }

    /** The first of a series, 1 or A, if it comes next after two neighbours; else null. */
    static String first(String before, String last) {
        return Stream.of("1", "A")
                .filter(x -> last.equals(between(x, before, 1)))
                .findFirst()
                .orElse(null);
    }

    private static boolean follows(Label a, Label b, int direction) {
        String from = direction > 0 ? a.text() : b.text();
        String to = direction > 0 ? b.text() : a.text();
        if (Character.isDigit(from.charAt(0))) {
            return Integer.parseInt(to) == Integer.parseInt(from) + 1;
        }
        if (from.length() > 1 || to.length() > 1) {
            return from.length() == to.length() && from.charAt(0) == to.charAt(0) && next(from.charAt(1), to.charAt(1));
        }
        return next(from.charAt(0), to.charAt(0));
    }

    private static boolean next(char a, char b) {
        return b == a + 1 || (b == a + 2 && (b == 'J' || b == 'P'));
    }
}
