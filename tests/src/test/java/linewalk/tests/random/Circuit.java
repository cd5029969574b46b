package linewalk.tests.random;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import linewalk.drawing.SheetReading;
import linewalk.samples.sheet.DrawnSheet;

/** How one drawn circuit was read: joins missed, wrong, and wrong on a line told as sure. */
record Circuit(String style, String name, Set<String> missed, Set<String> wrong, Set<String> sureWrong) {
    private static final double SURE = 0.9;

    static Circuit of(String style, String name, DrawnSheet sheet, SheetReading reading) {
        Joined drawn = Joined.drawn(sheet);
        Joined read = Joined.read(sheet, reading, 0);
        Joined sure = Joined.read(sheet, reading, SURE);
        return new Circuit(style, name, drawn.without(read), read.without(drawn), sure.without(drawn));
    }

    boolean isRight() {
        return missed.isEmpty() && wrong.isEmpty();
    }

    @Override
    public String toString() {
        return name + ": missed " + missed + " wrong " + wrong + " of these sure " + sureWrong;
    }

    static double right(List<Circuit> circuits) {
        return (double) circuits.stream().filter(Circuit::isRight).count() / circuits.size();
    }

    /** A row of the table: circuits, share of right ones, wrong joins told as sure. */
    static String row(String style, List<Circuit> circuits) {
        long wrong = circuits.stream().mapToLong(c -> c.sureWrong().size()).sum();
        return String.format(Locale.ROOT, "%-8s %8d %6.3f %16d", style, circuits.size(), right(circuits), wrong);
    }
}
