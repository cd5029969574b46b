package linewalk.linker;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import linewalk.drawing.Component;
import linewalk.drawing.CycleChart;
import linewalk.drawing.Finding;
import linewalk.drawing.Position;
import linewalk.drawing.Rule;

/** Whether the cycle chart and the valves speak of the same solenoids; silent where either is missing. */
final class SolenoidCheck {

    private record Owner(PageDraft page, Component component, String solenoid) {}

    private SolenoidCheck() {}

    static void check(List<PageDraft> pages, CycleChart chart, List<Finding> findings) {
        Map<String, Owner> owners = new LinkedHashMap<>();
        for (PageDraft p : pages) {
            p.components.forEach(c -> c.positions().stream()
                    .filter(x -> !x.isRest() && (x.how() == null || x.how() == Position.How.SOLENOID))
                    .forEach(x -> x.by().forEach(s -> owners.putIfAbsent(Names.plain(s), new Owner(p, c, s)))));
        }
        if (owners.isEmpty() || chart.solenoids().isEmpty()) {
            return;
        }
        Set<String> listed = chart.solenoids().stream().map(Names::plain).collect(Collectors.toSet());
        for (String s : chart.solenoids()) {
            if (!owners.containsKey(Names.plain(s))) {
                findings.add(new Finding(
                        Rule.UNKNOWN_SOLENOID,
                        null,
                        null,
                        List.of(),
                        List.of(),
                        "The cycle chart energises " + s + ", but no valve on the drawings is moved by it.",
                        "correct the chart, or tell the valve's position with a tag"));
            }
        }
        owners.values().stream()
                .filter(o -> !listed.contains(Names.plain(o.solenoid)))
                .forEach(o -> findings.add(unused(o)));
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
