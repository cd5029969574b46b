package linewalk.samples.truth;

import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import linewalk.samples.machine.Machine;
import linewalk.samples.machine.Part;
import linewalk.samples.machine.State;

/** The cycle chart and the parts list as CSV. */
public final class ChartWriter {
    private final Machine machine;
    private final boolean usUnits;

    public ChartWriter(Machine machine, boolean usUnits) {
        this.machine = machine;
        this.usUnits = usUnits;
    }

    public String cycle() {
        TreeSet<String> solenoids = new TreeSet<>();
        machine.states().forEach(state -> solenoids.addAll(state.energised()));
        StringBuilder out = new StringBuilder("step,name," + String.join(",", solenoids) + "\n");
        int number = 1;
        for (State state : machine.states()) {
            out.append(number++).append(',').append(quoted(state.name()));
            solenoids.forEach(solenoid -> out.append(state.energised().contains(solenoid) ? ",1" : ",0"));
            out.append('\n');
        }
        return out.toString();
    }

    public String parts() {
        StringBuilder out = new StringBuilder("tag,description,kind,setting,test_point\n");
        List<Part> parts =
                machine.parts().stream().sorted(Comparator.comparing(Part::tag)).toList();
        for (Part part : parts) {
            String setting = part.setting() == null
                    ? ""
                    : usUnits ? part.setting().us() : part.setting().metric();
            out.append(String.join(
                            ",",
                            part.tag(),
                            quoted(part.description()),
                            part.symbol().kind(),
                            quoted(setting),
                            part.testPoint()))
                    .append('\n');
        }
        return out.toString();
    }

    private static String quoted(String text) {
        return text.contains(",") || text.contains("\"") ? '"' + text.replace("\"", "\"\"") + '"' : text;
    }
}
