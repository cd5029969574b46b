package linewalk.linker;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import linewalk.drawing.Component;
import linewalk.drawing.CycleChart;
import linewalk.drawing.Finding;
import linewalk.drawing.Origin;
import linewalk.drawing.Position;
import linewalk.drawing.Rule;

/**
 * Names of solenoids on scans are small and often misread; the cycle chart says what there is. A name that is not in the
 * chart is the one column that looks like it and that no other coil is called; a coil without a name is the one that its
 * fellow on the same valve leaves ({@code Y4A} beside {@code Y4B}). Each is told as a doubt. Text that the drawing itself
 * holds is never changed: there it is a mistake of the drafter.
 */
final class CoilNames {

    /** Signs that readers take for one another; each class as its first sign. */
    private static final List<String> ALIKE = List.of("8BS5", "0DOQ", "1IL|7", "2Z", "6G", "4A", "UV");

    private final List<PageDraft> scans;
    private final Set<String> free = new HashSet<>();
    private final List<String> columns;

    private CoilNames(List<PageDraft> pages, CycleChart chart) {
        scans = pages.stream().filter(p -> p.origin == Origin.OCR).toList();
        columns = chart.solenoids();
        columns.forEach(c -> free.add(Names.plain(c)));
        for (PageDraft p : pages) {
            for (Component c : p.components) {
                free.remove(Names.plain(c.tag()));
                c.positions().forEach(x -> x.by().forEach(by -> free.remove(Names.plain(by))));
            }
        }
    }

    /** Leaves the positions of valves on scans with names of the chart where one is surely meant. */
    static void read(List<PageDraft> pages, CycleChart chart) {
        CoilNames names = new CoilNames(pages, chart);
        names.each(names::lookalike);
        names.each(names::fellow);
    }

    private interface Chosen {
        Optional<String> of(Component valve, Position position);
    }

    private void each(Chosen name) {
        if (free.isEmpty()) {
            return;
        }
        for (PageDraft page : scans) {
            page.components.replaceAll(c -> renamed(page, c, name));
        }
    }

    private Component renamed(PageDraft page, Component c, Chosen name) {
        List<Position> positions = new ArrayList<>(c.positions());
        for (int i = 0; i < positions.size(); i++) {
            Position p = positions.get(i);
            Optional<String> column = name.of(c, p);
            if (column.isPresent()) {
                free.remove(Names.plain(column.get()));
                positions.set(i, new Position(List.of(column.get()), p.how(), p.passages()));
                page.doubts.add(doubt(c, p, column.get()));
            }
        }
        return positions.equals(c.positions()) ? c : LineEdits.with(c, c.ports(), positions);
    }

    private Optional<String> lookalike(Component valve, Position p) {
        boolean misread = coil(valve, p) && !p.isUnnamed() && !listed(p.by().get(0));
        return misread ? only(c -> look(c).equals(look(p.by().get(0)))) : Optional.empty();
    }

    private Optional<String> fellow(Component valve, Position p) {
        List<String> named = valve.positions().stream()
                .filter(x -> coil(valve, x) && listed(x.by().get(0)))
                .map(x -> Names.plain(x.by().get(0)))
                .toList();
        long unnamed = valve.positions().stream()
                .filter(Position::isUnnamed)
                .distinct()
                .count();
        return p.isUnnamed() && unnamed == 1 && named.size() == 1
                ? only(c -> differInLast(Names.plain(c), named.get(0)))
                : Optional.empty();
    }

    private static boolean coil(Component valve, Position p) {
        return !p.isRest()
                && (p.how() == Position.How.SOLENOID || p.how() == null)
                && p.by().size() == 1
                && valve.findPortNamed(p.by().get(0)).isEmpty();
    }

    private boolean listed(String name) {
        return columns.stream().anyMatch(c -> Names.plain(c).equals(Names.plain(name)));
    }

    /** The one column that no coil is called and that fits. */
    private Optional<String> only(Predicate<String> fits) {
        List<String> found = columns.stream()
                .filter(c -> free.contains(Names.plain(c)) && fits.test(c))
                .toList();
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    private static boolean differInLast(String a, String b) {
        int n = a.length();
        return n > 1 && n == b.length() && a.substring(0, n - 1).equals(b.substring(0, n - 1));
    }

    private static String look(String name) {
        StringBuilder look = new StringBuilder();
        for (char sign : Names.plain(name).toUpperCase(Locale.ROOT).toCharArray()) {
            look.append(ALIKE.stream()
                    .filter(a -> a.indexOf(sign) >= 0)
                    .map(a -> a.charAt(0))
                    .findFirst()
                    .orElse(sign));
        }
        return look.toString();
    }

    private static Finding doubt(Component valve, Position read, String column) {
        String was = read.isUnnamed()
                ? "has no name that was read"
                : "was read as " + read.by().get(0);
        return new Finding(
                Rule.DOUBTFUL_READING,
                valve.page(),
                valve.place(),
                List.of(),
                List.of(valve.tag()),
                "A solenoid of " + valve.tag() + " " + was + "; it is taken for " + column + " of the cycle chart.",
                "look at the drawing, and tell the valve's positions with tags where it is another");
    }
}
