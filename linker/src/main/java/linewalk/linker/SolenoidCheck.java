package linewalk.linker;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import linewalk.drawing.Component;
import linewalk.drawing.CycleChart;
import linewalk.drawing.Finding;
import linewalk.drawing.Position;
import linewalk.drawing.Rule;

/** Whether the cycle chart and the drawings speak of the same solenoids and parts; silent where either is missing. */
final class SolenoidCheck {

    private record Owner(PageDraft page, Component component, String solenoid) {}

    private final CycleChart chart;
    private final Map<String, Owner> solenoids = new LinkedHashMap<>();
    private final Set<String> known = new LinkedHashSet<>();
    private final Map<String, List<Component>> parts = new HashMap<>();

    private SolenoidCheck(List<PageDraft> pages, CycleChart chart) {
        this.chart = chart;
        for (PageDraft page : pages) {
            page.components.forEach(c -> add(page, c));
        }
    }

    private void add(PageDraft page, Component c) {
        parts.computeIfAbsent(Names.plain(c.tag()), k -> new ArrayList<>()).add(c);
        for (Position p : c.positions()) {
            boolean solenoid = !p.isRest() && (p.how() == null || p.how() == Position.How.SOLENOID);
            for (String by : p.by()) {
                known.add(Names.plain(by));
                boolean port = c.findPortNamed(by).isPresent() || by.equalsIgnoreCase("pilot");
                if (solenoid && !(p.how() == null && port)) {
                    solenoids.putIfAbsent(Names.plain(by), new Owner(page, c, by));
                }
            }
        }
    }

    static void check(List<PageDraft> pages, CycleChart chart, List<Finding> findings) {
        SolenoidCheck check = new SolenoidCheck(pages, chart);
        if (check.solenoids.isEmpty() || chart.designations().isEmpty()) {
            return;
        }
        Set<String> listed = chart.designations().stream().map(Names::plain).collect(Collectors.toSet());
        chart.designations().stream().filter(check::unknown).forEach(s -> findings.add(unknownColumn(s)));
        check.solenoids.values().stream()
                .filter(o ->
                        !listed.contains(Names.plain(o.solenoid)) && !listed.contains(Names.plain(o.component.tag())))
                .forEach(o -> findings.add(unused(o)));
        chart.steps().forEach(s -> check.levers(s, findings));
    }

    private boolean unknown(String column) {
        String plain = Names.plain(column);
        return !known.contains(plain) && !parts.containsKey(plain);
    }

    private static Finding unknownColumn(String column) {
        return finding(
                "The cycle chart has a column " + column
                        + ", but no valve on the drawings is moved by it and no part is called so.",
                "correct the chart, or tell the valve's position with a tag");
    }

    /** A position that the valve does not have. */
    private void levers(CycleChart.Step step, List<Finding> findings) {
        step.said().positions().forEach((valve, word) -> {
            List<Component> drawn = parts.getOrDefault(Names.plain(valve), List.of());
            boolean has = drawn.stream()
                    .flatMap(c -> c.positions().stream())
                    .flatMap(p -> p.by().stream())
                    .anyMatch(by -> Names.plain(by).equals(Names.plain(word)));
            if (!drawn.isEmpty() && !has) {
                findings.add(finding(
                        "In step " + step.title() + " the cycle chart puts " + valve + " in position " + word
                                + ", but the drawings know no such position of it.",
                        "correct the chart, or tell the valve's position with a tag"));
            }
        });
    }

    private static Finding finding(String message, String remedy) {
        return new Finding(Rule.UNKNOWN_SOLENOID, null, null, List.of(), List.of(), message, remedy);
    }

    private static Finding unused(Owner o) {
        return new Finding(
                Rule.UNUSED_SOLENOID,
                o.page.page,
                o.component.place(),
                List.of(),
                List.of(o.component.tag()),
                "Solenoid " + o.solenoid + " of " + o.component.tag() + " on " + o.page.address(o.component.place())
                        + " is not in the cycle chart; it counts as not energised.",
                "add a column " + o.solenoid + " to the chart");
    }
}
