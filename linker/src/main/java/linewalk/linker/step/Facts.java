package linewalk.linker.step;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import linewalk.drawing.Component;
import linewalk.drawing.CycleChart;
import linewalk.drawing.Kind;

/** What one step of the chart says of each part, by plain designation. */
final class Facts {

    private final Set<String> energised = new HashSet<>();
    private final Map<String, String> said = new HashMap<>();
    final Map<String, Boolean> open = new HashMap<>();
    private final Set<String> stopped = new HashSet<>();
    final Set<String> running = new TreeSet<>();

    Facts(Net net, CycleChart chart, CycleChart.Step step) {
        step.energised().forEach(e -> energised.add(Words.plain(e)));
        step.said().positions().forEach((tag, word) -> said.put(Words.plain(tag), word));
        step.said().open().forEach((tag, is) -> open.put(Words.plain(tag), is));
        Set<String> columns = new HashSet<>();
        chart.solenoids().forEach(s -> columns.add(Words.plain(s)));
        Drives drives = new Drives(net);
        for (Part p : net.parts) {
            Component c = p.component();
            String tag = Words.plain(c.tag());
            if (c.kind() == Kind.SHUT_OFF_VALVE && columns.contains(tag)) {
                open.putIfAbsent(tag, energised.contains(tag));
            } else if (c.kind() == Kind.PUMP) {
                String column = columns.contains(tag) ? tag : drives.motorOf(c);
                if (column != null && columns.contains(column) && !energised.contains(column)) {
                    stopped.add(tag);
                } else {
                    running.add(c.tag());
                }
            }
        }
    }

    boolean runs(Component pump) {
        return !stopped.contains(Words.plain(pump.tag()));
    }

    boolean on(String solenoidOrLever) {
        return energised.contains(Words.plain(solenoidOrLever));
    }

    /** The word for a valve's position, or null. */
    String position(Component valve) {
        return said.get(Words.plain(valve.tag()));
    }

    /** As the chart says, else as drawn or listed. */
    boolean shut(Component shutOff) {
        return shut(shutOff, open);
    }

    /** @param open what the chart says, by plain designation */
    static boolean shut(Component shutOff, Map<String, Boolean> open) {
        Boolean is = open.get(Words.plain(shutOff.tag()));
        return is == null ? shutOff.normallyClosed() : !is;
    }
}
